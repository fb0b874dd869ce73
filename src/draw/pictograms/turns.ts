import { arcArrow, arrow } from './arrows.ts';
import { black, body, box, bold, dashes, stroke, straight, thin, tint, together, white, type Ink } from './ink.ts';

/** The work lands on its other face: a slab with one dark face before and after. */
const turnOver: Ink = together(
  body(box(2.5, 33, 17, 6), white, thin),
  body(box(2.5, 38, 17, 6), black, thin),
  body(box(28.5, 33, 17, 6), black, thin),
  body(box(28.5, 38, 17, 6), white, thin),
  arcArrow(24, 27, 15, 180, 360, { shaft: 4, head: 11 }),
);

/** A quarter turn: broken line before, full line after. */
const turnQuarter: Ink = together(
  stroke(`${dashes(5, 5, 5, 32, 5, 6)}${dashes(15, 5, 15, 32, 5, 6)}${dashes(5, 5, 15, 5, 4, 5)}`, thin),
  body(box(4, 35, 40, 9), tint),
  arcArrow(19, 31, 19, 275, 360, { shaft: 4, head: 11 }),
);

/** Turned on its foot to show another side: an upright thing with one dark side, an arrow round it. */
const turnRound: Ink = together(
  body('M15 8L24 4L33 8V27L24 31L15 27z', white, thin),
  body('M24 12L33 8V27L24 31z', black, thin),
  arcArrow(24, 21, 19, 165, 15, { shaft: 4, head: 11 }),
);

export const turnPictures = {
  'turn-over': turnOver,
  'turn-quarter': turnQuarter,
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
