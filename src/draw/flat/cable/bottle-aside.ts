import type { Vec2 } from '../../../model/index.ts';
import { area, circle, line, outline } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import type { Frame } from './knots.ts';

/** A side of the work seen along its rails, mm of paper, to no scale: half of the post behind them, a rail's radius, and how high the upper and the lower one are over the floor. */
const SIDE = { post: 3.2, rail: 3, upper: 33, lower: 8 } as const;
/** How far out of the rails' plane the cords cross, and how high; a bottle's radius, from its end. */
const CROSSING = { out: 8, high: 28 } as const;
const RADIUS = 7;
/** From the crossing to the middle of a bottle that hangs free, and of one that leans on the lower rail. */
const HANGS = { free: 9.5, leans: 16 } as const;

/** A bottle in its sling seen along the rail below it: free all round, or leaning on that rail, so that the cord bears less than its weight. */
export const bottleAside = (isFree: boolean): Frame => ([x, y]) => {
  const floor = y + 18;
  const [axis, cord]: readonly [number, Vec2] = [x - 10, [x - 10 + CROSSING.out, floor - CROSSING.high]];
  const middle: Vec2 = isFree ? [cord[0], cord[1] + HANGS.free] : [axis + RADIUS + SIDE.rail, cord[1] + HANGS.leans];
  return [
    line(pens.edge, [x - 22, floor], [x + 12, floor]),
    area('white', post(axis, floor)), outline(pens.edge, post(axis, floor)),
    ...[SIDE.upper, SIDE.lower].map((high) => circle([axis, floor - high], SIDE.rail, pens.cut, 'white')),
    line(pens.motion, cord, [middle[0], middle[1] - RADIUS]),
    circle(middle, RADIUS, pens.cut, 'fresh'), circle(middle, 0.36 * RADIUS, pens.edge, 'white'),
    circle(cord, 1.1, null, 'ink'),
    ...(isFree ? ticked([x + 18, y + 12], 1.3) : crossed([x + 18, y + 12], 1.3)),
  ];
};

const post = (axis: number, floor: number): readonly Vec2[] =>
  [[axis - SIDE.post, floor], [axis - SIDE.post, floor - SIDE.upper - 6], [axis + SIDE.post, floor - SIDE.upper - 6], [axis + SIDE.post, floor]];
