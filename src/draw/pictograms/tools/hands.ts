import { body, stroke, straight, together, white, black, type Ink } from '../ink.ts';

const fingers: readonly (readonly [number, number, number, number])[] = [
  [13, 27, 10.5, 12],
  [20, 25, 19.2, 7],
  [27, 25, 27.8, 7.5],
  [33.5, 27, 36, 12],
];

const thumb = 'M33 38Q40 34 43.5 27';

/** A bare open hand. Fingers are drawn wide in black, then narrow in white, so that neighbours share a line. */
export const handsPicture: Ink = together(
  ...fingers.map(([x1, y1, x2, y2]) => stroke(straight(x1, y1, x2, y2), 8.4)),
  stroke(thumb, 7.6),
  body('M11 26H36V37Q34 46 24 46T11 37z'),
  ...fingers.map(([x1, y1, x2, y2]) => stroke(straight(x1, y1, x2, y2), 4, white)),
  stroke(thumb, 3.4, white),
  stroke(straight(15, 30, 31, 30), 4, white),
  stroke('M16 36Q22 33 27 37', 2, black),
);
