import { posterMargin, posterSheets, type PosterPaper } from './sheet.ts';

/** Measures of a wall page, mm, on A4; a larger page has them larger. */
export const wall = {
  /** Height of a step's numeral. At 2 m it is seen under 52 minutes of arc; 20 are read with ease (common practice, no source). */
  numeral: 30,
  /** On a lying page the column of numeral and parts; on an upright one the row. */
  column: 50,
  row: 38,
  gap: 6,
  /** The strip of pictograms under the picture, and the heights that are tried for it. */
  strip: 20,
  stripHeights: [20, 18, 16, 14, 12, 11, 10, 9, 8, 7.5, 7, 6.5, 6],
  /** Between pictures of one step. */
  between: 4,
} as const;

/** White between groups of the strip, and between pictograms of one group, mm on A4. */
export const groupGap = 4;
export const innerGap = 2;

/** A size in mm. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** How a step's pictures stand on its page. */
export interface WallPage {
  readonly turn: 'lying' | 'upright';
  /** Size of the pictures against their own. */
  readonly scale: number;
  /** Whether several stand side by side or one over the other. */
  readonly beside: boolean;
}

/** The turn of the page, and of the pictures on it, with which they come out largest. Throws a RangeError when there are none. */
export function wallPage(pictures: readonly Extent[], paper: PosterPaper): WallPage {
  if (pictures.length === 0) throw new RangeError('a wall page needs a picture');
  const ways = (['lying', 'upright'] as const).flatMap((turn) => [false, true].map((beside): WallPage => ({ turn, beside, scale: largest(pictures, pictureRoom(paper, turn), beside, posterSheets[paper].scale) })));
  return ways.reduce((best, way) => (way.scale > best.scale + 1e-9 ? way : best));
}

/** Width and height of a page, mm. */
export function turned(paper: PosterPaper, turn: WallPage['turn']): Extent {
  const { width, height } = posterSheets[paper];
  return turn === 'upright' ? { width, height } : { width: height, height: width };
}

/** Room for the pictures of a step: beside the column or under the row of its numeral, above the strip, mm. */
export function pictureRoom(paper: PosterPaper, turn: WallPage['turn']): Extent {
  const { scale } = posterSheets[paper];
  const { width, height } = turned(paper, turn);
  const inner = { width: width - 2 * posterMargin * scale, height: height - (2 * posterMargin + wall.strip + wall.gap) * scale };
  return turn === 'lying'
    ? { ...inner, width: inner.width - (wall.column + wall.gap) * scale }
    : { ...inner, height: inner.height - (wall.row + wall.gap) * scale };
}

function largest(pictures: readonly Extent[], room: Extent, beside: boolean, scale: number): number {
  const widths = pictures.map(({ width }) => width);
  const heights = pictures.map(({ height }) => height);
  const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0);
  const white = wall.between * scale * (pictures.length - 1);
  const found = beside
    ? Math.min((room.width - white) / sum(widths), room.height / Math.max(...heights))
    : Math.min(room.width / Math.max(...widths), (room.height - white) / sum(heights));
  return Math.floor(found * 1000) / 1000;
}
