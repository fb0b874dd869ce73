import type { SceneBody } from '../types.ts';
import { boxRound } from './extent.ts';

/** About the paper that a scene gets, mm, and what is seen on it without looking closely. */
const PAPER = 120;
const SEEN = 4;

/** Whether something of this width, mm, is drawn too small to be seen among these bodies. */
export function isTooSmall(wide: number, bodies: readonly SceneBody[]): boolean {
  const { least, most } = boxRound(bodies);
  return wide * PAPER < SEEN * Math.hypot(most[0] - least[0], most[1] - least[1], most[2] - least[2]);
}
