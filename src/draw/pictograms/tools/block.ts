import { arrow } from '../arrows.ts';
import { body, bold, box, line, straight, stroke, tint, together, type Ink } from '../ink.ts';

/** A block as it is fetched, put to the work or under it, and taken away again. */
export const blockPicture: Ink = together(
  body('M4 14L11 6H28L21 14z'),
  body('M21 14L28 6V28L21 36z'),
  body(box(4, 14, 17, 22), tint),
  stroke(straight(3, 44, 45, 44), bold),
  arrow(46, 14, 31, 14, { shaft: line, head: 8 }),
  arrow(31, 27, 46, 27, { shaft: line, head: 8 }),
);
