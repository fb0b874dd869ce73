/** A flat panel on its tubes, seen from the inner side; a bed and whom it is for. */
import { body, bold, box, dashes, dot, placed, ring, solid, straight, stroke, thin, tint, together, white, type Ink } from '../ink.ts';
import { floor, tubeSide } from '../motifs.ts';
import { child, grownUp } from '../people.ts';
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

/** A low bed with its guard, at the right of the picture, and a grown-up, by whom the child's size is seen. */
const bedAndGrownUp = together(
  floor(2, 70, 46.3),
  stroke(`${straight(45.5, 20, 45.5, 45)}${straight(70, 20, 70, 45)}`, bold),
  stroke(straight(45.5, 21.5, 70, 21.5), 3),
  stroke(straight(45.5, 41.5, 70, 41.5), bold),
  solid(box(47.5, 35, 20.5, 4.5), tint),
  grownUp(11, 45, 42),
);

/** On hands and knees, with a napkin, its head towards the bed. */
const crawlingBaby = together(
  dot(37, 32.5, 4.6),
  stroke('M25 37Q29 34.5 33 36.5', 5),
  stroke('M33.5 37.5V44', 3),
  stroke('M25 38L27 44H22', 3),
);

/** Somebody lies on the mattress, `length` units long from the crown: whom the bed is for. */
const lying = (length: number): Ink => together(dot(51.5, 30.8, 3.6), stroke(`M58.5 32.2H${47.9 + length}`, 5.2));

/** A child who walks lies in it, not a baby who crawls. */
export const bedChild: Pair = {
  right: together(bedAndGrownUp, child(31, 45, 26), lying(18)),
  wrong: together(bedAndGrownUp, crawlingBaby, lying(12)),
};
