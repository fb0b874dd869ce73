import type { Paper } from './types.ts';

/** Measures of a page in mm. The outer margin and the main column lie side by side, mirrored for right-to-left languages. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** White at the outer edge, before the margin column. */
  readonly outer: number;
  readonly inner: number;
  readonly top: number;
  /** White below the bands; the page number stands in it. */
  readonly bottom: number;
  /** Column of the numerals. */
  readonly margin: number;
  readonly gutter: number;
  readonly main: number;
}

const common = { top: 10, bottom: 13, margin: 24, gutter: 3, main: 165 } as const;

/** ISO 216 A4 and US letter (ANSI/ASME Y14.1 size A). */
export const sheets: Readonly<Record<Paper, Sheet>> = {
  a4: { ...common, width: 210, height: 297, outer: 10, inner: 8 },
  letter: { ...common, width: 215.9, height: 279.4, outer: 12, inner: 11.9 },
};

/** Height between top and bottom white, mm. */
export function bandRoom({ height, top, bottom }: Sheet): number {
  return height - top - bottom;
}

/** Distance of the lines of running text in Latin letters, mm; other scripts stand farther apart, see `lineScale`. */
export const lineHeight = 5.5;

/** Running text, pt. ISO/IEC Guide 37 asks for at least 10. */
export const textSize = 10.5;

/** A step's caption, pt. */
export const captionSize = 11;

/** Distance of the lines of a chapter's heading, and the white below it, mm. */
export const headingLine = 11;
export const headingWhite = 7;
/** A chapter's heading, pt. */
export const headingSize = 22;

/** Height of a pictogram in a strip, mm. */
export const glyphHeight = 11;
