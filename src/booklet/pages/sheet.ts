import { common, PAPERS, papersOf, type LaidFor, type PageSheet, type Paper } from '../papers/index.ts';

/** A paper's page with its size, mm. */
export interface Sheet extends PageSheet {
  readonly width: number;
  readonly height: number;
}

/** The pages of all papers on which booklets come, and that of several in common. */
export const sheets: Readonly<Record<LaidFor, Sheet>> = { ...Object.fromEntries(papersOf('full', 'half').map((paper): [Paper, Sheet] => {
  const { width, height, page } = PAPERS[paper];
  return [paper, { ...page, width, height }];
})) as Readonly<Record<Paper, Sheet>>, common };

/** Size of a page, mm. */
export const sheetSize = (paper: LaidFor): { readonly width: number; readonly height: number } => ({ width: sheets[paper].width, height: sheets[paper].height });

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
