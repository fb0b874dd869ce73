import type { Paper } from './picture/index.ts';

/**
 * For which pages pictures are drawn: `page` for A4 and Letter, `small` for pages of half that size, set there at
 * about 0.8 of their own size.
 */
export type PageFormat = 'page' | 'small';

/** `thumb` is for thumbnails: a small picture of each step that has a scene, with its arrows but without texts. */
export type Format = PageFormat | 'thumb';

/** Paper of a thumbnail; it is set at half its size or less. */
export const THUMB: Paper = { width: 60, height: 46 };

/** Room of each sort of picture, mm of paper. */
export interface Papers {
  /** The finished item. */
  readonly full: Paper;
  /** The item with its lettered lengths. */
  readonly lettered: Paper;
  /** What a run of steps makes. */
  readonly run: Paper;
  readonly pattern: Paper;
  /** All sections of a flap, and those of the first wrap, which stand under its picture. */
  readonly sections: Paper;
  readonly wrap: Paper;
  /** Work on the bench. */
  readonly bench: Paper;
  readonly posts: Paper;
  /** Stock tubes to saw in one picture, at most. */
  readonly bars: number;
  /** Scenes of a bare frame, of a deck and of the whole item. */
  readonly frame: Paper;
  readonly deck: Paper;
  readonly whole: Paper;
  /** Most height of a scene that has its blocks over it. */
  readonly underBlocks: number;
  /** Most height of a scene with all that stands over it. */
  readonly most: number;
  /** What is enlarged beside the whole item: its room there. */
  readonly closeUp: Paper;
}

/** Width of the main column of an A4 page. Its heights let two steps stand on an A4 or a Letter page. */
const COLUMN = 165;

/**
 * Width of the small pages' pictures: at the 125.7 mm of a half-Letter page their smallest text is still 10.2 pt
 * (ISO/IEC Guide 37 asks for 10). One step stands on a page, with all its pictures.
 */
const SMALL_COLUMN = 156;

export const FORMATS: Readonly<Record<PageFormat, Papers>> = {
  page: {
    full: { width: COLUMN, height: 200 },
    lettered: { width: 124, height: 170 },
    run: { width: 70, height: 38 },
    pattern: { width: COLUMN, height: 230 },
    sections: { width: COLUMN, height: 190 },
    wrap: { width: COLUMN, height: 120 },
    bench: { width: COLUMN, height: 105 },
    posts: { width: COLUMN, height: 88 },
    bars: 4,
    frame: { width: COLUMN, height: 96 },
    deck: { width: COLUMN, height: 107 },
    whole: { width: COLUMN, height: 98 },
    underBlocks: 107,
    most: 228,
    closeUp: { width: 62, height: 96 },
  },
  small: {
    full: { width: SMALL_COLUMN, height: 160 },
    lettered: { width: 130, height: 110 },
    run: { width: 70, height: 38 },
    pattern: { width: SMALL_COLUMN, height: 200 },
    sections: { width: SMALL_COLUMN, height: 180 },
    wrap: { width: SMALL_COLUMN, height: 74 },
    bench: { width: SMALL_COLUMN, height: 120 },
    posts: { width: SMALL_COLUMN, height: 80 },
    bars: 2,
    frame: { width: SMALL_COLUMN, height: 110 },
    deck: { width: SMALL_COLUMN, height: 107 },
    whole: { width: SMALL_COLUMN, height: 128 },
    underBlocks: 88,
    most: 170,
    closeUp: { width: 58, height: 110 },
  },
};
