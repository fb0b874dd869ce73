import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { atMost, atMostWidth } from '../../kit/at-most.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../../kit/marks.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { Frame } from './knots.ts';
import { drawnStrand, smooth, stands, wideOf } from './rope.ts';

const cap = capHeights.step;
/** From the middle of the cord to a stud, mm of paper: to the side and up. */
const HALF: Vec2 = [28, 18.5];
/** How far the cord of the picture gives way, mm of paper. */
const SAG = 12;

/** What is hung, and how far the cord may give way. */
interface Test {
  readonly mass: number;
  readonly most: number;
}

/**
 * A full bottle hung on the middle of a slanting cord, by a string laid twice round it so that it does not slide; how far
 * straight down the cord is from the straight line between its studs. First the one cord of a face, then the other.
 */
export const hungMass = ({ mass, most }: Test): Frame => ([x, y]) => {
  const top: Vec2 = [x - 5, y - 13];
  const low: Vec2 = [top[0], top[1] + SAG];
  const studs: readonly Vec2[] = [[top[0] - HALF[0], top[1] + HALF[1]], [top[0] + HALF[0], top[1] - HALF[1]]];
  const [left = top, right = top] = studs;
  const told = tell.mm(most);
  const ruler = top[0] + 9;
  return [
    line(earlier(pens.motion), [top[0] - HALF[0] * 0.9, top[1] - HALF[1] * 0.9], [top[0] + HALF[0] * 0.9, top[1] + HALF[1] * 0.9]),
    line({ ...pens.halfCut, width: 0.4 }, left, right),
    ...drawnStrand(stands(left, low, right)), ...studs.map((at) => circle(at, 2.8, pens.cut, 'panel')),
    ringedNumeral(tell.number(1), [right[0] + 6, right[1] + 2], capHeights.order, pens.edge), ringedNumeral(tell.number(2), [top[0] + HALF[0] * 0.9 + 4, top[1] + HALF[1] * 0.9 + 3], capHeights.order, pens.edge),
    // The ruler stands upright at the place where the bottle hangs.
    line(pens.dimension, [top[0], top[1]], [ruler + 9, top[1]]), line(pens.dimension, [low[0] + 1, low[1] + wideOf(stands()) / 2], [ruler + 9, low[1] + wideOf(stands()) / 2]),
    ...upright(ruler + 7, top[1], low[1] + 1.1), ...atMost(told, [ruler + 9.5 + atMostWidth(told, cap) / 2, (top[1] + low[1]) / 2 + 0.5], cap),
    ...turns(low), ...bottle([low[0], low[1] + 8]),
    figure(tell.volume(mass), [low[0] + 7 + toldWidth(tell.volume(mass), cap, 700) / 2, low[1] + 25], cap, 700), figure(tell.mass(mass), [low[0] + 7 + toldWidth(tell.mass(mass), cap, 700) / 2, low[1] + 31], cap, 700),
  ];
};

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
