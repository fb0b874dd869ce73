import type { ReactNode } from 'react';
import { leadGroups, packPages, type Tall } from '../pages/pack.ts';
import { lineScale } from '../pages/setting.ts';
import { bandRoom, headingLine, headingWhite, lineHeight, sheets, textSize } from '../pages/sheet.ts';
import { linesIn } from './text-height.ts';
import type { PackInput } from './types.ts';

/** A strip of a page with what stands in it. Heights in mm, white included. */
export interface Row extends Tall {
  readonly node: ReactNode;
}

/** Chapters with a heading; keys under `pack.chapters`. */
export type PackChapter = 'cautions' | 'bring' | 'before' | 'timetable' | 'notes' | 'mistakes' | 'sign';

/** Height of a heading inside a chapter with the white round it, mm. */
const subheadingHeight = 13;
const white = 3;

/** A chapter's title with the white under it, mm. */
const headingHeight = ({ words }: PackInput): number => headingLine * lineScale(words) + headingWhite;

/** A last page that is emptier than this share of its room has rows of the others moved to it. */
const emptiest = 0.3;
const balanceStep = 4;

/** The pages of a chapter: its heading on the first, its rows in order, none parted. */
export function chapterPages(input: PackInput, chapter: PackChapter, rows: readonly Row[]): readonly ReactNode[] {
  return balanced(rows, bandRoom(sheets[input.paper]), headingHeight(input)).map((page, index) => (
    <div className="workshop" key={`${chapter} ${index}`}>
      {index === 0 && <h1 className="chapter main" style={{ height: `${headingHeight(input)}mm` }}>{input.words.t(`pack.chapters.${chapter}`)}</h1>}
      {page.map((row, place) => <div key={place} className="row" style={{ height: `${row.height}mm` }}>{row.node}</div>)}
    </div>
  ));
}

/** As few pages as the rows need; where the last would be nearly empty, all are filled about alike. */
function balanced(rows: readonly Row[], room: number, heading: number): readonly (readonly Row[])[] {
  const packed = (height: number): readonly (readonly Row[])[] => packPages(rows, height, height - heading);
  const full = packed(room);
  const last = (full.at(-1) ?? []).reduce((sum, { height }) => sum + height, 0);
  if (full.length < 2 || last > emptiest * room) return full;
  const tallest = Math.max(...leadGroups(rows).map((group) => group.reduce((sum, { height }) => sum + height, 0)));
  const steps = Math.floor((room - Math.max(room / 2, tallest + heading)) / balanceStep);
  const tries = Array.from({ length: Math.max(0, steps) }, (_, index) => packed(room - (index + 1) * balanceStep));
  return tries.filter((pages) => pages.length === full.length).at(-1) ?? full;
}

/** Height of running text in the main column or in `width` mm, with the white under it. */
export const textHeight = (input: PackInput, text: string, width: number = sheets.a4.main, under: number = white): number =>
  linesIn(input.words, input.words.lang, text, width, textSize) * lineHeight + under;

/** A heading inside a chapter; it stays with what follows. */
export const subheading = (text: string): Row => ({ height: subheadingHeight, leads: true, node: <h2 className="main">{text}</h2> });

/** Running text in the main column. */
export const textRow = (input: PackInput, text: string, node: ReactNode = text): Row => ({ height: textHeight(input, text), node: <p className="main">{node}</p> });
