import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { atMost, atMostWidth } from '../../kit/at-most.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed } from '../../kit/right-wrong.ts';
import { FRAMES } from './frames.ts';
import { pencil } from '../pencil.ts';
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

/** A lath that stands on the floor before the middle of the face: half its width, how far it reaches over the cords, and the floor under them, mm of paper. */
const LATH = { half: 3.2, over: 9, floor: 48 } as const;
/** A pencil's mark on the lath reaches out of it. */
const MARK = 1.6;

/** The cords' middle, and the pegs of the one that is looked at. */
const faceAt = ([x, y]: Vec2) => {
  const top: Vec2 = [x - 3, y - 12];
  const [left, right]: readonly [Vec2, Vec2] = [[top[0] - HALF[0], top[1] + HALF[1]], [top[0] + HALF[0], top[1] - HALF[1]]];
  return { top, left, right, other: [[left[0], right[1]], [right[0], left[1]]] as readonly Vec2[] };
};

/** Where the cord crosses the lath before anything hangs on it: its lower edge is marked there. */
export const markedStraight: Frame = (place) => {
  const { top, left, right, other } = faceAt(place);
  const edge = top[1] + wideOf(stands()) / 2;
  return [
    ...drawnStrand(stands(...other)), ...drawnStrand(moves(left, right)), ...pegs([left, right, ...other]),
    ...lath(top), ...pencilMark([top[0], edge]), ...pencil([top[0] + LATH.half + MARK, edge]),
  ];
};

/**
 * A face with its crossed cords on four pegs. A full bottle hung beside the lath on one of them, by a string laid twice round it
 * so that it does not slide; how far the cord has come down from the mark. So with each cord.
 */
export const hungMass = ({ mass, most, count }: Test): Frame => (place) => {
  const { top, left, right, other } = faceAt(place);
  const low: Vec2 = [top[0], top[1] + SAG];
  const half = wideOf(stands()) / 2;
  const told = tell.mm(most);
  const [marked, came] = [top[1] + half, low[1] + half];
  const out = top[0] + LATH.half + 8;
  const hung: Vec2 = [low[0] - LATH.half - 6.2, low[1] + 2.8];
  return [
    ...drawnStrand(stands(...other)), gapUnder(stands(left, low, right)), ...drawnStrand(moves(left, low, right)), ...pegs([left, right, ...other]),
    ...lath(top), ...pencilMark([top[0], marked]), ...pencilMark([top[0], came]),
    line(pens.dimension, [top[0] + LATH.half, marked], [out + 2, marked]), line(pens.dimension, [top[0] + LATH.half, came], [out + 2, came]),
    ...upright(out, marked, came), ...atMost(told, [out + 2.5 + atMostWidth(told, cap) / 2, (marked + came) / 2 + 0.5], cap),
    ...turns(hung), ...bottle([hung[0], hung[1] + 5.4]),
    figure(tell.volume(mass), [hung[0] - 7 - toldWidth(tell.volume(mass), cap, 700) / 2, hung[1] + 21], cap, 700), figure(tell.mass(mass), [hung[0] - 7 - toldWidth(tell.mass(mass), cap, 700) / 2, hung[1] + 27], cap, 700),
    figure(tell.times(count), [right[0] - 4, low[1] + 29], capHeights.count, 700),
    ...again([top[0] + 12, low[1] + 18]),
  ];
};

const pegs = (places: readonly Vec2[]): readonly Mark[] => places.map((at) => circle(at, HEAD, pens.cut, 'panel'));

/** The lath on the floor, along its grain. */
function lath([x, y]: Vec2): readonly Mark[] {
  const [top, floor] = [y - LATH.over, y + LATH.floor];
  const box = cornersOf({ x: x - LATH.half, y: top, width: 2 * LATH.half, height: floor - top });
  return [
    area('panel', box), ...[-1.2, 1].map((by) => line(pens.edge, [x + by, top + 3], [x + by, floor - 3])), outline(pens.cut, box),
    line({ ...pens.cut, width: 0.5 }, [x - 22, floor], [x + 22, floor]),
  ];
}

const pencilMark = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.cut, width: 0.5 }, [x - LATH.half, y], [x + LATH.half + MARK, y])];

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
