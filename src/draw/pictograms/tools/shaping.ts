import { black, body, box, dot, placed, ring, solid, stroke, straight, thin, tint, together, white, bold, type Ink } from '../ink.ts';

/** A blunt wheel that presses a line into a sheet. */
/** A frame with a screw that presses two boards together. */
export const clampPicture: Ink = together(
  body(box(3, 20, 24, 6), tint),
  body(box(3, 27, 24, 6), tint),
  stroke('M15 19V6H39V40H15V38', 4),
  stroke(straight(15, 35, 15, 45), 3),
  stroke(straight(9, 45, 21, 45), 3),
);

/** Two treads to stand on. */
export const stepsPicture: Ink = together(
  stroke('M14 6H26L38 45', 3),
  stroke('M16 6L8 45', 3),
  body(box(11, 3, 18, 5), tint),
  stroke(straight(11, 20, 29, 20), bold),
  stroke(straight(9, 33, 33, 33), bold),
);

export const creaserPicture: Ink = together(
  body('M2 38H9Q15 48 21 38H46V45H2z', tint, thin),
  stroke(straight(15, 32, 30, 17), bold),
  placed(29, 18, -45, body('M0 -4.2H17Q20 -4.2 20 0T17 4.2H0z', black)),
  ring(15, 31, 9.5, bold),
  dot(15, 31, 2.5),
);

export const malletPicture: Ink = placed(24.6, 25.5, -35,
  body('M-3.2 -6H3.2V22Q0 25 -3.2 22z'),
  body('M-15 -19Q-17.5 -11 -15 -3H15Q17.5 -11 15 -19z', black),
  stroke(`${straight(-10, -15, -10, -7)}${straight(10, -15, 10, -7)}`, thin, white),
);

/** A cordless drill, bit to the left. */
export const drillPicture: Ink = together(
  stroke(straight(2, 15, 12, 15), 3),
  body('M11 11L17 9V21L11 19z', black),
  body('M17 7H40Q45 7 45 15T40 23H17z'),
  body('M27 23H38L41 37H30z'),
  body('M24 36H45V44H24z', black),
  solid('M22.5 23H28.5L29.3 27Q24.5 28.5 22.5 23z'),
);

/** A flat file with its handle, and a drop of water. */
export const filePicture: Ink = together(
  placed(21, 25, -45,
    body(box(-21, -5, 31, 10)),
    stroke(Array.from({ length: 5 }, (_, i) => straight(-18 + i * 6, -4.5, -14 + i * 6, 4.5)).join(''), thin),
    body('M10 -2.5H14Q22 -6 29 -3V3Q22 6 14 2.5H10z', black, thin),
  ),
  body('M37 27Q44 36 41 40.5A5.4 5.4 0 0 1 33 40.5Q30 36 37 27z'),
);

export const screwdriverPicture: Ink = placed(24, 24, -45,
  body('M-27 -2H-1V2H-27L-29 0z'),
  body('M-1 -4H4Q8 -7.5 14 -6.5H24Q28 -6.5 28 0T24 6.5H14Q8 7.5 4 4H-1z', black, thin),
  stroke(straight(11, 0, 23, 0), 2.5, white),
);
