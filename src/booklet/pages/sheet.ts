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
  /** A page too narrow for a column of numerals: numeral and parts stand over the picture, and one step on a page. */
  readonly narrow: boolean;
  /** Size of pictures on the page against their own; those with a stated scale keep theirs. */
  readonly pictureScale: number;
  /** Pictures may be set this much smaller than `pictureScale` has them: their text stays above the 10 pt of ISO/IEC Guide 37. */
  readonly leastScale: number;
}

const common = { top: 10, bottom: 13, margin: 24, gutter: 3, main: 165, narrow: false, pictureScale: 1, leastScale: 0.8 } as const;

/** Width of the pictures that are drawn for small pages (`draw/formats.ts`), and how small their 12.75 pt text may be set, mm. */
const smallPictures = 156;
const leastOfOwn = 10 / 12.75;

/** A small page's measures but for its size; nothing but white stands nearer to an edge than printers reach, about 5 mm. */
function narrow(main: number): Omit<Sheet, 'width' | 'height' | 'outer' | 'inner'> {
  const pictureScale = main / smallPictures;
  return { top: 8, bottom: 12, margin: 0, gutter: 0, main, narrow: true, pictureScale, leastScale: leastOfOwn / pictureScale };
}

/** ISO 216 A4 and A5, US letter (ANSI/ASME Y14.1 size A) and half of it. */
export const sheets: Readonly<Record<Paper, Sheet>> = {
  a4: { ...common, width: 210, height: 297, outer: 10, inner: 8 },
  letter: { ...common, width: 215.9, height: 279.4, outer: 12, inner: 11.9 },
  a5: { ...narrow(132), width: 148, height: 210, outer: 8, inner: 8 },
  'half-letter': { ...narrow(125.7), width: 139.7, height: 215.9, outer: 7, inner: 7 },
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

/** A chapter's heading: its size, pt, the distance of its lines, and the white between it and what stands beside it, mm; by whether the page is narrow. */
export const heading = {
  wide: { size: 22, leading: 11, gap: 8 },
  narrow: { size: 18, leading: 9, gap: 6 },
} as const;
/** Height of a pictogram's line in place of a heading, and the white below it, mm. */
export const headingLine = 11;
export const headingWhite = 7;

/** Height of a pictogram in a strip, mm. */
export const glyphHeight = 11;
