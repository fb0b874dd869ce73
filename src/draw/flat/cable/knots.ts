import type { CableLoop, Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, circle, line, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { ASIDE, cutEnd, doubled, drawnHome, drawnStrand, goes, moves, pull, round, smooth, stands } from './rope.ts';
import { woven, type Passes } from './woven.ts';

const cap = capHeights.step;

/** A frame of a series, drawn round its middle. */
export type Frame = (at: Vec2) => readonly Mark[];

/** Points of a frame round its middle, drawn larger by so much. */
export const about = ([x, y]: Vec2, by = 1) => (...points: readonly Vec2[]): readonly Vec2[] => points.map(([dx, dy]): Vec2 => [x + by * dx, y + by * dy]);

/** The end laid back along the cord, so far, mm. */
export const laidBack = (far: number): Frame => (at) => {
  const p = about(at);
  const bend = smooth(...p([6, -9], [14, -8.4], [19, -5.4], [20.5, -2], [19, 1.4], [14, 4.4], [6, 5], [-10, 5]));
  const [[left, y], [right]] = p([-10.4, 5], [21.6, 0]) as [Vec2, Vec2];
  return [
    ...woven([stands(...p([-24.6, -9], [6, -9])), moves(...bend)], []), ...cutEnd([left + 0.4, y], [-1, 0]), ...goes(...smooth(...p([22.6, -8], [24.4, -2], [22.6, 4], [19.6, 7]))),
    ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [left, right], line: y + 12, feature: [y + 2, y - 6], cap }),
  ];
};

/** The ways of a knot in a doubled cord from where it is double: to its right, round over itself; behind its own beginning and out through the round; the same with little slack. */
const BEGUN: readonly Vec2[] = [[-17, 6.6], [-9, 7.6], [0, 7.6], [11, 5], [16.5, -3], [11, -12.5], [0, -13.5], [-7.5, -6], [-8.5, 6], [-7.5, 15]];
const FINISHED: readonly Vec2[] = [...BEGUN.slice(0, -1), [-5.4, 14.5], [2, 16.6], [6.6, 9.6], [7.2, 0], [9.4, -11], [17, -19]];
const DRAWN: readonly Vec2[] = [[-15, 3.4], [-8, 4.2], [0, 4.4], [6, 3], [8.8, -2.6], [5.6, -8], [-1, -8.6], [-6.2, -4], [-7, 3.6], [-4.6, 9.4], [0.4, 9.4], [2.2, 4], [2.6, -2], [5.4, -9.4], [13, -13.4], [22, -15]];
const PASSES: { readonly begun: Passes; readonly finished: Passes } = { begun: ['u'], finished: ['u', 'o', 'u'] };

/** A cord beside the middle of a doubled one: above it, or under it. */
const beside = (points: readonly Vec2[], side: 1 | -1): readonly Vec2[] => points.map(([x, y]): Vec2 => [x, y + side * ASIDE]);

/** Two strands of the doubled cord: what stands, and from the share of it told the end that moves. */
function knotted(at: Vec2, way: readonly Vec2[], still: number, passes: Passes): readonly Mark[] {
  const points = smooth(...about(at)(...way));
  const cut = Math.round(still * (points.length - 1));
  return woven([doubled(stands(...points.slice(0, cut + 1))), doubled(moves(...points.slice(cut)))], passes);
}

/** How far single cords reach under the doubled one that they become, mm of paper. */
const OVERLAP = 0.4;

/** Where a doubled cord begins: the cord comes from the left, its own end lies under it. */
function begins(at: Vec2, [x, y]: Vec2, end = 4): readonly Mark[] {
  const p = about(at);
  const [cord, tail] = [beside(p([-24.6, y - 1], [x - 4, y - 0.4], [x + OVERLAP, y]), -1), beside(p([x - end, y], [x + OVERLAP, y]), 1)];
  return [...drawnStrand(stands(...cord)), ...drawnStrand(stands(...tail)), ...cutEnd(tail[0] ?? at, [-1, 0])];
}

/** The rounded end of two cords side by side. */
export function bight([x, y]: Vec2, [dx, dy]: Vec2): readonly Mark[] {
  const angle = Math.atan2(dy, dx);
  return drawnStrand(moves(...round([x, y], ASIDE, angle - Math.PI / 2, angle + Math.PI / 2)));
}

/** A double laid in a round over itself; the way it goes on. */
const roundLaid = (at: Vec2): readonly Mark[] => {
  const p = about(at);
  return [
    ...knotted(at, BEGUN, 0.5, PASSES.begun), ...bight(p([-7.5, 15])[0] ?? at, [0.15, 1]),
    ...goes(...smooth(...p([-4, 19.4], [0, 20.4], [4, 18], [6.2, 13]))), ...goes(...smooth(...p([6.8, 2.5], [7, -3], [8.6, -10], [12, -16.5], [16, -20.5]))),
  ];
};

/** The doubled end laid so. */
export const knotBegun: Frame = (at) => [...begins(at, BEGUN[0] ?? [0, 0]), ...roundLaid(at)];

/** The doubled end in a loose knot, its bight standing out. */
export const knottedLoose: Frame = (at) => {
  const p = about(at);
  return [...begins(at, FINISHED[0] ?? [0, 0]), ...knotted(at, FINISHED, 0.55, PASSES.finished), ...bight(p([17, -19])[0] ?? at, [0.7, -0.72]), ...pull(p([20.4, -13])[0] ?? at, [0.7, -0.7], 3.4)];
};

/** The same knot half drawn home: loop and cord are pulled apart. */
export const knotDrawn: Frame = (at) => {
  const p = about(at);
  return [
    ...begins(at, DRAWN[0] ?? [0, 0], 5), ...knotted(at, DRAWN, 0.5, PASSES.finished), ...bight(p([22, -15])[0] ?? at, [1, -0.17]),
    ...pull(p([14, -20])[0] ?? at, [1, -0.1], 5), ...pull(p([-15, -3])[0] ?? at, [-1, 0], 5),
  ];
};

/** mm of paper to 1 mm in frames with sizes: a cord is as thick as told. */
const scaleOf = ({ cord }: CableLoop): number => 2.2 / cord;

/** A loop at the end of a cord, from the middle of its knot: so long inside, and with a tail so long, mm of paper. */
function loopAt([x, y]: Vec2, long: number, wide: number, tail: number): readonly Mark[] {
  const tip = x + KNOT_WIDE + long;
  const end: Vec2 = [x - KNOT_WIDE - tail, y + 4];
  return [
    ...drawnStrand(stands([x - 24, y - 1], [x - 3, y - 1])),
    ...(tail > 0 ? [...drawnStrand(moves([x - 3, y + 1.8], end)), ...cutEnd(end, [-1, 0.1])] : []),
    ...drawnStrand(moves(...smooth([x, y - 1.2], [x + 0.35 * (long + KNOT_WIDE), y - wide], [x + 0.75 * (long + KNOT_WIDE), y - 0.9 * wide], [tip + 1.1, y], [x + 0.75 * (long + KNOT_WIDE), y + 0.9 * wide], [x + 0.35 * (long + KNOT_WIDE), y + wide], [x, y + 1.2]))),
    ...drawnHome([x, y], KNOT_WIDE),
  ];
}

const KNOT_WIDE = 4.4;

/** A peg seen along it: its head, and the stem that the cord lies round. */
export const peg = (at: Vec2, radius: number): readonly Mark[] => [circle(at, radius, pens.cut, 'panel'), circle(at, radius * 0.5, pens.edge, 'core')];

/** The knot drawn home: how long its loop and its tail are, the loop beside the head of the peg that it goes over. */
export const loopTight = (loop: CableLoop): Frame => ([x, y]) => {
  const scale = scaleOf(loop);
  const [long, tail, head] = [loop.inside * scale, loop.tail * scale, (loop.head / 2) * scale];
  const [left, inside] = [x - 4 + KNOT_WIDE, x - 4 + KNOT_WIDE + long];
  return [
    ...loopAt([x - 4, y], long, head + 2.4, tail), ...peg([inside - head - 1.4, y], head),
    ...linearDimension({ axis: 'x', told: tell.mm(loop.inside), ends: [left, inside], line: y + head + 12.5, feature: y + 1.5, cap }),
    ...linearDimension({ axis: 'x', told: tell.mm(loop.tail), ends: [left - 2 * KNOT_WIDE - tail, left - 2 * KNOT_WIDE], line: y + head + 12.5, feature: [y + 5.6, y + 2.5], cap }),
    ...ticked([x - 16, y - 9]),
  ];
};

/** Wrong: a loop that does not go over the head; a knot whose tail is drawn in, so that it opens. */
export const loopWrong = (loop: CableLoop): Frame => ([x, y]) => {
  const head = (loop.head / 2) * scaleOf(loop);
  return [
    ...loopAt([x - 4.6, y - 11], 0.55 * head, 0.55 * head, 6), ...peg([x + 15, y - 11], head), ...crossed([x - 17, y - 18]),
    ...loopAt([x - 4.6, y + 11], loop.inside * scaleOf(loop), head + 1.4, 0), ...crossed([x - 17, y + 4]),
  ];
};

/** The mark on a cord. */
const markAt = (from: Vec2, to: Vec2): Mark => line({ ...pens.motion, width: 1.1 }, from, to);

/** Radius of the small peg at the end of the cord that leads to the upper peg, mm of paper. */
const SMALL = 2.6;

/** The cord from the upper peg, its loop round it, to where its way begins. */
function fromPeg(peg0: Vec2, ...way: readonly Vec2[]): readonly Mark[] {
  const [next] = way;
  const angle = next === undefined ? 0 : Math.atan2(next[1] - peg0[1], next[0] - peg0[0]);
  const far = SMALL + 4.6;
  const joined: Vec2 = [peg0[0] + far * Math.cos(angle), peg0[1] + far * Math.sin(angle)];
  const ring = round(peg0, SMALL + 1.2, angle + 0.6, angle + 2 * Math.PI - 0.6).filter((_, index) => index % 6 === 0);
  return [...drawnStrand(stands(...smooth(joined, ...way))), ...peg(peg0, SMALL), ...drawnStrand(stands(...smooth(joined, ...ring, joined))), circle(peg0, SMALL * 0.5, pens.edge, 'core'), ...drawnHome(joined, 1.9)];
}

/** Where the upper peg stands in the frames of the second loop, and the way of the free end from where the cord is double. */
const UP: Vec2 = [-21.6, -10.4];
const freeEnd = (at: Vec2): readonly Mark[] => {
  const p = about(at);
  const [x, y] = FINISHED[0] ?? [0, 0];
  const way = smooth(...beside(p([22, 21], [8, 21.4], [-8, 20], [-17, 15.6], [-20.6, 10.6], [x - 1.6, y], [x + OVERLAP, y]), 1));
  return [...drawnStrand(stands(...way)), ...cutEnd(way[0] ?? at, [1, 0])];
};

/** Where the cord is double in the frames of the second loop: one cord comes from the upper peg, the other is the free end. */
const beginsTwice = (at: Vec2): readonly Mark[] => {
  const p = about(at);
  const [x, y] = FINISHED[0] ?? [0, 0];
  return [...fromPeg(p(UP)[0] ?? at, ...beside(p([-20.6, 2.6], [x - 2.4, y - 0.8], [x + OVERLAP, y]), -1)), ...freeEnd(at)];
};

/** Much of a cord that goes down is left out at a place: white between two short waves across it. */
function shortened([x, y]: Vec2): readonly Mark[] {
  const wave = (high: number): readonly Vec2[] => smooth([x - 2.6, high + 0.8], [x - 1, high - 0.7], [x + 1, high + 0.7], [x + 2.6, high - 0.8]);
  return [area('white', [...wave(y - 0.9), ...wave(y + 0.9).toReversed()]), line(pens.cut, ...wave(y - 0.9)), line(pens.cut, ...wave(y + 0.9))];
}

/** The cord folded at its mark, as long as the end was laid back, mm: the mark is the tip, one cord comes from the upper peg, the other is the free end. */
export const foldedAtMark = (far: number): Frame => (at) => {
  const p = about(at);
  const [x, y] = FINISHED[0] ?? [0, 0];
  const [[left, middle], [tip]] = p([x, y], [15.4, y]) as [Vec2, Vec2];
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(far), ends: [left, tip], line: middle - 9, feature: [middle - 3, middle - 3], cap }),
    ...beginsTwice(at), ...shortened(p([-21.3, -0.6])[0] ?? at), ...drawnStrand(doubled(moves(...p([x, y], [14, y])))), ...bight(p([14, y])[0] ?? at, [1, 0]), markAt(...p([13.6, y], [18.6, y]) as [Vec2, Vec2]),
  ];
};

/** The double laid in a round over itself, as at the cord's end. */
export const secondBegun: Frame = (at) => [...beginsTwice(at), ...roundLaid(at), markAt(...about(at)([-7.6, 13.8], [-7, 18.8]) as [Vec2, Vec2])];

/** The double in the same knot, the mark at its tip. */
export const secondLoose: Frame = (at) => {
  const p = about(at);
  return [
    ...beginsTwice(at), ...knotted(at, FINISHED, 0.55, PASSES.finished), ...bight(p([17, -19])[0] ?? at, [0.7, -0.72]), markAt(...p([16.8, -22.6], [20.4, -18.8]) as [Vec2, Vec2]),
  ];
};

/** That knot drawn home by the loop, while both cords are held apart; as it is used: the upper peg above, the free end below. */
export const secondTight = (loop: CableLoop): Frame => ([x, y]) => {
  const long = loop.inside * scaleOf(loop);
  const [left, tip] = [x - 10, x - 10 + KNOT_WIDE + long];
  const middle = y - 4;
  return [
    ...fromPeg([left, y - 29], [left, middle]), ...drawnStrand(stands([left, middle], [left, y + 27])), ...cutEnd([left, y + 27], [0, 1]),
    ...drawnStrand(moves(...smooth([left, middle - 1.2], [left + 0.35 * long + 2, middle - 6.6], [left + 0.75 * long + 2, middle - 5.6], [tip + 1.1, middle], [left + 0.75 * long + 2, middle + 5.6], [left + 0.35 * long + 2, middle + 6.6], [left, middle + 1.2]))),
    markAt([tip - 0.8, middle], [tip + 3.2, middle]), ...drawnHome([left, middle], KNOT_WIDE),
    ...linearDimension({ axis: 'x', told: tell.mm(loop.inside), ends: [left + KNOT_WIDE, tip], line: middle + 16, feature: [middle + 3, middle + 1.6], cap }),
    ...pull([tip + 5, middle], [1, 0], 2), ...pull([left - 5, middle - 8], [0, -1], 4), ...pull([left - 5, middle + 8], [0, 1], 4),
  ];
};
