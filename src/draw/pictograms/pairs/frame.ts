/** The frame seen from above. */
import { body, box, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

const onPanel = (x: number, y: number): Ink => together(
  body(box(2.5, 2.5, 67, 43), tint, thin),
  stroke(box(19, 16, 34, 16), thin),
  stroke(box(x, y, 48, 30), 5),
);

/** The same gap all round between frame and inside line. */
export const frameCentred: Pair = { right: onPanel(12, 9), wrong: onPanel(8, 13) };

const diagonal = (x1: number, y1: number, x2: number, y2: number): Ink => stroke(straight(x1, y1, x2, y2), thin);

/** Both diagonals are the same length. */
export const frameSquare: Pair = {
  right: together(
    diagonal(13, 8, 59, 40), diagonal(59, 8, 13, 40),
    stroke(box(12, 7, 48, 34), 5),
  ),
  wrong: together(
    diagonal(24, 8, 48, 40), diagonal(67, 8, 5, 40),
    stroke('M23 7H68L49 41H4z', 5),
  ),
};
