import type { ReactNode } from 'react';
import { pictureId, pictureOf, type PictureOf } from '../../draw/index.ts';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import { clock, pieceName } from './names.ts';
import type { PackInput, PackItem } from './types.ts';

/** Room for the pictures of the pieces: width of the page's column, height, and the white between them, mm. */
const viewRoom = { width: 190, height: 105, gap: 6 } as const;

/** What is built, by how many, how long; and which print this is. */
export function cover(input: PackInput): readonly ReactNode[] {
  const { words } = input;
  return [(
    <div className="workshop pack-cover" key="cover">
      <h1 className="name">{words.t('pack.title')}</h1>
      <div className="views">{input.items.map((item, index) => <View key={index} input={input} item={item} place={index} />)}</div>
      <dl className="facts main">
        {facts(input).map(([name, text]) => <div key={name}><dt>{words.t(`pack.facts.${name}`)}</dt><dd><Spoken text={text} /></dd></div>)}
      </dl>
      <div className="main end">
        {!words.about.source && words.review === null && <p>{words.t('pack.draft')}</p>}
        <p className="defer">{words.t('pack.defer')}</p>
        <p><Spoken text={isolate(`${input.items.map(({ model, revision }) => `${model.item} ${revision}`).join(' · ')} · ${input.contentMark}`)} /></p>
      </div>
    </div>
  )];
}

function View({ input, item, place }: { readonly input: PackInput; readonly item: PackItem; readonly place: number }): ReactNode {
  const { words, pictures, placePicture, items } = input;
  const of: PictureOf = { what: 'ordered', place };
  const own = pictureOf(pictures, of, 'pack');
  const perRow = Math.min(items.length, 3);
  const rows = Math.ceil(items.length / perRow);
  const room = { width: (viewRoom.width - (perRow - 1) * viewRoom.gap) / perRow, height: viewRoom.height / rows - 16 };
  const scale = Math.min(1, room.width / own.width, room.height / own.height);
  const [width, height] = [own.width, own.height].map((length) => Math.floor(length * scale * 1000) / 1000) as [number, number];
  const alt = words.t('pack.alt.finished', { item: words.t(`items.${item.model.item}.name`), size: words.t(`items.${item.model.item}.sizes.${item.model.size}`) });
  return (
    <div className="view" style={{ width: `${room.width}mm` }}>
      <div style={{ width: `${width}mm`, height: `${height}mm` }} dangerouslySetInnerHTML={{ __html: placePicture({ id: pictureId(of), width, height, alt }) }} />
      <p><b><Spoken text={words.times(item.count)} /></b> {pieceName(words, item)}</p>
    </div>
  );
}

function facts({ words, timetable: { crew, days } }: PackInput): readonly (readonly [string, string])[] {
  const people = [...new Set(crew.teams)].sort((a, b) => a - b).map((each) => words.number(each)).join('–');
  const [start, end] = [days[0]?.blocks[0]?.start ?? 0, days.at(-1)?.blocks.at(-1)?.end ?? 0];
  return [
    ['learners', isolate(words.number(crew.learners))],
    ['teams', isolate(words.number(crew.teams.length))],
    ['people', isolate(people)],
    ['days', isolate(words.number(days.length))],
    ['start', clock(words, start)],
    ['end', clock(words, end)],
  ];
}
