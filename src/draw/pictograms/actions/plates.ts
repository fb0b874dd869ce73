/** A flat panel on bare tubes: cut, held, pinned. */
import { arrow } from '../arrows.ts';
import { black, body, bold, box, dashes, ring, solid, straight, stroke, thin, tint, together, white, type Ink } from '../ink.ts';
import { knife, tubeSection } from '../motifs.ts';

const hole = (x: number, y: number): Ink => ring(x, y, 2.2, thin, white);

/** A rectangle with its holes, cut from the corner of a sheet. */
export const cutPanel: Ink = together(
  body(box(2.5, 9, 43, 36)),
  body(box(2.5, 24, 27, 21), tint, bold),
  ...[9, 23].flatMap((x) => [30, 39].map((y) => hole(x, y))),
  knife(30, 23.5, -62, 21, 4.4),
);

const railWithJoints = (y: number): Ink => together(
  stroke(straight(9, y, 39, y), bold),
  solid(`${box(4, y - 5, 10, 8)}${box(34, y - 5, 10, 8)}`),
);

/** Bare rails over a deck, joint over joint, where the posts will go through. */
export const setRails: Ink = together(
  body(box(2.5, 38, 43, 7.5), tint),
  railWithJoints(31),
  railWithJoints(19),
  stroke(`${dashes(9, 2, 9, 13, 3, 4)}${dashes(39, 2, 39, 13, 3, 4)}`, thin),
  arrow(24, 2.5, 24, 14.5),
);

const bothTubes = together(tubeSection(11.2, 13, 7.5), tubeSection(11.2, 35, 7.5));

/** In section: the panel is held against two tubes, from the inner side. */
export const holdPanel: Ink = together(
  bothTubes,
  body(box(23, 2.5, 7, 43), tint),
  arrow(46, 13, 33, 13),
  arrow(46, 35, 33, 35),
);

/** In section: the pin comes from the panel's side, the wing nut sits on the tube's. */
export const pinPanel: Ink = together(
  body(box(30, 2.5, 7, 43), tint),
  tubeSection(20.5, 24, 7.5),
  stroke(straight(4, 24, 40, 24), 3.4),
  body('M39.5 17H44V31H39.5z', black),
  body('M10.5 20L6 21L1.5 14.5V33.5L6 27L10.5 28z', black),
);
