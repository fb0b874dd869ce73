/** What is screwed to a wall, pulled at. */
import { arrow } from '../arrows.ts';
import { black, body, box, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

/** The bracket's plate stands `off` from the wall. */
const pulled = (off: number): Ink => together(
  body(box(3, 3, 16, 42), tint),
  stroke(straight(10 + off, 24, 30 + off, 24), 4),
  body(box(20 + off, 10, 5, 28), black, thin),
  stroke(`M${25 + off} 17H${32 + off}A7 7 0 0 1 ${32 + off} 31H${25 + off}`, 3),
  arrow(43 + off, 24, 69, 24, { shaft: 3, head: 7 }),
);

/** It does not move when it is pulled. */
export const wallHolds: Pair = { right: pulled(0), wrong: together(pulled(8), stroke('M19 19L24 21M19 29L24 27', thin)) };
