import { black, bold, body, box, dot, line, ring, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import { pencil } from '../motifs.ts';

const ticks = (from: number, pitch: number, count: number, y: number, length: number): string =>
  Array.from({ length: count }, (_, i) => straight(from + i * pitch, y, from + i * pitch, y + (i % 2 ? length * 0.55 : length))).join('');

export const tapePicture: Ink = together(
  body('M27 31H44.5V41H27z'),
  stroke(ticks(34, 4.6, 2, 31, 5), thin),
  stroke('M44.5 31V44', bold),
  body('M4 41V16A10 10 0 0 1 14 6H18A11 11 0 0 1 29 17V41z'),
  ring(16.5, 20, 6.5, line, tint),
  dot(16.5, 20, 1.8),
);

export const pencilPicture: Ink = together(pencil(7, 41, -45, 45, 6), stroke('M33.8 5.7L42.3 14.2', thin));

/** A stock with a blade square to it. */
export const squarePicture: Ink = together(
  body('M15 10H45V19H15z'),
  body(box(5, 4, 11, 40), tint),
);

/** A pointed weight on a string that hangs from the forefinger of a fist. */
export const plumbLinePicture: Ink = together(
  body('M2 3H33.5A4.2 4.2 0 0 1 33.5 11.4H19Q23.5 11.4 23.5 15T19 18.6Q22.5 18.6 22.5 22.2T18 25.8H2'),
  stroke(`${straight(19, 11.4, 11, 11.4)}${straight(19, 18.6, 11, 18.6)}`, thin),
  stroke(straight(32, 3, 32, 26), 2.5),
  body(box(29, 24, 6, 5), black),
  body('M24 29H40V35L32 46.5L24 35z', tint),
);

export const straightEdgePicture: Ink = together(
  stroke(straight(3, 12, 45, 12), thin),
  body(box(3, 17, 42, 17)),
  stroke(ticks(8, 5.4, 7, 17, 8), thin),
);

/** A scale with a ring above and a hook below. */
export const scalePicture: Ink = together(
  ring(24, 6, 3.6, line),
  body(box(14.5, 10, 19, 22)),
  stroke(ticks(19, 3.4, 4, 14, 6), thin),
  stroke(straight(24, 18, 24, 27), bold),
  stroke('M24 32V36A4.4 4.4 0 1 1 19.6 40.4', 3),
);

/** A box that is led over a wall: it tells of the wire behind it by its lamp and by sound. */
export const finderPicture: Ink = together(
  stroke(`${straight(2, 33, 9, 33)}${straight(39, 33, 46, 33)}`, bold),
  body('M17 15H31Q35 15 35 19V42Q35 46 31 46H17Q13 46 13 42V19Q13 15 17 15z', tint),
  dot(24, 22.5, 4),
  stroke(`${straight(19, 32, 29, 32)}${straight(19, 37, 29, 37)}`, thin),
  stroke('M17 10.5Q24 5.5 31 10.5M13 5.5Q24 -1.5 35 5.5', line),
);

/** A closed bottle full of water that hangs on a cord by a piece of string with a knot and loose ends round its neck: a litre is a kilogram. */
export const bottlePicture: Ink = together(
  stroke('M2.5 2.5L24 8L45.5 2.5', line),
  stroke('M19 23.5L14 14Q14 5 24 5T34 14L29 23.5L37 21M29 23.5L36 28.5', line),
  body('M20.5 20V24Q15.5 27 15.5 32V46H32.5V32Q32.5 27 27.5 24V20z', tint),
  body(box(20, 14.5, 8, 8.5), black),
  stroke(straight(19, 23.5, 29, 23.5), line),
  dot(29, 23.5, 2.6),
);
