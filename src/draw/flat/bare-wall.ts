import type { Vec2 } from '../../model/index.ts';
import { area, circle, line, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Box } from '../types.ts';
import { bond, grain, HIGH, ringOf, SCALE, type WallShown } from './wall-pieces.ts';

/** Where the screws go, mm: how far their holes are over the floor, the upper one first, and from each bracket to the next; and whether the brackets are on the item's posts before they are screwed to the wall. */
export interface WallHoles {
  readonly heights: readonly [number, number];
  readonly apart: readonly number[];
  readonly areOnPosts: boolean;
  /** How far aside new holes are marked where a bracket has come out, mm. */
  readonly moved: number;
}

/** A wall from before, and where on the paper its holes are: their columns from the left, their rows from above, mm of paper. */
export interface BareWall {
  readonly marks: readonly Mark[];
  readonly right: number;
  readonly top: number;
  readonly floor: number;
  readonly columns: readonly number[];
  readonly rows: Vec2;
}

/** Where a wall is drawn, mm of paper: its left edge, its width, the middle of its height, and how far its floor goes on to the right; how much of it right of the last column is free. */
export interface WallPlace {
  readonly left: number;
  readonly wide: number;
  readonly y: number;
  readonly beyond: number;
  readonly free?: number;
}

/** A stretch of the bare wall seen from before, standing on its floor; some of it over the floor is left out. */
export function bareWall(wall: WallShown, { heights: [upper, lower], apart }: Pick<WallHoles, 'heights' | 'apart'>, { left, wide, y, beyond, free = 7 }: WallPlace): BareWall {
  const [top, floor, right] = [y - (HIGH * SCALE) / 2, y + (HIGH * SCALE) / 2, left + wide];
  const [first, last] = [left + 4, right - free];
  const whole = apart.reduce((sum, each) => sum + each, 0);
  const columns = apart.length === 0 ? [last] : [first, ...apart.map((_, index) => first + ((last - first) * apart.slice(0, index + 1).reduce((sum, each) => sum + each, 0)) / whole)];
  const box: Box = { x: left, y: top, width: wide, height: floor - top };
  const broken = floor - 7;
  return {
    marks: [
      area('panel', ringOf(box)), ...(wall.kind === 'masonry' ? bond(box) : grain(box)), line(pens.edge, [left, floor], [left, top], [right, top], [right, floor]),
      area('white', ringOf({ x: left - 1, y: broken - 1.2, width: wide + 2, height: 2.4 })), ...[broken - 1.2, broken + 1.2].map((at) => line(pens.edge, ...Array.from({ length: 5 }, (_, index): Vec2 => [left - 1 + (index * (wide + 2)) / 4, at + (index % 2 === 0 ? 0.5 : -0.5)]))),
      line({ ...pens.motion, width: 0.8 }, [left - 3, floor], [right + beyond, floor]), ...floorUnder(left - 3, right + beyond, floor),
    ],
    right, top, floor, columns, rows: [top + 6, top + 6 + (upper - lower) * SCALE],
  };
}

/** The ground under a floor's line. */
const floorUnder = (from: number, to: number, y: number): readonly Mark[] => Array.from({ length: Math.floor((to - from) / 3) }, (_, index) => line(pens.edge, [from + 3 * (index + 1), y], [from + 3 * index + 1, y + 2]));

/** Half the arm of a cross that marks a hole, mm of paper. */
const ARM = 1.6;

/** The place of a hole. */
export const crossAt = ([x, y]: Vec2): readonly Mark[] => {
  const pen = { ...pens.motion, width: 0.8 };
  return [circle([x, y], ARM + 0.8, null, 'white'), line(pen, [x - ARM, y], [x + ARM, y]), line(pen, [x, y - ARM], [x, y + ARM])];
};
