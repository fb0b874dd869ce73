import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { atMost, atMostWidth } from '../../kit/at-most.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed } from '../../kit/right-wrong.ts';
import { FRAMES } from './frames.ts';
import type { Frame } from './knots.ts';
import { drawnStrand, gapUnder, moves, smooth, stands, wideOf } from './rope.ts';

const cap = capHeights.step;
/** From the middle of the face to its pegs, mm of paper: to the side and up. */
const HALF: Vec2 = [26, 20.5];
/** How far the cord of the picture gives way, mm of paper. */
const SAG = 12;
const HEAD = 2.8;

/** What is hung on each of how many cords, and how far the cord may give way. */
interface Test {
  readonly mass: number;
  readonly most: number;
  readonly count: number;
}

/**
 * A face with its crossed cords on four pegs. A full bottle hung on the middle of one, by a string laid twice round it so that
 * it does not slide; how far straight down the cord is from the straight line between its pegs. So with each cord.
 */
export const hungMass = ({ mass, most, count }: Test): Frame => ([x, y]) => {
  const top: Vec2 = [x - 5, y - 12];
  const low: Vec2 = [top[0], top[1] + SAG];
  const [left, right]: readonly [Vec2, Vec2] = [[top[0] - HALF[0], top[1] + HALF[1]], [top[0] + HALF[0], top[1] - HALF[1]]];
  const other: readonly Vec2[] = [[left[0], right[1]], [right[0], left[1]]];
  const told = tell.mm(most);
  const ruler = top[0] + 10;
  const foot = low[1] + wideOf(stands()) / 2;
  return [
    ...drawnStrand(stands(...other)), ...other.map((at) => circle(at, HEAD, pens.cut, 'panel')),
    line({ ...pens.halfCut, width: 0.4 }, left, right),
    gapUnder(stands(left, low, right)), ...drawnStrand(moves(left, low, right)), ...[left, right].map((at) => circle(at, HEAD, pens.cut, 'panel')),
    // The ruler stands upright at the place where the bottle hangs.
    line(pens.dimension, [top[0], top[1]], [ruler + 9, top[1]]), line(pens.dimension, [low[0] + 1, foot], [ruler + 9, foot]),
    ...upright(ruler + 7, top[1], foot), ...atMost(told, [ruler + 9.5 + atMostWidth(told, cap) / 2, (top[1] + low[1]) / 2 + 0.5], cap),
    ...turns(low), ...bottle([low[0], low[1] + 8]),
    figure(tell.volume(mass), [low[0] - 7 - toldWidth(tell.volume(mass), cap, 700) / 2, low[1] + 25], cap, 700), figure(tell.mass(mass), [low[0] - 7 - toldWidth(tell.mass(mass), cap, 700) / 2, low[1] + 31], cap, 700),
    figure(tell.times(count), [right[0] - 2, low[1] + 29], capHeights.count, 700),
    ...again([top[0] + 12, low[1] + 18]),
  ];
};

/** Where it gives way more: its end is tied again, from the move round the lower peg on. */
const again = ([x, y]: Vec2): readonly Mark[] => [
  ...crossed([x, y]), line(pens.motion, [x + 3.4, y], [x + 5, y]), arrowhead([x + 8, y], [1, 0], 3), ringedNumeral(tell.number(FRAMES.around), [x + 13, y], capHeights.order, pens.edge),
];

/** An upright dimension line between two heights, its heads outside where there is no room. */
const upright = (x: number, from: number, to: number): readonly Mark[] => [line(pens.dimension, [x, from], [x, to]), arrowhead([x, from], [0, -1]), arrowhead([x, to], [0, 1])];

/** A string twice round the cord. */
const turns = ([x, y]: Vec2): readonly Mark[] => [
  ...[-1.6, 1.2].map((by) => line({ ...pens.motion, width: 0.8 }, [x + by - 0.6, y - 2.2 - by * 0.4], [x + by + 0.8, y + 2.2 - by * 0.2])),
  line({ ...pens.motion, width: 0.8 }, ...smooth([x + 1.8, y + 2], [x + 0.8, y + 5], [x, y + 8])), line({ ...pens.motion, width: 0.8 }, ...smooth([x - 1.4, y + 2.4], [x - 0.6, y + 5], [x, y + 8])),
];

/** A bottle full of water on its string. */
function bottle([x, y]: Vec2): readonly Mark[] {
  const neck = cornersOf({ x: x - 1.6, y: y + 1, width: 3.2, height: 2.6 });
  const ring: readonly Vec2[] = [[x - 1.4, y + 3.6], [x + 1.4, y + 3.6], [x + 1.4, y + 6.4], [x + 5, y + 10.5], [x + 5, y + 25], [x - 5, y + 25], [x - 5, y + 10.5], [x - 1.4, y + 6.4]];
  return [line({ ...pens.motion, width: 0.8 }, [x, y - 0.4], [x, y + 2]), area('white', ring), area('panel', [[x - 1.4, y + 6.4], [x + 1.4, y + 6.4], ...ring.slice(3, 7)]), outline(pens.cut, ring), area('ink', neck)];
}
