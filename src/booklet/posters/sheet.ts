/** Papers of the editions for the wall. */
export type PosterPaper = 'a3' | 'a4' | 'letter';

/** A page of a poster, mm. */
export interface PosterSheet {
  readonly width: number;
  readonly height: number;
  /** How much larger than on A4 all is set. */
  readonly scale: number;
}

/** ISO 216 A3 and A4, US letter (ANSI/ASME Y14.1 size A), upright. A3 is A4 enlarged by √2. */
export const posterSheets: Readonly<Record<PosterPaper, PosterSheet>> = {
  a3: { width: 297, height: 420, scale: Math.SQRT2 },
  a4: { width: 210, height: 297, scale: 1 },
  letter: { width: 215.9, height: 279.4, scale: 1 },
};

/** White at all edges, mm, on A4. */
export const posterMargin = 10;

/** Digits of Noto Sans over the size of its letters, from the font's OS/2 table. */
export const digitShare = 0.714;
