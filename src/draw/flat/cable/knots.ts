import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, circle, line, outline, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { boundEnd, doubled, drawnHome, drawnStrand, goes, moves, pull, round, smooth, stands } from './rope.ts';
import { woven, type Passes } from './woven.ts';

const cap = capHeights.step;

/** A frame of a series, drawn round its middle. */
export type Frame = (at: Vec2) => readonly Mark[];

/** Points of a frame round its middle, drawn larger by so much. */
export const about = ([x, y]: Vec2, by = 1) => (...points: readonly Vec2[]): readonly Vec2[] => points.map(([dx, dy]): Vec2 => [x + by * dx, y + by * dy]);

/** The end laid back along the cord, so far, mm. */
export const laidBack = (far: number): Frame => (at) => {
  const p = about(at);
  const bend = smooth(...p([4, -7], [13, -6.4], [18, -4], [19.5, 0], [18, 4], [13, 6.4], [6, 7], [-8, 7]));
  const [[left, y], [right]] = p([-10.4, 7], [20.6, 0]) as [Vec2, Vec2];
  return [
    ...woven([stands(...p([-26, -7], [4, -7])), moves(...bend)], []), ...boundEnd([left + 2.4, y], [-1, 0]), ...goes(...smooth(...p([24, -6], [25.5, 0], [24, 6], [21, 9]))),
    ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [left, right], line: y + 12, feature: [y + 2, y - 4], cap }),
  ];
};

/** The way of a knot in a doubled cord: to its right, round over itself, behind its own beginning and out through the round. */
const begun: readonly Vec2[] = [[-26, 6], [-12, 7.5], [0, 7.5], [11, 5], [15.5, -3], [10, -11.5], [0, -12], [-6.5, -5], [-7.5, 6], [-6.5, 14]];
const finished: readonly Vec2[] = [...begun.slice(0, -1), [-4, 14.5], [2, 16], [6, 9], [6.5, 0], [8.5, -10], [15, -17]];
const PASSES: { readonly begun: Passes; readonly finished: Passes } = { begun: ['u'], finished: ['u', 'o', 'u'] };

/** Two strands of the doubled cord: what stands, and from the share of it told the end that moves. */
function knotted(at: Vec2, way: readonly Vec2[], still: number, passes: Passes): readonly Mark[] {
  const points = smooth(...about(at)(...way));
  const cut = Math.round(still * (points.length - 1));
  return woven([doubled(stands(...points.slice(0, cut + 1))), doubled(moves(...points.slice(cut)))], passes);
}

/** The rounded end of two cords side by side. */
function bight([x, y]: Vec2, [dx, dy]: Vec2): readonly Mark[] {
  const angle = Math.atan2(dy, dx);
  return drawnStrand(moves(...round([x, y], 0.95, angle - Math.PI / 2, angle + Math.PI / 2)));
}

/** The doubled end laid in a round over itself; the way it goes on. */
export const knotBegun: Frame = (at) => {
  const p = about(at);
  return [
    ...goes(...smooth(...p([-6.3, 18], [-3, 20.5], [3, 19], [6, 10.5]))),
    ...knotted(at, begun, 0.55, PASSES.begun), ...bight(p([-6.5, 14])[0] ?? at, [0.1, 1]),
    ...goes(...smooth(...p([6.3, 4.5], [6.5, -1], [8, -8], [11, -14], [15, -18]))),
  ];
};

/** The doubled end in a loose knot, its bight standing out. */
export const knottedLoose: Frame = (at) => {
  const p = about(at);
  return [...knotted(at, finished, 0.55, PASSES.finished), ...bight(p([15, -17])[0] ?? at, [0.7, -0.75]), ...pull(p([18, -17])[0] ?? at, [0.7, -0.7], 3)];
};

/** That knot drawn home by its loop, with a tail that stands out; under a cross one whose tail is drawn in, so that it opens. */
export const loopTight: Frame = ([x, y]) => [
  ...loopAt([x - 2, y - 9], 1), ...pull([x + 15, y - 9], [1, 0], 4), ...ticked([x - 14, y - 17]),
  ...loopAt([x - 2, y + 12], 0), ...crossed([x - 14, y + 5]),
];

/** A loop at the end of a cord, its tail standing out so far as told: 1 as it should, 0 not at all. */
function loopAt([x, y]: Vec2, tail: number): readonly Mark[] {
  const end: Vec2 = [x - 6 - 9 * tail, y + 3.4];
  return [
    ...drawnStrand(stands(...smooth([x - 24, y - 1], [x - 3, y - 1]))),
    ...(tail > 0 ? [...drawnStrand(moves([x - 4, y + 1.6], end)), ...boundEnd(end, [-1, 0.02])] : []),
    ...drawnStrand(moves(...smooth([x, y - 1.4], [x + 6, y - 5.4], [x + 13, y - 4.6], [x + 16, y], [x + 13, y + 4.6], [x + 6, y + 5.4], [x, y + 1.4]))), ...drawnHome([x - 1.5, y]),
  ];
}

/** Where the second loop comes: so far from the inside of the first, mm, the pencil there. */
export const placed = (far: number): Frame => ([x, y]) => [
  ...drawnStrand(stands([x - 14, y - 1], [x + 25, y - 1])), ...drawnStrand(stands(...round([x - 20, y - 1], 4, 0, 2 * Math.PI))), ...drawnHome([x - 13, y - 1], 2.8),
  line({ ...pens.motion, width: 1.1 }, [x + 15, y - 3], [x + 15, y + 1]), ...pencilAt([x + 15, y - 3]),
  ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [x - 22.9, x + 15], line: y + 13, feature: y - 1, cap }), circle([x - 22.9, y - 1], MEASURED, null, 'ink'), circle([x + 15, y - 1], MEASURED, null, 'ink'),
];

/** Radius of the dot on a measured place, mm. */
const MEASURED = 0.8;

/** A pencil whose point is on a place, leaning to the right. */
function pencilAt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + 0.9, y - 3], [x + 4.4, y - 9], [x + 6.4, y - 7.9], [x + 2.8, y - 1.9]];
  return [area('white', ring), outline(pens.cut, ring), area('ink', [[x, y], [x + 0.4, y - 1.3], [x + 1.2, y - 0.8]])];
}

/** The cord laid double at its mark, and the double in the same knot; both cords go on. */
export const secondLoose: Frame = (at) => {
  const p = about(at);
  const way: readonly Vec2[] = [[-19, 6.4], ...finished.slice(1)];
  return [
    ...drawnStrand(stands(...smooth(...p([-27, -1], [-22, 1], [-18.4, 5.5])))), ...drawnStrand(stands(...smooth(...p([25, 21.5], [0, 21.5], [-16, 19], [-21.5, 13], [-18.8, 7.4])))),
    ...knotted(at, way, 0.5, PASSES.finished), ...bight(p([15, -17])[0] ?? at, [0.7, -0.75]), line({ ...pens.motion, width: 1.1 }, ...p([14.4, -20], [18, -16.4])), ...pull(p([19.5, -21])[0] ?? at, [0.7, -0.7], 0.5),
  ];
};

/** That knot drawn home by the loop, while both cords are held apart. */
export const secondTight: Frame = ([x, y]) => [
  ...drawnStrand(stands([x - 23, y - 8], [x + 23, y - 8])),
  ...drawnStrand(moves(...smooth([x - 1.4, y - 6], [x - 6, y + 2], [x - 5, y + 9], [x, y + 12], [x + 5, y + 9], [x + 6, y + 2], [x + 1.4, y - 6]))),
  line({ ...pens.motion, width: 1.1 }, [x, y + 9.6], [x, y + 14.4]), ...drawnHome([x, y - 7.4]), ...pull([x, y + 16.5], [0, 1], 2), ...pull([x - 14, y - 14], [-1, 0], 4), ...pull([x + 14, y - 14], [1, 0], 4),
];
