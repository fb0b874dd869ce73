import { arrow } from '../arrows.ts';
import { black, body, box, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';

/** Corner joint seen from above: a ring for the post and two arms. */
const joint = (x: number, y: number): Ink => body(box(x - 5, y - 5, 10, 10), black, thin);

/** A tube goes into the arm of a corner joint. */
export const pushTubes: Ink = together(
  body('M2.5 4H26V12H14V26H26V34H2.5z', black, thin),
  body(box(20, 13, 25.5, 12)),
  arrow(45, 41, 20, 41),
);

/** Three sides stand; the fourth closes the frame. */
export const closeFrame: Ink = together(
  stroke('M8 22V41H40V22', 5),
  joint(8, 41), joint(40, 41),
  stroke(straight(8, 7, 40, 7), 5),
  joint(8, 7), joint(40, 7),
  arrow(18, 12, 18, 32), arrow(30, 12, 30, 32),
);

/** The frame is laid on the panel. */
export const layFrame: Ink = together(
  body('M12 30H46L36 45.5H2z', tint),
  body('M15 5H43L34 18H6z', undefined, 4),
  arrow(24.5, 11, 24.5, 38),
);
