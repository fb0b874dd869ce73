import { PAPERS, papersOf, type PosterPaper } from '../papers/index.ts';

export type { PosterPaper };

/** A page of a poster, mm. */
export interface PosterSheet {
  readonly width: number;
  readonly height: number;
  /** How much larger than on A4 all is set. */
  readonly scale: number;
}

/** The upright pages of all papers on which there are posters. */
export const posterSheets = Object.fromEntries(papersOf('full', 'apart').map((paper): [PosterPaper, PosterSheet] => {
  const { width, height, posterScale } = PAPERS[paper];
  return [paper, { width, height, scale: posterScale }];
})) as Readonly<Record<PosterPaper, PosterSheet>>;

/** White at all edges, mm, on A4. */
export const posterMargin = 10;

/** Digits of Noto Sans over the size of its letters, from the font's OS/2 table. */
export const digitShare = 0.714;
