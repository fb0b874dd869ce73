import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { cord, doubled, knot, round, smooth } from './rope.ts';

const cap = capHeights.step;

/** A frame of a series, drawn round its middle. */
export type Frame = (at: Vec2) => readonly Mark[];

/** The end laid back along the cord, so far, mm. */
export const laidBack = (far: number): Frame => ([x, y]) => [
  ...cord(...smooth([x - 18, y - 6], [x + 6, y - 6], [x + 13, y - 4], [x + 15, y - 1], [x + 13, y + 2], [x + 6, y + 4], [x - 8, y + 4])),
  ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [x - 8, x + 15], line: y + 13, feature: [y + 6, y + 2], cap }),
];

/** The doubled end in a loose knot, its bight standing out. */
export const knottedLoose: Frame = ([x, y]) => {
  const { marks, ends: [right, left] } = knot([x, y + 3], 12, doubled);
  return [
    ...doubled(...smooth(right, [right[0] + 3, right[1] - 5], [right[0] + 8, right[1] - 7])), ...bight([right[0] + 8, right[1] - 7], [1, -0.2]),
    ...doubled(...smooth(left, [left[0] - 3, left[1] - 5], [left[0] - 9, left[1] - 7])), ...marks,
  ];
};

/** The rounded end of two cords side by side. */
const bight = ([x, y]: Vec2, [along, up]: Vec2): readonly Mark[] => [...doubled([x, y], [x + 3 * along, y + 3 * up]), circle([x + 4 * along, y + 4 * up], 1.5, { ...pens.motion, width: 0.35 }, 'white')];

/** That knot drawn home by its loop and its cord: a loop at the end. */
export const loopTight: Frame = ([x, y]) => [
  ...cord(...smooth([x - 17, y], [x - 3, y])), ...cord([x - 12, y + 2.5], [x - 3, y + 1.2]),
  ...cord(...smooth([x, y - 0.8], [x + 5, y - 4], [x + 12, y - 3.5], [x + 15, y], [x + 12, y + 3.5], [x + 5, y + 4], [x, y + 0.8])), ...drawnHome([x - 1.5, y + 0.4]),
  ...pull([x - 9, y - 7], [-1, 0]), ...pull([x + 7, y - 9], [1, 0]),
];

/** Where the second loop comes: so far from the inside of the first, mm, the pencil there. */
export const placed = (far: number): Frame => ([x, y]) => [
  ...cord([x - 12, y + 1], [x + 18, y + 1]), ...cord(...round([x - 15, y + 1], 3, 0, 2 * Math.PI)), ...drawnHome([x - 9.5, y + 1], 2.2),
  line({ ...pens.motion, width: 0.9 }, [x + 11, y - 0.6], [x + 11, y + 2.6]), ...pencilAt([x + 11, y - 0.6]),
  ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [x - 17.2, x + 11], line: y + 13, feature: [y + 4, y + 3], cap }),
];

/** A pencil whose point is on a place, leaning to the right. */
function pencilAt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + 0.9, y - 3], [x + 4.4, y - 9], [x + 6.4, y - 7.9], [x + 2.8, y - 1.9]];
  return [area('white', ring), outline(pens.cut, ring), area('ink', [[x, y], [x + 0.4, y - 1.3], [x + 1.2, y - 0.8]])];
}

/** The cord laid double at its mark, and the double in a loose knot; both cords go on. */
export const secondLoose: Frame = ([x, y]) => {
  const { marks, ends: [right, left] } = knot([x, y + 5], 11, doubled);
  const out: Vec2 = [left[0] - 6, left[1] - 4];
  return [
    ...cord(...smooth([x + 18, y - 10], [x, y - 10.5], [out[0] + 3, out[1] - 2.6], [out[0], out[1] - 0.4])), ...cord(...smooth([x - 19, y - 10], [out[0] - 3, out[1] - 1.5], [out[0], out[1] + 0.4])),
    ...doubled(...smooth(right, [right[0] + 2, right[1] - 2], [right[0] + 6, right[1] - 3])), ...bight([right[0] + 6, right[1] - 3], [1, -0.1]),
    ...doubled(...smooth(left, [left[0] - 2, left[1] - 2], out)), ...marks,
  ];
};

/** That knot drawn home by the loop and by both cords. */
export const secondTight: Frame = ([x, y]) => [
  ...cord([x - 18, y - 4], [x + 18, y - 4]), ...cord(...smooth([x - 1, y - 3], [x - 4.5, y + 4], [x - 3, y + 10], [x, y + 12], [x + 3, y + 10], [x + 4.5, y + 4], [x + 1, y - 3])),
  ...drawnHome([x, y - 3.6]), ...pull([x - 10, y - 10], [-1, 0]), ...pull([x + 10, y - 10], [1, 0]), ...pull([x + 10, y + 3], [0, 1]),
];

/** The way something is drawn. */
export const pull = ([x, y]: Vec2, [dx, dy]: Vec2, far = 6): readonly Mark[] => [line(pens.motion, [x, y], [x + far * dx, y + far * dy]), arrowhead([x + (far + 3.5) * dx, y + (far + 3.5) * dy], [dx, dy], 4)];

/** A knot drawn home. */
export const drawnHome = ([x, y]: Vec2, radius = 3.4): readonly Mark[] => {
  const ring: readonly Vec2[] = round([x, y], radius, 0, 2 * Math.PI);
  return [area('white', ring), outline(pens.cut, ring), ...[-0.41, 0.12].map((by) => line(pens.edge, ...smooth([x + (by - 0.3) * radius, y + 0.82 * radius], [x + by * radius, y], [x + (by + 0.53) * radius, y - 0.82 * radius])))];
};
