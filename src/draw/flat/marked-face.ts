import type { Vec2 } from '../../model/index.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** A pencil that leans to the right with its point at nought, mm of paper, y up. */
const point: readonly Vec2[] = [[0, 0], [0.6, 2.6], [2, 1.7]];
const shaft: readonly Vec2[] = [[0.6, 2.6], [4.2, 8], [5.6, 7.1], [2, 1.7]];
/** The line that it has drawn on the face, mm. */
const drawn = 5;

/** A pencil on a face of a section: the face that carries the marks. From that the work is done, unless it is the lower one of a panel that is turned over. */
export function markedFace([x, y]: Vec2, side: 'upper' | 'lower' = 'upper'): readonly Mark[] {
  const up = side === 'upper' ? 1 : -1;
  const at = (points: readonly Vec2[]): readonly Vec2[] => points.map(([px, py]): Vec2 => [x + px, y - up * py]);
  return [
    area('white', at(shaft)), outline(pens.edge, at(shaft)),
    area('ink', at(point)),
    line(pens.cut, [x - drawn, y], [x, y]),
  ];
}

/** Room that the pencil takes over the face, mm. */
export const pencilRoom = 9;
