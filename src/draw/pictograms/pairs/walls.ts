/** What is screwed to a wall, pulled at. */
import { arrow } from '../arrows.ts';
import { black, body, box, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

/** The bracket's plate stands `off` from the wall, and its screws have come out as far. */
const pulled = (off: number): Ink => together(
  body(box(3, 3, 20, 42), tint),
  stroke(`${straight(8 + off, 15, 25 + off, 15)}${straight(8 + off, 33, 25 + off, 33)}`, 3),
  body(box(24 + off, 9, 4, 30), black, thin),
  stroke(`M${28 + off} 18H${34 + off}A6 6 0 0 1 ${34 + off} 30H${28 + off}`, 3),
  arrow(43 + off, 24, 69, 24, { shaft: 3, head: 7 }),
);

/** The wall breaks out round the screws. */
const cracks = stroke('M23 10L17 12L19 15L14 16M23 38L17 36L19 33L14 32', thin);

/** It does not move when it is pulled. */
export const wallHolds: Pair = { right: pulled(0), wrong: together(pulled(12), cracks) };
