import type { ReactNode } from 'react';
import { packPages, type Tall } from '../pages/pack.ts';
import { bandRoom, headingHeight, lineHeight, sheets, textSize } from '../pages/sheet.ts';
import { linesIn } from './text-height.ts';
import type { PackInput } from './types.ts';

/** A strip of a page with what stands in it. Heights in mm, white included. */
export interface Row extends Tall {
  readonly node: ReactNode;
}

/** Chapters with a heading; keys under `pack.chapters`. */
export type PackChapter = 'cautions' | 'bring' | 'before' | 'timetable' | 'notes' | 'mistakes' | 'sign';

/** Height of a heading inside a chapter with the white round it, mm. */
export const subheadingHeight = 13;
const white = 3;

/** The pages of a chapter: its heading on the first, its rows in order, none parted. */
export function chapterPages(input: PackInput, chapter: PackChapter, rows: readonly Row[]): readonly ReactNode[] {
  const room = bandRoom(sheets[input.paper]);
  return packPages(rows, room, room - headingHeight).map((page, index) => (
    <div className="workshop" key={`${chapter} ${index}`}>
      {index === 0 && <h1 className="chapter main" style={{ height: `${headingHeight}mm` }}>{input.words.t(`pack.chapters.${chapter}`)}</h1>}
      {page.map((row, place) => <div key={place} className="row" style={{ height: `${row.height}mm` }}>{row.node}</div>)}
    </div>
  ));
}

/** Height of running text in the main column or in `width` mm, with the white under it. */
export const textHeight = (input: PackInput, text: string, width: number = sheets.a4.main, under: number = white): number =>
  linesIn(input.words, input.words.lang, text, width, textSize) * lineHeight + under;

/** A heading inside a chapter; it stays with what follows. */
export const subheading = (text: string): Row => ({ height: subheadingHeight, leads: true, node: <h2 className="main">{text}</h2> });

/** Running text in the main column. */
export const textRow = (input: PackInput, text: string, node: ReactNode = text): Row => ({ height: textHeight(input, text), node: <p className="main">{node}</p> });
