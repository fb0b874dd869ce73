import type { SceneBody } from '../types.ts';
import { boxRound } from './extent.ts';

/** About the paper that a scene gets, mm, and what is seen on it without looking closely. */
const PAPER = 120;
const SEEN = 4;

/** Whether something of this width, mm, is drawn too small to be seen among these bodies. */
export function isTooSmall(wide: number, bodies: readonly SceneBody[]): boolean {
  const { min, max } = boxRound(bodies);
  return wide * PAPER < SEEN * Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]);
}
