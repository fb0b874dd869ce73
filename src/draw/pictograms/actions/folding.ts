import { arcArrow, arrow } from '../arrows.ts';
import { black, body, bold, box, dot, placed, ring, stroke, straight, thin, tint, together, type Ink } from '../ink.ts';
import { pinSide, tubeSection } from '../motifs.ts';

/** A wheel rolled along a line presses it into the sheet. */
export const crease: Ink = together(
  body('M2.5 33H45.5V45H2.5z', tint),
  stroke(straight(7, 39, 18, 39), 3),
  stroke(straight(23, 28, 33, 17), bold),
  placed(31, 19, -47, body('M0 -3.8H17Q19 0 17 3.8H0z', black)),
  ring(23, 29, 9, bold),
  dot(23, 29, 2.4),
  arrow(3, 15, 18, 15),
);

/** In section: the flap is bent up round the tube. */
export const wrapSide: Ink = together(
  stroke('M45 42H22A14 14 0 0 1 10.6 20', bold),
  tubeSection(22, 28, 8),
  arcArrow(22, 28, 21, 205, 325),
);

const strip = body(box(2.5, 30, 43, 13), tint);

/** The two pins at the ends go in first. */
export const pinEnds: Ink = together(
  strip,
  pinSide(9, 28, 5.5, 9),
  pinSide(39, 28, 5.5, 9),
  ring(24, 36.5, 2.6, thin),
  arrow(9, 3, 9, 20),
  arrow(39, 3, 39, 20),
);

/** Then the middle ones, between two that sit. */
export const pinMiddle: Ink = together(
  strip,
  pinSide(24, 26, 5.5, 11),
  pinSide(9, 30, 5.5, 0),
  pinSide(39, 30, 5.5, 0),
  arrow(24, 2.5, 24, 19),
);
