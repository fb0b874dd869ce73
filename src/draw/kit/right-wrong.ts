import type { Vec2 } from '../../model/index.ts';
import { line, type Mark } from './marks.ts';
import { band } from './pens.ts';

/** Width of the strokes, mm. */
const WIDE = 1.1;

/** So it is right: a tick round a place, `size` times as large as usual. */
export const ticked = ([x, y]: Vec2, size = 1): readonly Mark[] => [line(band(WIDE * size), [x - 2.6 * size, y], [x - 0.9 * size, y + 2.2 * size], [x + 2.8 * size, y - 2.8 * size])];

/** So it is wrong: a cross. */
export const crossed = ([x, y]: Vec2, size = 1): readonly Mark[] => {
  const arm = 2.4 * size;
  return [line(band(WIDE * size), [x - arm, y - arm], [x + arm, y + arm]), line(band(WIDE * size), [x - arm, y + arm], [x + arm, y - arm])];
};
