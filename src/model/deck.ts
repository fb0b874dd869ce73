import type { Kit } from '../read/index.ts';
import type { Vec2, Vec3 } from './types.ts';

/** Half distances between post axes for tubes of these lengths: a tube ends at the joint's stop. */
export const axesFor = (kit: Kit, width: number, depth: number): Vec2 =>
  [width / 2 + kit.joint.stop, depth / 2 + kit.joint.stop];

/** Half distances of the outermost of some points from the middle, on the floor plan. */
export const axesOfDeck = (points: readonly Vec3[]): Vec2 =>
  [Math.max(...points.map(([x]) => Math.abs(x))), Math.max(...points.map(([, y]) => Math.abs(y)))];
