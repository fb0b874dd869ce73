import type { Vec2 } from '../../../model/index.ts';
import { tell, type Told } from '../../../scene/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, ringedNumeral, toldWidth, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { pencilAt, type CableCut } from './cut-picture.ts';
import { FRAMES } from './frames.ts';
import { peg } from './knots.ts';
import { cutEnd, drawnHome, drawnStrand, pull, round, smooth, stands } from './rope.ts';

const cap = capHeights.step;
const HEIGHT = 56;
/** Places of the upper peg from the paper's left upper corner and of the lower one from its right upper corner, mm of paper. */
const UPPER: Vec2 = [26, 11];
const LOWER: Vec2 = [28, 33];
export const HEAD = 3.6;
/** The least share of the diagonal from the mark to the lower peg. */
const LEAST = 0.18;

/** A cord with its loop hung on the upper peg, pulled straight to the lower one and marked: how far from the upper peg's middle, how far from there to the lower one's. */
export const wholeCordPicture = (cable: CableCut, { width }: Paper): DrawnPicture => toPicture({ width, height: HEIGHT }, wholeCordMarks(cable, width));

/** The marks of the picture, for the tests. */
export function wholeCordMarks(cable: CableCut, width: number): readonly Mark[] {
  const [from, to]: readonly [Vec2, Vec2] = [UPPER, [width - LOWER[0], LOWER[1]]];
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Vec2 = [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
  const on = (at: number, off = 0): Vec2 => [from[0] + at * along[0] - off * along[1], from[1] + at * along[1] + off * along[0]];
  const mark = far * (1 - Math.max(LEAST, cable.before / cable.length));
  const slanted = (ends: Vec2, off: number, told: Told): readonly Mark[] => slantedDimension(on(ends[0]), on(ends[1]), off, told);
  const end = on(far + 12);
  return [
    ...[from, to].flatMap((at) => post(at)),
    ...drawnStrand(stands(on(9), end)), ...cutEnd(end, along), ...pull(on(far + 14), along, 5),
    ...[from, to].flatMap((at) => peg(at, HEAD)), ...loopRound(from, along), ...peg(from, HEAD),
    line({ ...pens.motion, width: 1.1 }, on(mark, -2), on(mark, 2)), ...pencilAt(on(mark, -1.8)),
    ...slanted([0, mark], 9, tell.mm(cable.between)), ...slanted([mark, far], 9, tell.mm(cable.before)), ...slanted([0, far], 17, tell.mm(cable.length)),
    ...[0, mark, far].map((at) => circle(on(at), MEASURED, null, 'ink')),
    ringedNumeral(tell.number(FRAMES.hooked), [from[0] - 16, from[1] - 5], capHeights.order, pens.edge), ringedNumeral(tell.number(FRAMES.marked), [on(mark)[0] - 8, on(mark)[1] - 11], capHeights.order, pens.edge),
    // The loop comes over the head from before it.
    line({ ...pens.motion, width: 0.9 }, [from[0] - 16, from[1] + 14], [from[0] - 8.5, from[1] + 7]), arrowhead([from[0] - 5.6, from[1] + 4.3], [0.73, -0.68], 4.4),
  ];
}

/** Radius of the dot on a measured place, mm of paper. */
const MEASURED = 0.7;

/** A stretch of the post behind a peg. */
function post([x, y]: Vec2): readonly Mark[] {
  const sides = [-4.4, 4.4];
  const [top, foot] = [y - 10, y + 10];
  return [
    area('white', [[x - 4.4, top], [x + 4.4, top], [x + 4.4, foot], [x - 4.4, foot]]), ...sides.map((side) => line(pens.edge, [x + side, top], [x + side, foot])),
    ...[top, foot].map((at) => line(pens.edge, ...smooth([x - 4.4, at], [x - 2, at + 0.8], [x + 2, at - 0.8], [x + 4.4, at]))),
  ];
}

/** The loop round its peg, its knot on the cord that goes on along the way told. */
export function loopRound([x, y]: Vec2, [dx, dy]: Vec2): readonly Mark[] {
  const angle = Math.atan2(dy, dx);
  const ring = round([x, y], HEAD + 1.4, angle + 0.5, angle + 2 * Math.PI - 0.5);
  const at: Vec2 = [x + 10 * dx, y + 10 * dy];
  const tail: Vec2 = [at[0] + 8.5 * dx, at[1] + 8.5 * dy - 3.6];
  return [...drawnStrand(stands(...smooth(at, ...ring.filter((_, index) => index % 6 === 0), at))), ...drawnStrand(stands([at[0] + dx, at[1] + dy - 2], tail)), ...cutEnd(tail, [1, 0]), ...drawnHome(at, 2.8)];
}

/** White between a figure and its line's ends, mm of paper. */
const CLEAR = 1.2;

/** A length between two places, its line so far beside them, broken for its figure, which stands level. */
function slantedDimension(from: Vec2, to: Vec2, off: number, told: Told): readonly Mark[] {
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Vec2 = [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
  const moved = ([x, y]: Vec2, by: number): Vec2 => [x - by * along[1], y + by * along[0]];
  const middle = moved([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], off);
  const half = toldWidth(told, cap, 400) / 2 + CLEAR;
  const broken = (way: 1 | -1): Vec2 => [middle[0] + way * half, middle[1] + (way * half * along[1]) / along[0]];
  return [
    ...[from, to].map((at) => line(pens.dimension, moved(at, 0), moved(at, off + 1))), line(pens.dimension, moved(from, off), broken(-1)), line(pens.dimension, broken(1), moved(to, off)),
    arrowhead(moved(from, off), [-along[0], -along[1]]), arrowhead(moved(to, off), along),
    figure(told, middle, cap),
  ];
}
