import { arcArrow, arrow } from './arrows.ts';
import { body, bold, stroke, straight, thin, together, type Ink } from './ink.ts';

/** Round once more: what is told beside it is done so many times. */
const again: Ink = arcArrow(24, 25, 16, -50, 235, { shaft: 5, head: 15 });

export const turnPictures = {
  again,
} as const satisfies Readonly<Record<string, Ink>>;

/** Two pages and an arrow to the next one, for books read from left to right; the caller mirrors it. */
export const pageTurn: Ink = together(
  body('M24 17Q14 11 3 15V42Q14 38 24 44z'),
  body('M24 17Q34 11 45 15V42Q34 38 24 44z'),
  stroke(straight(9, 23, 18, 24.5), thin),
  stroke(straight(9, 31, 18, 32.5), thin),
  arrow(15, 6, 41, 6, { shaft: bold, head: 10 }),
);
