import type { Vec2 } from '../../model/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { fullWall } from './wall-kind.ts';
import type { WallShown } from './wall-pieces.ts';

/** A wall from beside, how thick and high, mm of paper. */
export const WALL_BESIDE = { thick: 8, high: 38 } as const;
/** An item from beside, mm of paper: no higher and no deeper than this; the gap between it and the wall. */
const MOST = { high: 30, deep: 24 } as const;
export const GAP = 2.4;

/** How deep and how high an item is, and over the floor where it is fixed, mm. */
export interface FromBeside {
  readonly deep: number;
  readonly high: number;
  readonly fixed: number;
}

/** The same on paper, mm. */
export function besideOnPaper({ deep, high, fixed }: FromBeside): FromBeside {
  const scale = Math.min(MOST.high / high, MOST.deep / deep);
  return { deep: deep * scale, high: high * scale, fixed: fixed * scale };
}

/** A full wall with an item fixed to it, from beside: from the wall's left edge on the floor, mm of paper. */
export function fixedBeside(wall: WallShown, item: FromBeside, [x, floor]: Vec2): readonly Mark[] {
  const { deep, high, fixed } = besideOnPaper(item);
  const held = x + WALL_BESIDE.thick + GAP;
  const plate = { x: held - GAP, y: floor - fixed - 2.4 };
  return [
    ...ground(x - 6, x + 44, floor), ...fullWall(wall, { x, y: floor - WALL_BESIDE.high, width: WALL_BESIDE.thick, height: WALL_BESIDE.high }), ...beside(([along, up]) => [held + along, floor - up], deep, high, pens.cut),
    area('ink', [[plate.x, plate.y], [plate.x + 1.2, plate.y], [plate.x + 1.2, plate.y + 1.8], [held + 0.6, plate.y + 1.8], [held + 0.6, plate.y + 3], [plate.x + 1.2, plate.y + 3], [plate.x + 1.2, plate.y + 4.8], [plate.x, plate.y + 4.8]]),
    line({ ...pens.motion, width: 1 }, [plate.x, plate.y + 2.4], [plate.x - 4.6, plate.y + 2.4]),
  ];
}

/** The floor. */
export const ground = (from: number, to: number, floor: number): readonly Mark[] => [line({ ...pens.motion, width: 0.8 }, [from, floor], [to, floor])];

/** Posts, and levels between them: the lowest a little over the floor. */
export function beside(at: (place: Vec2) => Vec2, deep: number, high: number, pen: typeof pens.cut): readonly Mark[] {
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
