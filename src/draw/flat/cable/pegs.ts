import type { BracedFace, Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { boxRound, cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, line, outline, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { crossed, ticked } from '../../kit/right-wrong.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import type { CableCut } from './cut-picture.ts';
import { bayOf, faceIn, pegsOf, shownCord, workedCord } from './face.ts';
import { FRAMES } from './frames.ts';
import { peg } from './knots.ts';
import { cutEnd, drawnStrand, moves, pull, round, stands } from './rope.ts';
import { HEAD, loopRound } from './whole-cord.ts';

const HEIGHT = 50;
/** Radius of the rings that enlarge a peg and of those round it in the face, half the post's width, mm of paper. */
const RING = 18;
const SMALL = 3.4;
const POST = 6;

/** Which peg is for what: in the face, the upper one of a cord and the lower one ringed; the loop on the upper one; from the side, on the peg and not on a pin's head; the end round the lower one. */
export const pegsPicture = (cable: CableCut, { width }: Paper): DrawnPicture => toPicture({ width, height: HEIGHT }, pegsMarks(cable, width));

/** The marks of the picture, for the tests. */
export function pegsMarks({ face }: CableCut, width: number): readonly Mark[] {
  const [unit, y] = [width / 8, HEIGHT / 2];
  const slant = slantOf(face);
  return [
    ...inFace(face, [23, y], 26),
    ...upperPeg([unit * 3.35 + 2, y], slant, face.hasPinHeads), ...fromSide([unit * 5.1, y - 1]), ...lowerPeg([width - RING - 1, y], slant, face.hasPinHeads),
  ];
}

const number = (told: number, at: Vec2): Mark => ringedNumeral(tell.number(told), at, capHeights.order, pens.edge);

/** The direction of the cord that is shown from its upper peg down, on paper. */
function slantOf(face: BracedFace): Vec2 {
  const cord = shownCord(face);
  if (cord === undefined) return [0.7, 0.7];
  const [x, y] = [cord.low[0] - cord.high[0], cord.high[1] - cord.low[1]];
  const far = Math.hypot(x, y);
  return [x / far, y / far];
}

function inFace(face: BracedFace, middle: Vec2, wide: number): readonly Mark[] {
  const drawn = faceIn(bayOf(face), boxRound(middle, wide, 40));
  const cord = shownCord(face);
  if (cord === undefined) return drawn.bars;
  const [low, high]: readonly [Vec2, Vec2] = [drawn.at(cord.low), drawn.at(cord.high)];
  const side = Math.sign(high[0] - low[0]);
  return [
    ...drawn.bars, ...workedCord(low, high), ...pegsOf(drawn, bayOf(face).cords), ...[low, high].map((at) => circle(at, SMALL, pens.detail)),
    number(FRAMES.hooked, [high[0] + side * 8.6, high[1]]), number(FRAMES.around, [low[0] - side * 8.6, low[1]]),
  ];
}

/** The post behind a peg, cut off by the ring; its pin's head below the peg. */
function ringed([x, y]: Vec2, hasPinHead: boolean): readonly Mark[] {
  const reach = Math.sqrt(RING * RING - POST * POST);
  return [
    circle([x, y], RING, pens.detail, 'white'), ...[-POST, POST].map((side) => line(pens.edge, [x + side, y - reach], [x + side, y + reach])),
    ...(hasPinHead ? [circle([x, y + 11.4], 2.4, pens.edge, 'white')] : []),
  ];
}

/** Where a cord from a peg in the ring's middle leaves the ring. */
const edgeOf = ([x, y]: Vec2, [dx, dy]: Vec2): Vec2 => [x + (RING - 0.6) * dx, y + (RING - 0.6) * dy];

function upperPeg(at: Vec2, slant: Vec2, hasPinHead: boolean): readonly Mark[] {
  return [...ringed(at, hasPinHead), ...drawnStrand(stands([at[0] + 9 * slant[0], at[1] + 9 * slant[1]], edgeOf(at, slant))), ...peg(at, HEAD), ...loopRound(at, slant), ...peg(at, HEAD), number(FRAMES.hooked, [at[0] - RING + 1, at[1] - RING + 3])];
}

/** The cord comes down on one side of the peg, goes round under it and its end up on the other. */
function lowerPeg(at: Vec2, slant: Vec2, hasPinHead: boolean): readonly Mark[] {
  const aside = HEAD + 1.1;
  const up: Vec2 = [-slant[0], -slant[1]];
  const angle = Math.atan2(slant[1], slant[0]);
  const on = (along: number, off: number): Vec2 => [at[0] + along * up[0] - off * up[1], at[1] + along * up[1] + off * up[0]];
  const out = Math.sqrt(RING * RING - aside * aside) - 0.6;
  const under = round(at, aside, angle - Math.PI / 2, angle + Math.PI / 2);
  const end = on(7.5, -aside);
  return [
    ...ringed(at, hasPinHead), ...peg(at, HEAD), ...drawnStrand(stands(on(out, aside), ...under)), ...drawnStrand(moves(on(-0.2, -aside), end)), ...cutEnd(end, up),
    ...pull(on(6, -aside - 4.4), up, 1.4, 0.7), number(FRAMES.around, [at[0] - RING + 2, at[1] + RING - 3]),
  ];
}

/** From the side: the peg stands far out and has a head, the cord stays behind it; a pin's head is flat, the cord slips off it. */
function fromSide([x, y]: Vec2): readonly Mark[] {
  const post = x - 9;
  const [pegAt, pinAt] = [y - 8, y + 11];
  const box = (left: number, middle: number, wide: number, high: number): readonly Vec2[] => cornersOf({ x: left, y: middle - high / 2, width: wide, height: high });
  const face = post + POST;
  const cord = (left: number, middle: number, high: number): readonly Mark[] => [area('fresh', box(left, middle, 2.2, high)), outline(pens.cut, box(left, middle, 2.2, high))];
  return [
    area('white', box(post - POST, y, 2 * POST, 42)), ...[-POST, POST].map((side) => line(pens.cut, [post + side, y - 21], [post + side, y + 21])),
    ...([[0, 4, 11], [11, 7.2, 2]] as const).flatMap(([left, high, wide]) => [area('panel', box(face + left, pegAt, wide, high)), outline(pens.cut, box(face + left, pegAt, wide, high))]),
    ...cord(face + 5, pegAt, 7.4), ...ticked([face + 19, pegAt], 1.2),
    area('white', box(face, pinAt, 2, 5)), outline(pens.cut, box(face, pinAt, 2, 5)),
    ...cord(face + 5, pinAt + 1.6, 7.4), line(pens.motion, [face + 9, pinAt + 1.6], [face + 10.6, pinAt + 1.6]), arrowhead([face + 13, pinAt + 1.6], [1, 0], 2.6), ...crossed([face + 19, pinAt], 1.2),
  ];
}
