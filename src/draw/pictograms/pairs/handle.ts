/** An item on wheels, its handle towards the eye. */
import { arrow } from '../arrows.ts';
import { black, body, bold, box, dot, stroke, straight, tint, together, type Ink } from '../ink.ts';
import type { Pair } from './pair.ts';

/** Its two near posts end at a height; the deck runs away from the eye. */
const wheeled = (top: number): Ink => together(
  stroke(straight(57, 16, 57, 30), bold),
  body('M8 32H38L57 21H27z', tint),
  stroke(`${straight(8, top, 8, 40)}${straight(38, top, 38, 40)}`, bold),
  ...[{ x: 8, y: 42.5 }, { x: 38, y: 42.5 }, { x: 57, y: 32 }].map(({ x, y }) => dot(x, y, 4)),
);

/** The handle between its two elbows, at a height. */
const handle = (y: number): Ink => together(
  stroke(straight(8, y, 38, y), bold),
  ...[8, 38].map((x) => body(box(x - 4, y - 3, 8, 9), black)),
);

/** The item is pushed by its handle; lifted by it, the handle comes off. */
export const handlePushed: Pair = {
  right: together(wheeled(12), handle(8), arrow(48, 46, 69, 34)),
  wrong: together(wheeled(20), handle(6), arrow(23, 24, 23, 11)),
};
