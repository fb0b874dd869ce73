import type { Vec2 } from '../../model/index.ts';
import { area, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A pencil that leans to the right with its point at nought, mm of paper, y up. */
const point: readonly Vec2[] = [[0, 0], [0.6, 2.6], [2, 1.7]];
const shaft: readonly Vec2[] = [[0.6, 2.6], [4.2, 8], [5.6, 7.1], [2, 1.7]];

/** A pencil with its point at a place: here something is marked. */
export function pencil([x, y]: Vec2): readonly Mark[] {
  const at = (points: readonly Vec2[]): readonly Vec2[] => points.map(([px, py]): Vec2 => [x + px, y - py]);
  return [area('white', at(shaft)), outline(pens.edge, at(shaft)), area('ink', at(point))];
}
