import type { Kit } from '../read/index.ts';
import type { FlatPattern, Folding, Vec2, Vec3 } from './types.ts';

export const WRAPPED: Folding = { left: 1, right: 1, front: 1, back: 1 };
export const FLAT: Folding = { left: 0, right: 0, front: 0, back: 0 };

/** Half distances between post axes for tubes of these lengths: a tube ends at the joint's stop. */
export const axesFor = (kit: Kit, width: number, depth: number): Vec2 =>
  [width / 2 + kit.joint.stop, depth / 2 + kit.joint.stop];

/** Half distances of the outermost of some points from the middle, on the floor plan. */
export const axesOfDeck = (points: readonly Vec3[]): Vec2 =>
  [Math.max(...points.map(([x]) => Math.abs(x))), Math.max(...points.map(([, y]) => Math.abs(y)))];

/** Of a deck's panel, kg: the blank less its notches. */
export function panelMass(kit: Kit, pattern: FlatPattern): number {
  const notched = pattern.blank[0] * pattern.blank[1] - 4 * pattern.notch[0] * pattern.notch[1];
  return notched * pattern.thickness * kit.panel.density;
}
