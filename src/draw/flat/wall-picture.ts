import { screwsOut, type Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { hatching } from '../kit/hatching.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';

/** A wall with what holds a bracket in it, mm; nothing holds where there is no fixing. */
export interface WallShown {
  readonly kind: 'masonry' | 'timber' | 'board';
  readonly fixing: {
    readonly hole: { readonly diameter: number; readonly depth: number };
    readonly screw: { readonly diameter: number; readonly length: number };
    readonly plug: number | null;
  } | null;
}

/** What of a bracket its picture needs, mm. */
interface Bracket {
  readonly plate: number;
  readonly thickness: number;
  readonly reach: number;
}

const cap = capHeights.step;
/** mm of paper to 1 mm. */
const SCALE = 0.5;
/** Thickness of wall shown, and of a board, mm. */
const DEEP = 100;
const BOARD = 13;
/** Height of wall shown, mm. */
const HIGH = 150;

/** Two sections side by side: how the bracket is screwed to the wall, and how it is pulled at. A board, which holds nothing, under a cross. */
export function wallPicture(bracket: Bracket, wall: WallShown, pull: number, paper: Paper): DrawnPicture {
  return toPicture(paper, wallMarks(bracket, wall, pull, paper));
}

/** The marks of the picture, for the tests. */
export function wallMarks(bracket: Bracket, wall: WallShown, pull: number, paper: Paper): readonly Mark[] {
  const half = paper.width / 2;
  const y = paper.height / 2;
  const { fixing } = wall;
  if (fixing === null) return refused(bracket, [half, y]);
  const [left, right]: readonly [Vec2, Vec2] = [[14 + DEEP * SCALE, y], [half + 8, y]];
  return [
    ...[2, half + 2].map((x, index) => ringedNumeral(tell.number(index + 1), [x + 3, 6], capHeights.order, pens.edge)),
    ...wallSection(wall, left, DEEP), ...plateOn(bracket, left), ...screwPlaces(bracket, left).flatMap((place) => screw(fixing, left[0] + bracket.thickness * SCALE, place)), ...screwDimensions(bracket, fixing, left),
    ...wallSection(wall, right, 12), ...plateOn(bracket, right), ...ringOn(bracket, right), ...pulledAt(bracket, pull, right),
  ];
}

/** What is fixed: its face at a point, the room before it on the right. */
function wallSection({ kind }: WallShown, [x, y]: Vec2, deep: number): readonly Mark[] {
  const thick = (kind === 'board' ? BOARD : deep) * SCALE;
  const box: Box = { x: x - thick, y: y - (HIGH * SCALE) / 2, width: thick, height: HIGH * SCALE };
  const ring = ringOf(box);
  return [area('core', ring), ...(kind === 'masonry' ? courses(box) : kind === 'timber' ? grain(box) : hatching(ring, 1.8).map(([from, to]) => line(pens.edge, from, to))), outline(pens.cut, ring)];
}

const ringOf = ({ x, y, width, height }: Box): readonly Vec2[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];

/** Courses of bricks, hatched. */
function courses(box: Box): readonly Mark[] {
  const high = box.height / 5;
  return [
    ...hatching(ringOf(box), 3).map(([from, to]) => line(pens.edge, from, to)),
    ...Array.from({ length: 4 }, (_, index) => line(pens.edge, [box.x, box.y + (index + 1) * high], [box.x + box.width, box.y + (index + 1) * high])),
  ];
}

/** A stud cut lengthwise: its grain runs upwards. */
const grain = (box: Box): readonly Mark[] => Array.from({ length: Math.floor(box.width / 4) }, (_, index): Mark => {
  const x = box.x + 3 + index * 4;
  return line(pens.edge, [x, box.y], [x + 0.8, box.y + box.height / 3], [x - 0.6, box.y + (2 * box.height) / 3], [x, box.y + box.height]);
});

/** The bracket's plate on the wall. */
function plateOn({ plate, thickness }: Bracket, [x, y]: Vec2): readonly Mark[] {
  const sheet = ringOf({ x, y: y - (plate * SCALE) / 2, width: thickness * SCALE, height: plate * SCALE });
  return [area('panel', sheet), outline(pens.cut, sheet)];
}

/** Its web and the ring round a tube. */
function ringOn({ thickness, reach }: Bracket, [x, y]: Vec2): readonly Mark[] {
  const face = x + thickness * SCALE;
  const web = ringOf({ x: face, y: y - 2, width: (reach - thickness) * SCALE - 8, height: 4 });
  const tube: Vec2 = [x + reach * SCALE, y];
  return [area('panel', web), outline(pens.cut, web), circle(tube, 8.5, pens.cut, 'panel'), circle(tube, 7, pens.cut, 'white')];
}

/** Where a screw goes into the wall over the web, and one under it. */
const screwPlaces = (bracket: Pick<Bracket, 'plate'>, [x, y]: Vec2): readonly [Vec2, Vec2] => [[x, y - screwsOut(bracket) * SCALE], [x, y + screwsOut(bracket) * SCALE]];

function screw({ hole, screw: { diameter, length }, plug }: Exclude<WallShown['fixing'], null>, face: number, [x, y]: Vec2): readonly Mark[] {
  const [bore, shank] = [(hole.diameter * SCALE) / 2, (diameter * SCALE) / 2];
  const bottom = x - hole.depth * SCALE;
  const tip = face - length * SCALE;
  const drilled: readonly Vec2[] = [[x, y - bore], [bottom, y - bore], [bottom, y + bore], [x, y + bore]];
  const thread: readonly Vec2[] = [[face + 1.6, y - 2 * shank], [face, y - shank], [tip + 2, y - shank], [tip, y], [tip + 2, y + shank], [face, y + shank], [face + 1.6, y + 2 * shank]];
  return [
    area('white', drilled), outline(pens.cut, drilled), ...(plug === null ? [] : plugIn([x, y], plug * SCALE, bore)),
    area('ink', thread),
  ];
}

/** The plug in its hole, split at its end. */
function plugIn([x, y]: Vec2, length: number, bore: number): readonly Mark[] {
  const sleeve: readonly Vec2[] = [[x, y - bore], [x - length, y - bore], [x - length, y + bore], [x, y + bore]];
  return [area('panel', sleeve), outline(pens.edge, sleeve)];
}

/** How deep the hole is and how wide, and the screw. */
function screwDimensions({ plate, thickness }: Bracket, { hole, screw: { diameter, length } }: Exclude<WallShown['fixing'], null>, [x, y]: Vec2): readonly Mark[] {
  const [[, high], [, deep]] = screwPlaces({ plate }, [x, y]);
  const [top, low] = [y - (HIGH * SCALE) / 2, y + (HIGH * SCALE) / 2];
  const bit = tell.diameter(hole.diameter);
  const face = x + thickness * SCALE;
  const sizes = tell.diameter(diameter);
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(hole.depth), ends: [x - hole.depth * SCALE, x], line: top - 4, feature: high, cap }),
    figure(bit, [x - hole.depth * SCALE - 2 - toldWidth(bit, cap, 400) / 2, top - 4 - cap], cap),
    ...linearDimension({ axis: 'x', told: tell.mm(length), ends: [face - length * SCALE, face], line: low + 9, feature: deep, cap }),
    figure(sizes, [face + 3 + toldWidth(sizes, cap, 400) / 2, low + 7], cap),
  ];
}

/** A scale hooked round the ring and drawn straight out, with what it shows. */
function pulledAt({ reach }: Bracket, pull: number, [x, y]: Vec2): readonly Mark[] {
  const from = x + reach * SCALE + 9;
  const scale: readonly Vec2[] = [[from + 5, y - 5], [from + 21, y - 5], [from + 21, y + 5], [from + 5, y + 5]];
  const told = tell.mass(pull);
  return [
    line(pens.motion, [from - 1, y], [from + 5, y]),
    area('white', scale), outline(pens.cut, scale),
    ...[8, 11, 14, 17].map((at) => line(pens.edge, [from + at, y - 5], [from + at, y - 2.5])),
    line(pens.motion, [from + 14, y + 3.5], [from + 14, y - 1.5]),
    line(pens.motion, [from + 21, y], [from + 27, y]), arrowhead([from + 31, y], [1, 0], 5),
    figure(told, [from + 13, y + 11], capHeights.count, 700),
  ];
}

/** The same on a board, crossed out. */
function refused(bracket: Bracket, [x, y]: Vec2): readonly Mark[] {
  const wall: WallShown = { kind: 'board', fixing: null };
  const [wide, high] = [46, 40];
  return [
    ...wallSection(wall, [x, y], BOARD), ...plateOn(bracket, [x, y]), ...ringOn(bracket, [x, y]),
    ...screwPlaces(bracket, [x, y]).flatMap((place) => screw({ hole: { diameter: 6, depth: BOARD }, screw: { diameter: 6, length: 40 }, plug: null }, x + bracket.thickness * SCALE, place)),
    line({ ...pens.motion, width: 2 }, [x - wide, y - high], [x + wide, y + high]),
    line({ ...pens.motion, width: 2 }, [x - wide, y + high], [x + wide, y - high]),
  ];
}
