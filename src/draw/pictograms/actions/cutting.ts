import { arrow } from '../arrows.ts';
import { black, body, box, placed, solid, stroke, thin, tint, together, white, type Ink } from '../ink.ts';
import { knife } from '../motifs.ts';

const sawTeeth = Array.from({ length: 6 }, (_, i) => `L${28 - (i + 0.5) * 4.6} 4.5L${28 - (i + 1) * 4.6} 0`).join('');

/** A tube in two pieces, the saw in the gap. */
export const cutTubes: Ink = together(
  body(box(2.5, 29, 19, 13)),
  body(box(27.5, 29, 18, 13)),
  placed(19.5, 40, -62,
    body(`M0 -9L28 -11V0${sawTeeth}z`, white, thin),
    body('M28 -11H38V0H28z', black, thin),
  ),
);

/** One sheet parted from another. */
export const cutBlank: Ink = together(
  body(box(2.5, 14, 24, 31), tint),
  body('M32 14H45.5V45H32z', white),
  knife(29.3, 32, -66, 31, 4.4),
);

/** A punch over the row of holes along an edge. */
export const punchHoles: Ink = together(
  body('M7 33H46L41 45.5H2z', tint),
  ...[9.5, 38.5].map((x) => solid(`M${x - 4} 39.5a4 2.6 0 0 1 8 0a4 2.6 0 0 1 -8 0z`)),
  body('M19.5 5H28.5V25L27.5 40H20.5L19.5 25z', black, thin),
  body('M17 2.5H31V8H17z', black),
  stroke('M24 13V22', thin, white),
  arrow(36, 10, 36, 29),
);

/** A square piece lifted out of the corner; the inside corner stays round. */
export const cutNotches: Ink = together(
  body('M20 45.5V31Q20 27 16 27H2.5V8H45.5V45.5z', tint),
  body('M2.5 33H13.5V45.5H2.5z', white, thin),
  knife(19, 28, -40, 32, 4.6),
);

/** In section: the blade goes through the upper skin and the core and leaves the lower skin whole. */
export const halfCut: Ink = together(
  body(box(2.5, 24, 43, 21), tint, thin),
  solid(box(1.5, 22, 45, 5.5)),
  solid('M17.5 20.5H30.5V31L24 43L17.5 31z', white),
  solid(box(1.5, 41, 45, 5.5)),
  body('M18.5 3H29.5V29L24 40.5L18.5 29z'),
  body('M16.5 2.5H31.5V13H16.5z', black),
);
