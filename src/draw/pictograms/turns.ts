import { arcArrow, arrow } from './arrows.ts';
import { black, body, bold, stroke, straight, thin, together, white, type Ink } from './ink.ts';

/** Turned on its foot to show another side: an upright thing with one dark side, an arrow round it. */
const turnRound: Ink = together(
  body('M15 8L24 4L33 8V27L24 31L15 27z', white, thin),
  body('M24 12L33 8V27L24 31z', black, thin),
  arcArrow(24, 21, 19, 165, 15, { shaft: 4, head: 11 }),
);

export const turnPictures = {
  'turn-round': turnRound,
} as const satisfies Readonly<Record<string, Ink>>;

/** Two pages and an arrow to the next one, for books read from left to right; the caller mirrors it. */
export const pageTurn: Ink = together(
  body('M24 17Q14 11 3 15V42Q14 38 24 44z'),
  body('M24 17Q34 11 45 15V42Q34 38 24 44z'),
  stroke(straight(9, 23, 18, 24.5), thin),
  stroke(straight(9, 31, 18, 32.5), thin),
  arrow(15, 6, 41, 6, { shaft: bold, head: 10 }),
);
