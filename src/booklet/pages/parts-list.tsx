import type { ReactNode } from 'react';
import { findPicture, type PictureOf } from '../../draw/index.ts';
import { hasCords } from '../../model/index.ts';
import { suppliesOf } from '../../plan/index.ts';
import { PART_KINDS } from '../../parts/facts.ts';
import { varietiesOf, type Variety } from '../../parts/varieties.ts';
import { captionSize, sheets } from './sheet.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { suppliesSaid } from './margin-parts.ts';
import { packPages, packRows } from './pack.ts';
import { partName, partsCounted } from './part-names.ts';
import { countKey, countsBySize, sizeText, type SizedCount } from './part-sizes.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { ScaleBar } from './scale-bar.tsx';
import { Spoken } from './spoken.tsx';
import { Said, saidHeight, type Say } from './in-languages.tsx';
import { isolate } from '../words/index.ts';
import type { BookletInput } from './types.ts';

/** Between parts side by side, between the words' lines, and under the words of a row, mm. */
const gap = 5;
export const countLine = 6.5;
export const over = 1;
const under = 5;
/** Least room of a part: for its count alone, with a length, and with two sides. */
const leastWidths = [30, 36, 50] as const;
/** The bar of a group's scale, and the white round it. */
const barHeight = 16;

/** A row of parts, the bar under all parts of one scale, the stock that they are made from, or the blocks to put under. */
type Row = { readonly height: number; readonly leads: boolean } & (
  | { readonly parts: readonly SizedPart[]; readonly told: number }
  | { readonly scale: number }
  | { readonly stock: PictureOf }
  | { readonly blocks: PictureOf }
);

/** A variety of part, or a thing that the steps take beside the parts. */
interface Listed {
  readonly key: string;
  readonly picture: PictureOf;
  readonly name: Say;
  readonly alt: string;
  readonly counts: readonly SizedCount[];
  readonly scale: number;
}

interface SizedPart extends Listed {
  readonly width: number;
}

/** Every variety of part and thing taken beside them with its counts, for tubes, cables, flat panels and fixings by size: the large ones at one scale, then the small ones at another, each over its bar. */
export const partsList = (input: BookletInput): readonly ReactNode[] => partPages(input).map(({ node }) => node);

/** Its pages, each with the height that it leaves, mm. */
export function partPages(input: BookletInput): readonly { readonly node: ReactNode; readonly left: number }[] {
  const room = pageRoom(input);
  const first = room - headingHeight(input, 'parts');
  return packPages(rowsOf(input), room, first).map((rows, index) => ({
    left: rows.reduce((left, { height }) => left - height, index === 0 ? first : room),
    node: (
      <div className="parts main" key={index}>
        {index === 0 && <ChapterHeading input={input} name="parts" />}
        {rows.map((row, place) => <PartRow key={place} input={input} row={row} />)}
      </div>
    ),
  }));
}

function rowsOf(input: BookletInput): readonly Row[] {
  const sized = [...PART_KINDS.flatMap((kind) => varietiesOf(input.model, kind)).map((part) => partListed(input, part)), ...suppliesListed(input)].map((each) => sizedPart(input, each));
  const scales = [...new Set(sized.map(({ scale }) => scale))].sort((a, b) => a - b);
  return [stockRow(input), ...scales.flatMap((scale) => {
    const rows = packRows(sized.filter((each) => each.scale === scale), sheets[input.paper].main, gap);
    return [...rows.map((parts, index) => partRow(input, parts, index === rows.length - 1)), { scale, leads: false, height: barHeight }];
  }), ...blocksRow(input)];
}

/** What is fetched first: it stands with the parts that are made of it. */
function stockRow(input: BookletInput): Row {
  const stock: PictureOf = { what: 'stock' };
  return { stock, leads: true, height: pictureSize(input, stock).height + under };
}

const blocksSaid: Say = ({ words }) => words.t('booklet.tools.block');

/** What is put under while the work goes on stands last: it is no part. */
function blocksRow(input: BookletInput): readonly Row[] {
  const found = findPicture(input.pictures, { what: 'blocks' });
  if (found === undefined) return [];
  const told = input.edition === 'words' ? saidHeight(input, blocksSaid, sheets[input.paper].main, { size: captionSize }) : 0;
  return [{ blocks: found.of, leads: false, height: over + pictureSize(input, found.of).height + told + under }];
}

function partListed(input: BookletInput, { kind, variety, parts }: Variety): Listed {
  return {
    key: `${kind} ${variety}`, picture: { what: 'part', kind, variety }, name: ({ words }) => partName(words, kind, parts),
    alt: partsCounted(input.words, kind, parts), counts: countsBySize(input.model, parts.map(({ id }) => id)).toSorted((a, b) => (a.letter ?? '').localeCompare(b.letter ?? '', 'en')), scale: input.partScale[kind],
  };
}

/** What the steps take beside the parts, each thing with all its sizes, at the scale of fittings. */
function suppliesListed({ plan, words, partScale }: BookletInput): readonly Listed[] {
  const all = suppliesOf(plan);
  return [...new Set(all.map(({ name }) => name))].map((name): Listed => {
    const counts = all.filter((supply) => supply.name === name).map(({ count, size }): SizedCount => ({ count, size, isRound: true }));
    return {
      key: name, picture: { what: 'supply', name }, name: (telling) => telling.words.t(`parts.${name}.name`),
      alt: suppliesSaid(words, name, counts.reduce((sum, { count }) => sum + count, 0)), counts, scale: partScale.fitting,
    };
  });
}

function sizedPart(input: BookletInput, listed: Listed): SizedPart {
  const least = Math.max(...listed.counts.map(({ size }) => leastWidths[size.length] ?? leastWidths[0]));
  return { ...listed, width: Math.max(least, pictureSize(input, listed.picture).width) };
}

function partRow(input: BookletInput, parts: readonly SizedPart[], leads: boolean): Row {
  const told = Math.max(...parts.map((part) => toldHeight(input, part)));
  return { parts, leads, told, height: Math.max(...parts.map((part) => pictureSize(input, part.picture).height)) + told };
}

/** Height of what stands under a part's picture: with words its name, then a line for each size. */
function toldHeight(input: BookletInput, { name, counts, width }: SizedPart): number {
  const named = input.edition === 'words' ? saidHeight(input, name, width, { size: captionSize }) : 0;
  return over + named + counts.length * countLine + under;
}

function PartRow({ input, row }: { readonly input: BookletInput; readonly row: Row }): ReactNode {
  if ('stock' in row) return <div style={{ height: `${row.height}mm` }}><PlacedPicture input={input} of={row.stock} alt={stockAlt(input)} /></div>;
  if ('blocks' in row) return <Blocks input={input} of={row.blocks} height={row.height} />;
  if ('scale' in row) return <div className="part-scale" style={{ height: `${row.height}mm` }}><ScaleBar input={input} scale={row.scale} /></div>;
  return (
    <ul className="part-row" style={{ height: `${row.height}mm`, gap: `${gap}mm` }}>
      {row.parts.map((part) => <PartEntry key={part.key} input={input} part={part} told={row.told} />)}
    </ul>
  );
}

function Blocks({ input, of, height }: { readonly input: BookletInput; readonly of: PictureOf; readonly height: number }): ReactNode {
  return (
    <div className="told" style={{ height: `${height}mm` }}>
      <PlacedPicture input={input} of={of} alt={blocksSaid(input)} />
      {input.edition === 'words' && <p><Said input={input} say={blocksSaid} /></p>}
    </div>
  );
}

const stockAlt = ({ words, model }: BookletInput): string =>
  words.list([words.t('pack.bring.tube'), words.t('pack.bring.panel'), ...(hasCords(model) ? [words.t('parts.cable.name')] : [])]);

function PartEntry({ input, part, told }: { readonly input: BookletInput; readonly part: SizedPart; readonly told: number }): ReactNode {
  return (
    <li style={{ width: `${part.width}mm` }}>
      <PlacedPicture input={input} of={part.picture} alt={part.alt} />
      <div className="told" style={{ height: `${told - over}mm` }}>
        {input.edition === 'words' && <p><Said input={input} say={part.name} /></p>}
        {part.counts.map((counted) => <CountLine key={countKey(counted)} input={input} counted={counted} />)}
      </div>
    </li>
  );
}

function CountLine({ input: { words }, counted }: { readonly input: BookletInput; readonly counted: SizedCount }): ReactNode {
  const { count, letter } = counted;
  const told = sizeText(words, counted);
  return (
    <p className="counted">
      <b><Spoken text={words.times(count)} /></b>
      {letter !== undefined && <b><Spoken text={isolate(letter)} /></b>}
      {told !== null && <Spoken text={told} />}
    </p>
  );
}
