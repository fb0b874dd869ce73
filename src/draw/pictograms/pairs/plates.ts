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
  stroke(`${straight(48, 27, 48, 45)}${straight(68, 27, 68, 45)}`, bold),
  stroke(straight(48, 28.5, 68, 28.5), 3),
  stroke(straight(48, 41.5, 68, 41.5), bold),
  solid(box(48, 35, 20, 5), tint),
  grownUp(11, 45, 42),
);

/** On hands and knees, with a napkin, its head towards the bed. */
const crawlingBaby = together(
  dot(38.5, 32.5, 4.6),
  stroke('M26.5 37Q30.5 34.5 34.5 36.5', 5),
  stroke('M35 37.5V44', 3),
  stroke('M26.5 38L28.5 44H23.5', 3),
);

/** A child who walks, not a baby who crawls. */
export const bedChild: Pair = {
  right: together(bedAndGrownUp, child(34, 45, 26)),
  wrong: together(bedAndGrownUp, crawlingBaby),
};
