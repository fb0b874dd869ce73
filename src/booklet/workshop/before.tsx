import type { ReactNode } from 'react';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import { pieceName } from './names.ts';
import { chapterPages, subheading, textRow, type Row } from './row.tsx';
import type { PackInput } from './types.ts';

const rowHeight = 12.5;
const glyphHeight = 10;

/** What is done before the learners come: print, sort, set out, cut to size, mark a sample. */
export function before(input: PackInput): readonly ReactNode[] {
  const { words, items, timetable: { prepared } } = input;
  const minutes = prepared.reduce((sum, each) => sum + each.minutes, 0);
  const total = words.t('pack.before.total', { time: words.duration(minutes), pairs: input.preparingPairs });
  const print = words.t('pack.before.print', { full: isolate(`${words.number(100)}\u00a0%`), bar: words.measure(100, 'mm') });
  return chapterPages(input, 'before', [
    ...[words.t('pack.before.says'), print, words.t('pack.before.sort'), words.t('pack.before.places')].map((text) => textRow(input, text, <Spoken text={text} />)),
    textRow(input, total, <b><Spoken text={total} /></b>),
    ...items.flatMap((item, index) => {
      const jobs = prepared.filter(({ work }) => work === index);
      return jobs.length === 0 ? [] : [subheading(pieceName(words, item)), ...jobs.map((job) => jobRow(input, job))];
    }),
  ]);
}

function jobRow({ words, glyphs }: PackInput, { action, pieces, sample, minutes }: PackInput['timetable']['prepared'][number]): Row {
  const name = words.t(`actions.names.${action}`);
  return {
    height: rowHeight,
    node: (
      <div className="job main">
        <GlyphMark glyph={glyphs.action(action)} label={name} height={glyphHeight} />
        <span className="name">{name}</span>
        <span className="how">{words.t(`pack.before.${sample ? 'sample' : 'all'}`)} <Spoken text={words.times(pieces)} /></span>
        <b><Spoken text={words.duration(Math.round(minutes))} /></b>
      </div>
    ),
  };
}
