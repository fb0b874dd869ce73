import { screwsOut, type Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { hatching } from '../kit/hatching.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { pencil } from './pencil.ts';
import { tell } from '../../scene/index.ts';

/** A wall with what holds a bracket in it, mm; nothing holds where there is no fixing. */
export interface WallShown {
  readonly kind: 'masonry' | 'timber' | 'board';
  readonly fixing: Fixing | null;
}

/** The hole of a screw, the screw and the plug that goes in first. */
interface Fixing {
  readonly hole: { readonly diameter: number; readonly depth: number };
  readonly screw: { readonly diameter: number; readonly length: number };
  readonly plug: number | null;
}

/** What of a bracket its picture needs, mm. */
interface Bracket {
  readonly plate: number;
  readonly thickness: number;
  readonly reach: number;
}

const cap = capHeights.step;
/** mm of paper to 1 mm. */
const SCALE = 0.32;
/** Thickness of wall shown where it is drilled and where it is not, and of a board, mm. */
const DEEP = 96;
const THIN = 34;
const BOARD = 13;
/** Height of wall shown, mm. */
const HIGH = 112;
/** From the left of a small picture to what it shows, and the rows' middles as shares of the paper's height, mm of paper. */
const INDENT = 4;
const ROWS: readonly [number, number] = [0.27, 0.74];

/**
 * A bracket fixed to a wall in small pictures one after the other: the kind of wall that holds and the one that does not, marked,
 * drilled, plugged, screwed on, pulled at, and what it looks like where it comes out: there it is begun anew. A board, which
 * holds nothing, under a cross.
 */
export function wallPicture(bracket: Bracket, wall: WallShown, pull: number, paper: Paper): DrawnPicture {
  return toPicture(paper, wallMarks(bracket, wall, pull, paper));
}

/** One of the small pictures: its width on paper and its marks, from its left edge and the middle of its row. */
interface Small {
  readonly width: number;
  readonly draw: (at: Vec2) => readonly Mark[];
}

/** The marks of the picture, for the tests. */
export function wallMarks(bracket: Bracket, wall: WallShown, pull: number, paper: Paper): readonly Mark[] {
  const { fixing } = wall;
  if (fixing === null) return refused(bracket, [paper.width / 2, paper.height / 2]);
  const upper = [markedThrough(bracket, wall), drilledInto(bracket, wall, fixing), ...(fixing.plug === null ? [] : [plugged(bracket, wall, fixing)])];
  const lower = [screwedOn(bracket, wall, fixing), pulledOut(bracket, wall, pull)];
  const [high, low] = ROWS.map((share) => share * paper.height) as [number, number];
  return [
    ...kindOfWall(wall, [INDENT, high]),
    ...inRow(upper, 1, [KIND_WIDTH + INDENT, high]),
    ...inRow(lower, 1 + upper.length, [0, low]),
    ...cameOut(bracket, wall, [lower.reduce((sum, { width }) => sum + width, 0), low]),
  ];
}

/** Small pictures beside each other, numbered from `first`. */
const inRow = (smalls: readonly Small[], first: number, [left, y]: Vec2): readonly Mark[] => smalls.flatMap(({ draw }, index) => {
  const x = left + smalls.slice(0, index).reduce((sum, { width }) => sum + width, 0);
  return [ringedNumeral(tell.number(first + index), [x + 4.5, y - (HIGH * SCALE) / 2 - 5], capHeights.order, pens.edge), ...draw([x, y])];
});

const KIND_WIDTH = 32;
const SWATCH = { wide: 20, high: 17 } as const;

/** The wall seen from before with a tick; a board on its studs, which holds nothing, with a cross. */
function kindOfWall({ kind }: WallShown, [x, y]: Vec2): readonly Mark[] {
  const [upper, lower]: readonly [Box, Box] = [{ x, y: y - SWATCH.high - 2, width: SWATCH.wide, height: SWATCH.high }, { x, y: y + 3, width: SWATCH.wide, height: SWATCH.high }];
  const right = x + SWATCH.wide + 5;
  return [
    area('panel', ringOf(upper)), ...(kind === 'masonry' ? bond(upper) : grain(upper)), outline(pens.cut, ringOf(upper)), ...ticked([right, upper.y + upper.height / 2]),
    area('white', ringOf(lower)), ...[0.2, 0.8].map((share) => area('panel', ringOf({ x: x + share * lower.width - 1.6, y: lower.y, width: 3.2, height: lower.height }))),
    outline(pens.cut, ringOf(lower)), ...crossed([right, lower.y + lower.height / 2]),
  ];
}

/** Bricks in courses, each over the joint of those under it. */
function bond(box: Box): readonly Mark[] {
  const rows = 4;
  const high = box.height / rows;
  return Array.from({ length: rows }, (_, row) => row).flatMap((row): readonly Mark[] => {
    const y = box.y + row * high;
    const joints = row % 2 === 0 ? [0.4, 0.8] : [0.2, 0.6];
    return [
      ...(row === 0 ? [] : [line(pens.edge, [box.x, y], [box.x + box.width, y])]),
      ...joints.map((share) => line(pens.edge, [box.x + share * box.width, y], [box.x + share * box.width, y + high])),
    ];
  });
}

/** The bracket is held on the wall, and the places of its screws are marked through its plate. */
const markedThrough = (bracket: Bracket, wall: WallShown): Small => ({ width: 28, draw: ([x, y]) => {
  const face: Vec2 = [x + INDENT + THIN * SCALE, y];
  return [
    ...wallSection(wall, face, THIN), ...plateOn(bracket, face),
    ...screwPlaces(bracket, face).flatMap(([px, py]) => pencil([px + bracket.thickness * SCALE + 0.3, py])),
  ];
} });

/** The bit in the upper hole, as deep as it goes; the lower one is drilled. */
const drilledInto = (bracket: Bracket, wall: WallShown, fixing: Fixing): Small => ({ width: 57, draw: ([x, y]) => {
  const { hole } = fixing;
  const face: Vec2 = [x + INDENT + 4 + DEEP * SCALE, y];
  const [[, high]] = screwPlaces(bracket, face);
  const half = (hole.diameter * SCALE) / 2;
  const bottom = face[0] - hole.depth * SCALE;
  const rod = ringOf({ x: bottom, y: high - half, width: hole.depth * SCALE + 8, height: 2 * half });
  const chuck = ringOf({ x: face[0] + 8, y: high - 3, width: 7, height: 6 });
  const bit = tell.diameter(hole.diameter);
  const top = y - (HIGH * SCALE) / 2;
  return [
    ...wallSection(wall, face, DEEP), ...screwPlaces(bracket, face).flatMap((place) => bore(fixing, place)),
    area('ink', rod), area('panel', chuck), outline(pens.cut, chuck),
    line(pens.motion, [face[0] + 14, high + 7], [face[0] + 6, high + 7]), arrowhead([face[0] + 3, high + 7], [-1, 0], 4),
    ...linearDimension({ axis: 'x', told: tell.mm(hole.depth), ends: [bottom, face[0]], line: top - 3.5, feature: high, cap }),
    figure(bit, [face[0] + 3 + toldWidth(bit, cap, 400) / 2, top - 3], cap),
  ];
} });

/** Plugs pushed in, flush with the wall. */
const plugged = (bracket: Bracket, wall: WallShown, fixing: Fixing): Small => ({ width: 36, draw: ([x, y]) => {
  const face: Vec2 = [x - 8 + DEEP * SCALE, y];
  return [
    ...wallSection(wall, face, 62), ...screwPlaces(bracket, face).flatMap((place) => [...bore({ ...fixing, hole: { ...fixing.hole, depth: 56 } }, place), ...plugIn(place, 50 * SCALE, (fixing.hole.diameter * SCALE) / 2)]),
    ...screwPlaces(bracket, face).flatMap(([px, py]) => [line(pens.motion, [px + 11, py], [px + 4, py]), arrowhead([px + 1, py], [-1, 0], 4)]),
  ];
} });

/** The plate with its screws in, and their size. */
const screwedOn = (bracket: Bracket, wall: WallShown, fixing: Fixing): Small => ({ width: 52, draw: ([x, y]) => {
  const face: Vec2 = [x + INDENT + 4 + DEEP * SCALE, y];
  return [
    ...wallSection(wall, face, DEEP), ...plateOn(bracket, face),
    ...screwPlaces(bracket, face).flatMap((place) => screw(fixing, face[0] + bracket.thickness * SCALE, place)), ...screwDimensions(bracket, fixing, face),
  ];
} });

/** Pulled straight out with so many kilograms: it holds. */
const pulledOut = (bracket: Bracket, wall: WallShown, pull: number): Small => ({ width: 73, draw: ([x, y]) => {
  const face: Vec2 = [x + INDENT + THIN * SCALE, y];
  return [...wallSection(wall, face, THIN), ...plateOn(bracket, face), ...ringOn(bracket, face), ...pulledAt(bracket, pull, face), ...ticked([face[0] + 6, y + (HIGH * SCALE) / 2 + 5])];
} });

/** How far a bracket that does not hold has come out, mm. */
const OUT = 26;

/** The plate has come off the wall with its screws, which is crossed: begun anew, from the first of the small pictures. */
function cameOut(bracket: Bracket, wall: WallShown, [x, y]: Vec2): readonly Mark[] {
  const face: Vec2 = [x + INDENT + THIN * SCALE, y];
  const off: Vec2 = [face[0] + OUT * SCALE, y];
  const at = y + (HIGH * SCALE) / 2 + 5;
  return [
    ...wallSection(wall, face, THIN),
    ...screwPlaces(bracket, face).flatMap(([px, py]) => [
      area('white', [[px, py - 3.4], [px - 5, py - 1], [px - 5, py + 1], [px, py + 3.4]]), line(pens.cut, [px, py - 3.4], [px - 5, py - 1], [px - 5, py + 1], [px, py + 3.4]),
      area('ink', [[px - 2, py], [off[0], py - 0.9], [off[0] + bracket.thickness * SCALE, py - 0.9], [off[0] + bracket.thickness * SCALE, py + 0.9], [off[0], py + 0.9]]),
    ]),
    ...plateOn(bracket, off),
    ...crossed([x + 5, at]), line(pens.motion, [x + 9.5, at], [x + 13, at]), arrowhead([x + 17, at], [1, 0], 4.5),
    ringedNumeral(tell.number(1), [x + 22, at], capHeights.order, pens.edge),
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

/** Radius of the ring round a tube, mm of paper. */
const RING = 6;

/** Its web and the ring round a tube. */
function ringOn({ thickness, reach }: Bracket, [x, y]: Vec2): readonly Mark[] {
  const face = x + thickness * SCALE;
  const web = ringOf({ x: face, y: y - 1.5, width: (reach - thickness) * SCALE - RING + 0.5, height: 3 });
  const tube: Vec2 = [x + reach * SCALE, y];
  return [area('panel', web), outline(pens.cut, web), circle(tube, RING, pens.cut, 'panel'), circle(tube, RING - 1.2, pens.cut, 'white')];
}

/** Where a screw goes into the wall over the web, and one under it. */
const screwPlaces = (bracket: Pick<Bracket, 'plate'>, [x, y]: Vec2): readonly [Vec2, Vec2] => [[x, y - screwsOut(bracket) * SCALE], [x, y + screwsOut(bracket) * SCALE]];

/** A hole as it is drilled. */
function bore({ hole }: Fixing, [x, y]: Vec2): readonly Mark[] {
  const half = (hole.diameter * SCALE) / 2;
  const drilled = ringOf({ x: x - hole.depth * SCALE, y: y - half, width: hole.depth * SCALE, height: 2 * half });
  return [area('white', drilled), outline(pens.cut, drilled)];
}

function screw(fixing: Fixing, face: number, [x, y]: Vec2): readonly Mark[] {
  const { screw: { diameter, length }, hole, plug } = fixing;
  const shank = (diameter * SCALE) / 2;
  const tip = face - length * SCALE;
  const thread: readonly Vec2[] = [[face + 1.6, y - 2 * shank], [face, y - shank], [tip + 2, y - shank], [tip, y], [tip + 2, y + shank], [face, y + shank], [face + 1.6, y + 2 * shank]];
  return [
    ...bore(fixing, [x, y]), ...(plug === null ? [] : plugIn([x, y], plug * SCALE, (hole.diameter * SCALE) / 2)),
    area('ink', thread),
  ];
}

/** The plug in its hole, split at its end. */
function plugIn([x, y]: Vec2, length: number, bore: number): readonly Mark[] {
  const sleeve: readonly Vec2[] = [[x, y - bore], [x - length, y - bore], [x - length, y + bore], [x, y + bore]];
  return [area('panel', sleeve), outline(pens.edge, sleeve)];
}

/** The screw's length and diameter. */
function screwDimensions({ plate, thickness }: Bracket, { screw: { diameter, length } }: Fixing, [x, y]: Vec2): readonly Mark[] {
  const [, [, deep]] = screwPlaces({ plate }, [x, y]);
  const low = y + (HIGH * SCALE) / 2;
  const face = x + thickness * SCALE;
  const sizes = tell.diameter(diameter);
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(length), ends: [face - length * SCALE, face], line: low + 7, feature: deep, cap }),
    figure(sizes, [face + 3 + toldWidth(sizes, cap, 400) / 2, low + 5], cap),
  ];
}

/** A scale hooked round the ring and drawn straight out, with what it shows. */
function pulledAt({ reach }: Bracket, pull: number, [x, y]: Vec2): readonly Mark[] {
  const from = x + reach * SCALE + RING;
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
