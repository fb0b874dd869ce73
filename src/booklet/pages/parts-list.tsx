import type { ReactNode } from 'react';
import { bandRoom, headingHeight, sheets, lineHeight } from './sheet.ts';
import { ChapterHeading } from './chapter.tsx';
import { partCounts, type PartCount } from './counts.ts';
import { packPages, packRows } from './pack.ts';
import { PlacedPicture, pictureSize } from './placed-picture.tsx';
import { ScaleBar } from './scale-bar.tsx';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** Between parts side by side, and under the words of a row, mm. */
const gap = 5;
const wordsUnder = 2 * lineHeight + 1 + 5;
const leastWidth = 30;
/** The bar of a group's scale, and the white round it. */
const barHeight = 16;

/** A row of parts, or the bar under all parts of one scale. */
type Row = { readonly height: number; readonly leads: boolean } & (
  | { readonly parts: readonly SizedPart[] }
  | { readonly scale: number }
);

type SizedPart = PartCount & { readonly width: number };

/** Every kind of part with its count: the large ones at one scale, then the small ones at another, each over its bar. */
export function partsList(input: BookletInput): readonly ReactNode[] {
  const room = bandRoom(sheets[input.paper]);
  return packPages(rowsOf(input), room, room - headingHeight).map((rows, index) => (
    <div className="parts main" key={index}>
      {index === 0 && <ChapterHeading input={input} name="parts" />}
      {rows.map((row, place) => <PartRow key={place} input={input} row={row} />)}
    </div>
  ));
}

function rowsOf(input: BookletInput): readonly Row[] {
  const sized = partCounts(input.model).map((part) => ({ ...part, width: Math.max(leastWidth, pictureSize(input, `part:${part.kind}`).width) }));
  const scales = [...new Set(sized.map(({ kind }) => input.partScale[kind]))].sort((a, b) => a - b);
  return scales.flatMap((scale) => {
    const rows = packRows(sized.filter(({ kind }) => input.partScale[kind] === scale), sheets[input.paper].main, gap);
    return [...rows.map((parts, index) => ({ parts, leads: index === rows.length - 1, height: tallest(input, parts) + wordsUnder })), { scale, leads: false, height: barHeight }];
  });
}

function tallest(input: BookletInput, parts: readonly PartCount[]): number {
  return Math.max(...parts.map(({ kind }) => pictureSize(input, `part:${kind}`).height));
}

function PartRow({ input, row }: { readonly input: BookletInput; readonly row: Row }): ReactNode {
  if ('scale' in row) return <div className="part-scale" style={{ height: `${row.height}mm` }}><ScaleBar input={input} scale={row.scale} /></div>;
  return (
    <ul className="part-row" style={{ height: `${row.height}mm`, gap: `${gap}mm` }}>
      {row.parts.map((part) => <PartEntry key={part.kind} input={input} part={part} />)}
    </ul>
  );
}

function PartEntry({ input, part }: { readonly input: BookletInput; readonly part: SizedPart }): ReactNode {
  const { words, edition } = input;
  const named = words.t(`parts.${part.kind}.counted`, { count: part.count });
  return (
    <li style={{ width: `${part.width}mm` }}>
      <PlacedPicture input={input} id={`part:${part.kind}`} alt={named} />
      <p>
        <b className="count"><Spoken text={words.times(part.count)} /></b>
        {edition === 'words' && <span>{words.t(`parts.${part.kind}.name`)}</span>}
      </p>
    </li>
  );
}
