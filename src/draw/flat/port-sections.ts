import type { JointPorts, Vec2 } from '../../model/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { cutFace } from '../kit/cut-face.ts';
import { area, arrowhead, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { STUD_FIXED, studFixed } from './stud-fixed.ts';
import { drawnHome, drawnStrand, moves, round } from './cable/rope.ts';

type Port = JointPorts['ports'][number];
type PortOf<Is extends Port['is']> = Extract<Port, { is: Is }>;

/** What a port is drawn with: its own joint, the tube that it takes, mm, and whether there are cords for its studs. */
export interface Fitted {
  readonly joint: JointPorts;
  readonly tube: number;
  readonly hasCords: boolean;
}

/** Heights and the width of a row, and the room of the mouth before it, mm of paper. */
export const SECTION = { high: 25, wide: 82, mouth: 8 } as const;
/** mm of paper to 1 mm, of openings and of studs. */
const SCALE = { opening: 0.5, stud: 0.75 } as const;
/** How far a tube stands out of what it is in, and how thick the bottom of a socket is drawn, mm of paper. */
const OUT = 14;
const BOTTOM = 4;

/** One port cut lengthwise, from its left end and the middle of its row: what goes into it and where that ends. */
export function portSection(port: Port, fitted: Fitted, [x, y]: Vec2): readonly Mark[] {
  switch (port.is) {
    case 'sleeve': return [...mouth([x, y], false), ...throughSleeve(port, fitted, [x + SECTION.mouth, y])];
    case 'socket': return [...mouth([x, y], true), ...intoSocket(port, fitted, [x + SECTION.mouth, y])];
    case 'stud': return onStud(port, fitted, [x + SECTION.mouth, y]);
  }
}

/** An opening from before, as it is drawn everywhere: dark where it ends blind. */
const mouth = ([x, y]: Vec2, isBlind: boolean): readonly Mark[] => [circle([x, y], 4.4, pens.cut, 'white'), circle([x, y], 3.2, pens.edge, isBlind ? 'blind' : 'white')];

const rectangle = (from: Vec2, to: Vec2): readonly Vec2[] => cornersOf({ x: Math.min(from[0], to[0]), y: Math.min(from[1], to[1]), width: Math.abs(to[0] - from[0]), height: Math.abs(to[1] - from[1]) });

/** A tube from one place of the axis to another, and the way it goes. */
function tube(from: number, to: number, y: number, wide: number): readonly Mark[] {
  const ring = rectangle([from, y - wide / 2], [to, y + wide / 2]);
  return [area('fresh', ring), outline(pens.cut, ring)];
}

const way = (from: Vec2, to: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 1 }, from, [to[0] + 3 * Math.sign(from[0] - to[0]), to[1]]), arrowhead(to, [to[0] - from[0], 0], 5)];

/** The tube goes in at one end and out at the other. */
function throughSleeve(port: PortOf<'sleeve'>, { joint, tube: wide }: Fitted, [x, y]: Vec2): readonly Mark[] {
  const s = SCALE.opening;
  const [left, right] = [x + 8 + OUT, x + 8 + OUT + (port.above + port.below) * s];
  const walls = [-1, 1].map((side) => rectangle([left, y + (side * wide * s) / 2], [right, y + (side * joint.outside * s) / 2]));
  return [...tube(left - OUT, right + OUT, y, wide * s), ...walls.flatMap(cutFace), ...way([right + OUT - 2, y], [x, y])];
}

/** The tube goes in and meets the bottom. */
function intoSocket(port: PortOf<'socket'>, { joint, tube: wide }: Fitted, [x, y]: Vec2): readonly Mark[] {
  const s = SCALE.opening;
  const [bottom, end] = [x + 8 + OUT, x + 8 + OUT + port.depth * s];
  const [inner, outer] = [(wide * s) / 2, (joint.outside * s) / 2];
  const wall: readonly Vec2[] = [[end, y - inner], [end, y - outer], [bottom - BOTTOM, y - outer], [bottom - BOTTOM, y + outer], [end, y + outer], [end, y + inner], [bottom, y + inner], [bottom, y - inner]];
  return [
    ...tube(bottom, end + OUT + 12, y, wide * s), ...cutFace(wall),
    ...way([end + OUT + 10, y], [bottom + 1.4, y]), line({ ...pens.motion, width: 1.4 }, [bottom + 0.7, y - inner + 1], [bottom + 0.7, y + inner - 1]),
  ];
}

/** A stud from the side, cut: it is of one piece with its joint, and nobody turns it. Where there are cords also from before: a cord's loop lies on its neck. */
function onStud(port: PortOf<'stud'>, { joint, hasCords }: Fitted, [x, y]: Vec2): readonly Mark[] {
  const s = SCALE.stud;
  const [wall, root] = [x + 6, x + 12];
  const head = root + Math.max(6, (port.reach - joint.outside / 2) * s);
  const [neck, rim] = [(port.diameter * s) / 2, (port.headDiameter * s) / 2];
  const [under, side] = [head - port.head * s, rim + 2];
  const piece: readonly Vec2[] = [[wall, y - side], [root, y - side], [root, y - neck], [under, y - neck], [under, y - rim], [head, y - rim], [head, y + rim], [under, y + rim], [under, y + neck], [root, y + neck], [root, y + side], [wall, y + side]];
  const before: Vec2 = [head + 24, y];
  return [
    ...cutFace(piece), ...(hasCords ? [
      ...[-1, 1].map((up) => circle([(root + under) / 2 + 1, y + up * (neck + 1.2)], 1.2, pens.cut, 'fresh')),
      ...loopRound(before, neck + 1.4), circle(before, rim, pens.cut, 'white'), circle(before, neck, pens.edge, null),
    ] : studFixed([head + 2, y - STUD_FIXED.height / 2])),
  ];
}

const loopRound = ([x, y]: Vec2, radius: number): readonly Mark[] =>
  [...drawnStrand(moves([x + radius + 6, y], [x + 24, y])), ...drawnStrand(moves(...round([x, y], radius + 2.4, 0, 2 * Math.PI))), ...drawnHome([x + radius + 5.4, y], 2.6)];
