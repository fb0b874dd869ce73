/** Measures of a booklet's page in mm. The outer margin and the main column lie side by side, mirrored for right-to-left languages. */
export interface PageSheet {
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

/** What full pages have in common. */
export const fullPage = { top: 10, bottom: 13, margin: 24, gutter: 3, main: 165, narrow: false, pictureScale: 1, leastScale: 0.8 } as const;

/** Width of the pictures that are drawn for small pages (`draw/formats.ts`), and how small their 12.75 pt text may be set, mm. */
const smallPictures = 156;
const leastOfOwn = 10 / 12.75;

/** A small page's measures but for its white at the sides; nothing but white stands nearer to an edge than printers reach, about 5 mm. */
export function narrowPage(main: number): Omit<PageSheet, 'outer' | 'inner'> {
  const pictureScale = main / smallPictures;
  return { top: 8, bottom: 12, margin: 0, gutter: 0, main, narrow: true, pictureScale, leastScale: leastOfOwn / pictureScale };
}
