import type { Vec2 } from '../../../model/index.ts';
import { toPicture } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { coil, smooth, thinCord } from './rope.ts';

/** Half the width and height of a coil with its loose end, and that end's way, mm of paper. */
const HALF = [11.6, 8.4] as const;
const LOOSE: readonly Vec2[] = [[4.6, -4.6], [8.4, -5.4], [10, -2.4], [9.6, 2], [10.6, 5.4]];

/** A limp cord in its coil, so many times as large as usual: its length is told beside it. */
export const coilPicture = (size = 1): DrawnPicture => {
  const [width, height] = [2 * HALF[0] * size, 2 * HALF[1] * size];
  const [x, y] = [width / 2 - 1.4 * size, height / 2];
  return toPicture({ width, height }, [...thinCord(...smooth(...LOOSE.map(([dx, dy]): Vec2 => [x + size * dx, y + size * dy]))), ...coil([x, y], size)]);
};
