import type { Vec2 } from '../../../model/index.ts';
import { area, line, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { smooth } from './rope.ts';

/** The outline of the forefinger and of the hand below it, of the thumb and of its nail, from where they hold, mm of paper; the hand comes from the right and is left open there. */
const HAND: readonly Vec2[] = [[22, -9], [14, -8.6], [6, -7.6], [0, -5.6], [-3.4, -2.6], [-3, 0.6], [0, 2], [4, 2.4], [9, 2.4]];
const PALM: readonly Vec2[] = [[9, 2.4], [7.6, 7], [9, 12], [14, 15], [22, 16]];
const THUMB: readonly Vec2[] = [[22, 11], [15, 9.8], [8, 7.4], [0, 4.2], [-4, 1.8], [-4.4, -1.4], [-1.4, -3.2], [3.4, -2.2], [9.6, 0.2], [15, 1.6]];
const NAIL: readonly Vec2[] = [[-2.6, 0.8], [-2.8, -0.8], [-1, -1.6], [1.4, -0.8], [1.2, 1.4], [-0.6, 1.8], [-2.6, 0.8]];

/** Thumb and forefinger that hold what is between them, so many times as large as usual: the finger behind it, the thumb before it. */
export function pinch([x, y]: Vec2, by = 1): { readonly behind: readonly Mark[]; readonly before: readonly Mark[] } {
  const on = (points: readonly Vec2[]): readonly Vec2[] => smooth(...points.map(([dx, dy]): Vec2 => [x + by * dx, y + by * dy]));
  const pen = { ...pens.cut, width: Math.max(0.5, 0.6 * by), round: true } as const;
  return {
    behind: [area('white', [...on(HAND), ...on(PALM)]), line(pen, ...on(HAND)), line(pen, ...on(PALM))],
    before: [area('white', on(THUMB)), line(pen, ...on(THUMB)), line(pens.edge, ...on(NAIL))],
  };
}
