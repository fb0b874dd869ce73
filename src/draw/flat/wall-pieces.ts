import { screwsOut, type Vec2 } from '../../model/index.ts';
import { hatching } from '../kit/hatching.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Box } from '../types.ts';

/** A wall with what holds a bracket in it, mm; nothing holds where there is no fixing. */
export interface WallShown {
  readonly kind: 'masonry' | 'timber' | 'board';
  readonly fixing: Fixing | null;
}

/** The hole of a screw, the screw and the plug that goes in first. */
export interface Fixing {
  readonly hole: { readonly diameter: number; readonly depth: number };
  readonly screw: { readonly diameter: number; readonly length: number };
  readonly plug: number | null;
}

/** What of a bracket its picture needs, mm. */
export interface Bracket {
  readonly plate: number;
  readonly thickness: number;
  readonly reach: number;
}


/** mm of paper to 1 mm. */
export const SCALE = 0.27;
/** Thickness of a board, and height of wall shown, mm. */
export const BOARD = 13;
export const HIGH = 124;

/** Bricks in courses, each over the joint of those under it. */
export function bond(box: Box): readonly Mark[] {
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

/** What is fixed: its face at a point, the room before it on the right. */
export function wallSection({ kind }: WallShown, [x, y]: Vec2, deep: number): readonly Mark[] {
  const thick = (kind === 'board' ? BOARD : deep) * SCALE;
  const box: Box = { x: x - thick, y: y - (HIGH * SCALE) / 2, width: thick, height: HIGH * SCALE };
  const ring = ringOf(box);
  return [area('core', ring), ...(kind === 'masonry' ? courses(box) : kind === 'timber' ? grain(box) : hatching(ring, 1.8).map(([from, to]) => line(pens.edge, from, to))), outline(pens.cut, ring)];
}

export const ringOf = ({ x, y, width, height }: Box): readonly Vec2[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];

/** Courses of bricks, hatched. */
function courses(box: Box): readonly Mark[] {
  const high = box.height / 5;
  return [
    ...hatching(ringOf(box), 3).map(([from, to]) => line(pens.edge, from, to)),
    ...Array.from({ length: 4 }, (_, index) => line(pens.edge, [box.x, box.y + (index + 1) * high], [box.x + box.width, box.y + (index + 1) * high])),
  ];
}

/** A stud cut lengthwise: its grain runs upwards. */
export const grain = (box: Box): readonly Mark[] => Array.from({ length: Math.floor(box.width / 4) }, (_, index): Mark => {
  const x = box.x + 3 + index * 4;
  return line(pens.edge, [x, box.y], [x + 0.8, box.y + box.height / 3], [x - 0.6, box.y + (2 * box.height) / 3], [x, box.y + box.height]);
});

/** The bracket's plate on the wall. */
export function plateOn({ plate, thickness }: Bracket, [x, y]: Vec2): readonly Mark[] {
  const sheet = ringOf({ x, y: y - (plate * SCALE) / 2, width: thickness * SCALE, height: plate * SCALE });
  return [area('panel', sheet), outline(pens.cut, sheet)];
}

/** Jaws round an upright tube, seen from beside them: half their width and height, mm of paper. */
const JAWS = { half: 6, high: 6 } as const;
/** Half of the height of the web between plate and jaws, mm of paper. */
const WEB = 1.5;

/** Its web and the jaws round an upright tube, seen from beside them. */
export function jawsOn({ thickness, reach }: Bracket, [x, y]: Vec2): readonly Mark[] {
  const face = x + thickness * SCALE;
  const jaws = x + reach * SCALE - JAWS.half;
  const [web, clip] = [ringOf({ x: face, y: y - WEB, width: jaws - face, height: 2 * WEB }), ringOf({ x: jaws, y: y - JAWS.high, width: 2 * JAWS.half, height: 2 * JAWS.high })];
  return [area('panel', web), outline(pens.cut, web), area('panel', clip), outline(pens.cut, clip), line(pens.edge, [jaws + JAWS.half * 1.5, y - JAWS.high], [jaws + JAWS.half * 1.5, y + JAWS.high])];
}

/** Where a screw goes into the wall over the web, and one under it. */
export const screwPlaces = (bracket: Pick<Bracket, 'plate'>, [x, y]: Vec2): readonly [Vec2, Vec2] => [[x, y - screwsOut(bracket) * SCALE], [x, y + screwsOut(bracket) * SCALE]];

/** A hole as it is drilled. */
export function bore({ hole }: Fixing, [x, y]: Vec2): readonly Mark[] {
  const half = (hole.diameter * SCALE) / 2;
  const drilled = ringOf({ x: x - hole.depth * SCALE, y: y - half, width: hole.depth * SCALE, height: 2 * half });
  return [area('white', drilled), outline(pens.cut, drilled)];
}

/** From one turn of a screw's thread to the next, mm of paper. */
const PITCH = 1.5;

export function screw(fixing: Fixing, face: number, [x, y]: Vec2): readonly Mark[] {
  const { screw: { diameter, length }, hole, plug } = fixing;
  const shank = (diameter * SCALE) / 2;
  const tip = face - length * SCALE;
  const thread: readonly Vec2[] = [[face + 1.6, y - 2 * shank], [face, y - shank], [tip + 2, y - shank], [tip, y], [tip + 2, y + shank], [face, y + shank], [face + 1.6, y + 2 * shank]];
  const turns = Array.from({ length: Math.floor((0.62 * length * SCALE) / PITCH) }, (_, index) => tip + 2 + PITCH * index);
  return [
    ...bore(fixing, [x, y]), ...(plug === null ? [] : plugIn([x, y], plug * SCALE, (hole.diameter * SCALE) / 2)),
    area('ink', thread), ...turns.map((at) => line({ ...pens.motion, width: 0.45, colour: 'white' }, [at, y + shank + 0.1], [at + 0.7, y - shank - 0.1])),
  ];
}

/** The plug in its hole, split at its end. */
export function plugIn([x, y]: Vec2, length: number, bore: number): readonly Mark[] {
  const sleeve: readonly Vec2[] = [[x, y - bore], [x - length, y - bore], [x - length, y + bore], [x, y + bore]];
  return [area('panel', sleeve), outline(pens.edge, sleeve)];
}
