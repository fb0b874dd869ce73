import { tell } from '../../scene/index.ts';
import type { Vec2 } from '../../model/index.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, figure, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import type { Box } from '../types.ts';
import { crossAt } from './bare-wall.ts';
import { bond, grain, ringOf, type WallShown } from './wall-pieces.ts';

/** Height of the picture, mm of paper. */
export const LINES_HIGH = 54;
/** The wall from before, mm of paper from the picture's upper left corner. */
const WALL: Box = { x: 8, y: 4, width: 100, height: 42 };
/** Where a socket and a tap are on it, and half of their width. */
const SOCKET: Vec2 = [38, 34];
const TAP: Vec2 = [84, 17];
const HALF = 3.6;
/** Holes on a line, and one that is clear of all. */
const ON_A_LINE: readonly Vec2[] = [[38, 11], [17, 34], [84, 38], [62, 17]];
const CLEAR: Vec2 = [61, 27];
/** A hole's sign stands so far beside it. */
const BESIDE = 6.4;
/** The bits: the middles of the wrong and of the right one, where they begin and how long they are, half of their width, mm of paper. */
const BITS = { wrong: 120, right: 138, top: 5, long: 27, half: 2.2, sign: 43 } as const;

/**
 * Where no hole comes: wires run straight up, down or level from a socket, pipes from a tap (common practice, no source). And in masonry,
 * the bit that is for it, with a broad plate in its point, beside one that is not.
 */
export const linesInWall = ({ kind, fixing }: WallShown): readonly Mark[] => [
  area('panel', ringOf(WALL)), ...(kind === 'masonry' ? bond(WALL) : grain(WALL)), outline(pens.cut, ringOf(WALL)), line({ ...pens.motion, width: 0.8 }, [WALL.x - 4, WALL.y + WALL.height], [WALL.x + WALL.width + 4, WALL.y + WALL.height]),
  ...runs(SOCKET, 1.6), ...runs(TAP, 3.4), ...socket(SOCKET), ...tap(TAP), ...bolt([SOCKET[0] + 6, 25]), ...drop([TAP[0] + 6.4, 27]),
  ...ON_A_LINE.flatMap((hole) => [...crossAt(hole), ...onGround(crossed, [hole[0] + BESIDE, hole[1]])]), ...crossAt(CLEAR), ...onGround(ticked, [CLEAR[0] + BESIDE, CLEAR[1]]),
  ...(kind === 'masonry' && fixing !== null ? bits(fixing.hole.diameter) : []),
];

/** What runs straight up and down and level both ways behind the face of the wall, so wide. */
function runs([x, y]: Vec2, wide: number): readonly Mark[] {
  const ways: readonly (readonly [Vec2, Vec2])[] = [[[x, WALL.y], [x, WALL.y + WALL.height]], [[WALL.x, y], [WALL.x + WALL.width, y]]];
  return ways.flatMap(([from, to]) => [line({ ...pens.motion, width: wide + 1.4, colour: 'white' }, from, to), ...(wide > 2
    ? [-1, 1].map((side): Mark => (from[0] === to[0] ? line(pens.halfCut, [x + (side * wide) / 2, from[1]], [x + (side * wide) / 2, to[1]]) : line(pens.halfCut, [from[0], y + (side * wide) / 2], [to[0], y + (side * wide) / 2])))
    : [line({ ...pens.halfCut, width: 1 }, from, to)])]);
}

function socket([x, y]: Vec2): readonly Mark[] {
  const plate = ringOf({ x: x - HALF, y: y - HALF, width: 2 * HALF, height: 2 * HALF });
  return [area('white', plate), outline(pens.cut, plate), circle([x, y], 2.4, pens.edge, 'white'), ...[-1, 1].map((side) => circle([x + side, y], 0.55, null, 'ink'))];
}

/** A tap from before: handle, body, spout and a drop under that. */
function tap([x, y]: Vec2): readonly Mark[] {
  const body: readonly Vec2[] = [[x - 2, y - 2.4], [x + 2, y - 2.4], [x + 2, y + 1.6], [x + 1.5, y + 4.4], [x - 1.5, y + 4.4], [x - 2, y + 1.6]];
  const handle = ringOf({ x: x - 4.2, y: y - 5.2, width: 8.4, height: 1.8 });
  const stem = ringOf({ x: x - 0.8, y: y - 3.4, width: 1.6, height: 1 });
  return [body, stem, handle].flatMap((ring) => [area('white', ring), outline(pens.cut, ring)]);
}

function bolt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x + 0.6, y - 4], [x - 2, y + 0.6], [x - 0.4, y + 0.6], [x - 1, y + 4], [x + 2, y - 0.8], [x + 0.3, y - 0.8], [x + 1.8, y - 4]];
  return [outline({ ...pens.motion, width: 1.6, colour: 'white' }, ring), area('ink', ring)];
}

function drop([x, y]: Vec2): readonly Mark[] {
  const round = Array.from({ length: 13 }, (_, step): Vec2 => [x + 2 * Math.cos((Math.PI * (step - 1.5)) / 9), y + 1.4 + 2 * Math.sin((Math.PI * (step - 1.5)) / 9)]);
  const ring: readonly Vec2[] = [[x, y - 3.6], ...round];
  return [outline({ ...pens.motion, width: 1.6, colour: 'white' }, ring), area('ink', ring)];
}

/** A sign on a white ground. */
const onGround = (sign: (at: Vec2) => readonly Mark[], at: Vec2): readonly Mark[] => [circle(at, 3.6, null, 'white'), ...sign(at)];

/** A bit with a plain point, crossed; and with a broad plate in it, ticked, with its diameter. */
function bits(diameter: number): readonly Mark[] {
  const end = BITS.top + BITS.long;
  const { half } = BITS;
  const plate: readonly Vec2[] = [[BITS.right - half - 0.9, end + 0.4], [BITS.right, end - 2], [BITS.right + half + 0.9, end + 0.4], [BITS.right + half + 0.9, end + 1.4], [BITS.right, end + 3.6], [BITS.right - half - 0.9, end + 1.4]];
  return [
    ...twisted(BITS.wrong), ...crossed([BITS.wrong, BITS.sign]),
    ...twisted(BITS.right), area('ink', plate), ...ticked([BITS.right, BITS.sign]), figure(tell.diameter(diameter), [BITS.right + 9, BITS.top + BITS.long / 2], capHeights.step),
  ];
}

/** A twist bit, its point down. */
function twisted(x: number): readonly Mark[] {
  const { top, long, half } = BITS;
  const ring: readonly Vec2[] = [[x - half, top], [x + half, top], [x + half, top + long], [x, top + long + 2.4], [x - half, top + long]];
  const turns = Array.from({ length: 5 }, (_, index) => top + 9 + index * 4);
  return [area('white', ring), outline(pens.cut, ring), ...turns.map((y) => line(pens.edge, [x - half, y + 1.8], [x + half, y - 1.8]))];
}
