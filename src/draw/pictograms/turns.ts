import { arcArrow, arrow } from './arrows.ts';
import { black, body, bold, dot, placed, solid, stroke, straight, thin, together, white, type Ink } from './ink.ts';

/** Someone walks round an upright thing to its other side: a thing with one dark side, a person, an arrow on the floor round it. */
const turnRound: Ink = together(
  body('M20 7L28.5 3L37 7V24L28.5 28L20 24z', white, thin),
  body('M28.5 11L37 7V24L28.5 28z', black, thin),
  dot(8, 12, 3.8),
  solid('M3.8 17.5H12.2L10.8 28H5.2z'),
  stroke('M6 27L4.7 36M10 27L11.3 36', 2.8),
  stroke('M14 39Q28 47.5 39 36', 3.5),
  placed(43.5, 29, -60, solid('M0 0L-10.5 -5.8V5.8z')),
);

/** Round once more: what is told beside it is done so many times. */
const again: Ink = arcArrow(24, 25, 16, -50, 235, { shaft: 5, head: 15 });

export const turnPictures = {
  again,
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
