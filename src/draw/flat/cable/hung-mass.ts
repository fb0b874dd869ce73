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
/** A braced face, mm of paper: half from post to post and from rail to rail at its pegs, how far posts and rails reach over them, and how thick they are. */
const FACE = { half: [15, 19], over: 5, thick: 3 } as const;
/** How far the cord of the face gives way, mm of paper. */
const SAG = 7;
const PEG = 1.8;
/** The crossing enlarged: half its width and height, how far the cord gives way in it, mm of paper. */
const NEAR = { half: [24, 13], sag: 11 } as const;

/** What is hung on each of how many cords, and how far the cord may give way. */
interface Test {
  readonly mass: number;
  readonly most: number;
  readonly count: number;
}

/** The braced face with a full bottle hung on the crossing, by a string laid twice round one cord; and then round the other. */
export const hungOnEach: Frame = ([x, y]) => [...hungFace([x - 20, y], 1), line(pens.motion, [x - 1.5, y], [x + 1.5, y]), arrowhead([x + 4.6, y], [1, 0], 3.4), ...hungFace([x + 25, y], -1)];

/** Posts, rails and crossed cords on their pegs; the one that rises to the right (1) or to the left is laden in the middle. */
function hungFace([x, y]: Vec2, rises: 1 | -1): readonly Mark[] {
  const [wide, high] = FACE.half;
  const [low, top]: readonly [Vec2, Vec2] = [[x - rises * wide, y + high], [x + rises * wide, y - high]];
  const other: readonly Vec2[] = [[x + rises * wide, y + high], [x - rises * wide, y - high]];
  const hung: Vec2 = [x, y + SAG];
  const bar = (from: Vec2, to: Vec2): readonly Mark[] => {
    const box = cornersOf({ x: Math.min(from[0], to[0]) - FACE.thick / 2, y: Math.min(from[1], to[1]) - FACE.thick / 2, width: Math.abs(to[0] - from[0]) + FACE.thick, height: Math.abs(to[1] - from[1]) + FACE.thick });
    return [area('white', box), outline(pens.edge, box)];
  };
  return [
    ...[-high, high].flatMap((at) => bar([x - wide, y + at], [x + wide, y + at])),
    ...[-wide, wide].flatMap((at) => bar([x + at, y - high - FACE.over], [x + at, y + high + FACE.over])),
    line({ ...pens.motion, width: 0.7 }, ...other), line({ ...pens.motion, width: 2.4, colour: 'white' }, low, hung, top),
    line({ ...pens.motion, width: 1.7 }, low, hung, top), line({ ...pens.motion, width: 0.9, colour: 'fresh' }, low, hung, top),
    ...[low, top, ...other].map((at) => circle(at, PEG, pens.edge, 'panel')),
    ...bottle([hung[0], hung[1] + 2.4], 0.62), line({ ...pens.motion, width: 0.6 }, hung, [hung[0], hung[1] + 3]),
  ];
}

/** The crossing enlarged: how far the laden cord has come down from the other one, which stays straight; so with each cord. */
export const hungMass = ({ mass, most, count }: Test): Frame => ([x, y]) => {
  const [wide, high] = NEAR.half;
  const cross: Vec2 = [x - 8, y - 12];
  const low: Vec2 = [cross[0], cross[1] + NEAR.sag];
  const other: readonly Vec2[] = [[cross[0] - wide, cross[1] - high], [cross[0] + wide, cross[1] + high]];
  const [left, right]: readonly [Vec2, Vec2] = [[cross[0] - wide, cross[1] + high], [cross[0] + wide, cross[1] - high + 4]];
  const half = wideOf(stands()) / 2;
  const told = tell.mm(most);
  const [from, to] = [cross[1] + half, low[1] + half];
  const rule = cross[0] + 0.6;
  const out = cross[0] + wide + 3;
  const hung: Vec2 = [low[0] - 3, low[1] + 0.6];
  return [
    ...drawnStrand(stands(...other)), gapUnder(stands(left, low, right)), ...drawnStrand(moves(left, low, right)),
    ...ruler([rule, from]), line(pens.dimension, [rule + RULER.wide, from], [out + 2, from]), line(pens.dimension, [rule + RULER.wide, to], [out + 2, to]),
    ...[from, to].map((at) => circle([cross[0], at], 0.8, pens.edge, 'ink')),
    ...upright(out, from, to), ...atMost(told, [out + 2.5 + atMostWidth(told, cap) / 2, (from + to) / 2 + 0.5], cap),
    ...turns(hung), ...bottle([hung[0], hung[1] + 6]),
    figure(tell.volume(mass), [hung[0] - 7 - toldWidth(tell.volume(mass), cap, 700) / 2, hung[1] + 22], cap, 700), figure(tell.mass(mass), [hung[0] - 7 - toldWidth(tell.mass(mass), cap, 700) / 2, hung[1] + 28], cap, 700),
    figure(tell.times(count), [cross[0] + 20, low[1] + 30], capHeights.count, 700),
    ...again([cross[0] + 14, low[1] + 21]),
  ];
};

/** A rule held upright before the cords, its nought under the straight one, mm of paper. */
const RULER = { wide: 4.4, long: 24 } as const;

function ruler([x, y]: Vec2): readonly Mark[] {
  const box = cornersOf({ x, y, width: RULER.wide, height: RULER.long });
  return [area('white', box), outline(pens.cut, box), ...Array.from({ length: 10 }, (_, index) => y + (index + 1) * 2.2).map((at, index) => line(pens.edge, [x, at], [x + (index % 5 === 4 ? 3 : 1.8), at]))];
}

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

/** A bottle full of water on its string, so many times as large as usual. */
function bottle([x, y]: Vec2, size = 1): readonly Mark[] {
  const at = (places: readonly Vec2[]): readonly Vec2[] => places.map(([px, py]): Vec2 => [x + px * size, y + py * size]);
  const ring: readonly Vec2[] = [[-1.4, 3.6], [1.4, 3.6], [1.4, 6.4], [5, 10.5], [5, 25], [-5, 25], [-5, 10.5], [-1.4, 6.4]];
  return [
    line({ ...pens.motion, width: 0.8 * size }, ...at([[0, -0.4], [0, 2]])), area('white', at(ring)), area('panel', at([[-1.4, 6.4], [1.4, 6.4], ...ring.slice(3, 7)])), outline(pens.cut, at(ring)),
    area('ink', at([[-1.6, 1], [1.6, 1], [1.6, 3.6], [-1.6, 3.6]])),
  ];
}
