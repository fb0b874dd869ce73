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

const lowBed = together(
  floor(3, 69, 45),
  stroke(`${straight(29, 15, 29, 44)}${straight(67, 15, 67, 44)}`, bold),
  stroke(`${straight(29, 20, 67, 20)}`, 3),
  stroke(`${straight(29, 39, 67, 39)}`, bold),
  body(box(32, 31, 32, 5.5), tint, thin),
);

const child = together(
  dot(14, 11, 4.5),
  solid('M9 17H19L17.5 31H10.5z'),
  stroke('M9 18.5L6.5 28M19 18.5L21.5 28', 3),
  stroke('M12 31L11.5 43M16 31L16.5 43', 3.6),
);

const baby = together(
  dot(38, 26.5, 4),
  solid('M42 30.5Q41 23.5 48 23.5L61 27Q63 28.5 61 30.5z'),
);

/** A child who stands beside the bed, not a baby in it. */
export const bedChild: Pair = {
  right: together(lowBed, child),
  wrong: together(lowBed, baby),
};
