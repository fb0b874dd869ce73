import type { Vec2 } from '../../model/index.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import type { Box } from '../types.ts';
import { onwards } from './trial.ts';
import { fullWall, hollowWall } from './wall-kind.ts';
import type { WallShown } from './wall-pieces.ts';

/** Height of the picture, and the floor in it, mm of paper. */
export const UNFIXED_HIGH = 46;
const FLOOR = UNFIXED_HIGH - 3;
/** Where the walls stand, from the left, mm of paper; how thick and high they are. */
const WALLS = { hollow: 14, full: 99, thick: 8, high: 38 } as const;
/** An item from beside, mm of paper: no higher and no deeper than this; how far it has tipped, rad, and the gap between it and the wall. */
const MOST = { high: 30, deep: 24 } as const;
const TIPPED = 0.3;
const GAP = 2.4;

/** How deep and how high an item is, and over the floor where it is fixed, mm. */
export interface FromBeside {
  readonly deep: number;
  readonly high: number;
  readonly fixed: number;
}

/**
 * An item never stands unfixed: from beside, what stands before a hollow wall with nothing that holds it tips, under a cross. It comes to another
 * wall, which is full, and is fixed there.
 */
export function unfixedMarks(wall: WallShown, item: FromBeside): readonly Mark[] {
  const scale = Math.min(MOST.high / item.high, MOST.deep / item.deep);
  const [deep, high, fixed] = [item.deep * scale, item.high * scale, item.fixed * scale];
  const [hollow, full]: readonly [Box, Box] = [
    { x: WALLS.hollow, y: FLOOR - WALLS.high, width: WALLS.thick, height: WALLS.high }, { x: WALLS.full, y: FLOOR - WALLS.high, width: WALLS.thick, height: WALLS.high },
  ];
  const [loose, held] = [hollow.x + WALLS.thick + GAP, full.x + WALLS.thick + GAP];
  const foot = loose + deep;
  const tipped = ([along, up]: Vec2): Vec2 => [foot + (along - deep) * Math.cos(TIPPED) + up * Math.sin(TIPPED), FLOOR + (along - deep) * Math.sin(TIPPED) - up * Math.cos(TIPPED)];
  const upright = ([along, up]: Vec2): Vec2 => [held + along, FLOOR - up];
  const plate = { x: held - GAP, y: FLOOR - fixed - 2.4 };
  return [
    ...ground(hollow.x - 10, hollow.x + 66), ...hollowWall(hollow), ...beside(tipped, deep, high, pens.cut), ...falling(tipped([deep, high])), ...crossed([hollow.x + 56, 9], 1.8),
    ...onwards([hollow.x + 72, FLOOR - WALLS.high / 2]),
    ...ground(full.x - 6, full.x + 50), ...fullWall(wall, full), ...beside(upright, deep, high, pens.cut),
    area('ink', [[plate.x, plate.y], [plate.x + 1.2, plate.y], [plate.x + 1.2, plate.y + 1.8], [held + 0.6, plate.y + 1.8], [held + 0.6, plate.y + 3], [plate.x + 1.2, plate.y + 3], [plate.x + 1.2, plate.y + 4.8], [plate.x, plate.y + 4.8]]),
    line({ ...pens.motion, width: 1 }, [plate.x, plate.y + 2.4], [plate.x - 4.6, plate.y + 2.4]), ...ticked([full.x + 42, 9], 1.8),
  ];
}

const ground = (from: number, to: number): readonly Mark[] => [line({ ...pens.motion, width: 0.8 }, [from, FLOOR], [to, FLOOR])];

/** Posts, and levels between them: the lowest a little over the floor. */
function beside(at: (place: Vec2) => Vec2, deep: number, high: number, pen: typeof pens.cut): readonly Mark[] {
  const bar = (from: Vec2, to: Vec2, half: number): readonly Mark[] => {
    const ring = from[0] === to[0]
      ? [[from[0] - half, from[1]], [from[0] + half, from[1]], [to[0] + half, to[1]], [to[0] - half, to[1]]] as const
      : [[from[0], from[1] - half], [to[0], to[1] - half], [to[0], to[1] + half], [from[0], from[1] + half]] as const;
    const placed = ring.map(at);
    return [area('panel', placed), outline(pen, placed)];
  };
  const levels = [0.16, 0.94].map((share) => share * high);
  return [...levels.flatMap((up) => bar([0, up], [deep, up], 1)), ...[0.8, deep - 0.8].flatMap((along) => bar([along, 0], [along, high], 0.8))];
}

/** An arrow round from over the upper corner of what tips, down before it. */
function falling([x, y]: Vec2): readonly Mark[] {
  const round = Array.from({ length: 7 }, (_, index): Vec2 => [x + 3 + 9 * Math.sin((index * 1.1) / 6), y + 5 - 9 * Math.cos((index * 1.1) / 6)]);
  const [before, tip] = [round.at(-2) ?? [x, y], round.at(-1) ?? [x, y]] as const;
  return [line({ ...pens.motion, width: 1.2 }, ...round), arrowhead([tip[0] + 2 * (tip[0] - before[0]), tip[1] + 2 * (tip[1] - before[1])], [tip[0] - before[0], tip[1] - before[1]], 4.6, 3.6)];
}
