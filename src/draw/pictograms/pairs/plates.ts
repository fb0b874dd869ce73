/** A flat panel on its tubes, seen from the inner side; a bed and whom it is for. */
import { body, bold, box, dashes, dot, placed, ring, solid, straight, stroke, thin, tint, together, white, type Ink } from '../ink.ts';
import { floor, tubeSide } from '../motifs.ts';
import type { Pair } from './pair.ts';

const tubes = together(tubeSide(2.5, 69.5, 14, 4), tubeSide(2.5, 69.5, 34, 4));
const middles = stroke(`${dashes(3, 14, 69, 14, 4, 5)}${dashes(3, 34, 69, 34, 4, 5)}`, thin);

const onTubes = (angle: number): Ink => together(
  tubes,
  placed(36, 24, angle,
    body(box(-20, -18.5, 40, 37), tint, 3),
    ...[-12, 12].flatMap((x) => [-10, 10].map((y) => ring(x, y, 2.4, thin, white))),
  ),
  middles,
);

/** The panel's edges lie along the tubes, its holes over their middles. */
export const panelFlush: Pair = { right: onTubes(0), wrong: onTubes(10) };

/** A low bed with its guard, at the right of the picture. */
const lowBed = together(
  floor(3, 69, 45.5),
  stroke(`${straight(43, 17, 43, 44.5)}${straight(67.5, 17, 67.5, 44.5)}`, bold),
  stroke(straight(43, 20, 67, 20), 3),
  stroke(straight(43, 39.5, 67, 39.5), bold),
  body(box(46, 31, 18.5, 6), tint, thin),
);

/** Large head, short legs: a small child on its feet, a hand on the bed. */
const standingChild = together(
  dot(22, 8.5, 6),
  solid('M16 17H28L27 33H17z'),
  stroke('M27 19L39.5 23.5M17 19L11.5 29', 3.4),
  stroke('M19.8 32L19 43.5M24.4 32L25.5 43.5', 4.2),
);

/** On hands and knees, with a napkin. */
const crawlingBaby = together(
  dot(31, 21, 7),
  stroke('M10.5 30Q17 25.5 25 29', 9),
  stroke('M25.5 30L28.5 43M20.5 31L20 43', 3.6),
  stroke('M10.5 31L14 42.8H4.5', 4.6),
  body('M4.5 27.5Q8 23 13.5 24.5L15 35Q8 38.5 4.5 33z', white, thin),
);

/** A child who stands by the bed, not a baby who crawls. */
export const bedChild: Pair = {
  right: together(lowBed, standingChild),
  wrong: together(lowBed, crawlingBaby),
};
