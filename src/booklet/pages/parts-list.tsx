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
const gap = 6;
const wordsUnder = 2 * lineHeight + 1 + 5;
const leastWidth = 36;

interface Row {
  readonly parts: readonly (PartCount & { readonly width: number })[];
  readonly height: number;
}

/** Every kind of part with its count, all drawn at one scale. */
export function partsList(input: BookletInput): readonly ReactNode[] {
  const room = bandRoom(sheets[input.paper]);
  const pages = packPages(rowsOf(input), room - 12, room - 12 - headingHeight);
  return pages.map((rows, index) => (
    <div className="parts main" key={index}>
      {index === 0 && <ChapterHeading input={input} name="parts" />}
      {rows.map((row, place) => (
        <ul className="part-row" key={place} style={{ height: `${row.height}mm`, gap: `${gap}mm` }}>
          {row.parts.map((part) => <PartEntry key={part.kind} input={input} part={part} />)}
        </ul>
      ))}
      {index === pages.length - 1 && <ScaleBar input={input} />}
    </div>
  ));
}

function rowsOf(input: BookletInput): readonly Row[] {
  const sized = partCounts(input.model).map((part) => ({ ...part, width: Math.max(leastWidth, pictureSize(input, `part:${part.kind}`).width) }));
  return packRows(sized, sheets[input.paper].main, gap).map((parts) => ({
    parts,
    height: Math.max(...parts.map(({ kind }) => pictureSize(input, `part:${kind}`).height)) + wordsUnder,
  }));
}

function PartEntry({ input, part }: { readonly input: BookletInput; readonly part: PartCount & { readonly width: number } }): ReactNode {
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
