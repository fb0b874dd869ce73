import { arrow } from '../arrows.ts';
import { body, bold, box, line, straight, stroke, tint, together, type Ink } from '../ink.ts';

/** A block under a tube, put there and taken out again. */
export const blockPicture: Ink = together(
  body('M3 8H45V17H3z'),
  body(box(5, 19, 17, 20), tint),
  stroke(straight(3, 42, 45, 42), bold),
  stroke(straight(9, 24, 18, 24), line),
  arrow(46, 25, 26, 25, { shaft: line, head: 8 }),
  arrow(26, 35, 46, 35, { shaft: line, head: 8 }),
);
