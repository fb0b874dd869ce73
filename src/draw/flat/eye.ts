import type { Vec2 } from '../../model/index.ts';
import { area, circle, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';

/** Points along one lid. */
const FINE = 10;

/** An eye, so wide, round a place: look there. */
export function eye([x, y]: Vec2, wide: number): readonly Mark[] {
  const lid = (up: 1 | -1): readonly Vec2[] => Array.from({ length: FINE + 1 }, (_, step): Vec2 => {
    const share = (2 * step) / FINE - 1;
    return [x + (up * share * wide) / 2, y - up * 0.3 * wide * (1 - share * share)];
  });
  const ring = [...lid(1), ...lid(-1)];
  return [area('white', ring), outline({ ...pens.motion, width: 0.9 }, ring), circle([x, y], wide * 0.19, null, 'ink'), circle([x - wide * 0.05, y - wide * 0.06], wide * 0.05, null, 'white')];
}
