import { dot, type Vec2, type Vec3 } from '../../model/index.ts';
import type { View } from '../../scene/index.ts';

/** The view plane: unit vectors of the scene along the paper's right and up, and towards the eye. */
export interface Plane {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly towardsEye: Vec3;
}

const cross = (a: Vec3, b: Vec3): Vec3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];

/**
 * Axes of a parallel view. The scene's origin falls on the plane's origin.
 * Looking straight along `up` there is no upright on paper; the scene's y (then z, x) takes its place, as in
 * the line drawing.
 * @throws when `towardsEye` has no direction.
 */
export function planeOf(view: View): Plane {
  const reach = Math.hypot(...view.towardsEye);
  if (!(reach > 0)) throw new Error('view: towardsEye is [0, 0, 0]; give a direction from the work to the eye');
  const towardsEye = scaled(view.towardsEye, 1 / reach);
  for (const upright of [view.up, [0, 1, 0], [0, 0, 1], [1, 0, 0]] as const) {
    const right = cross(upright, towardsEye);
    const size = Math.hypot(...right);
    if (size <= 1e-6 * Math.hypot(...upright)) continue;
    const unit = scaled(right, 1 / size);
    return { right: unit, up: cross(towardsEye, unit), towardsEye };
  }
  throw new Error('view: up has no direction; give a vector such as [0, 0, 1]');
}

/** Where a place of the scene falls on the view plane, in mm of the scene, x to the right and y upwards. */
export function project(plane: Plane, place: Vec3): Vec2 {
  return [dot(plane.right, place), dot(plane.up, place)];
}

/** How far a vector of the scene points towards the eye, in mm. */
export function depthOf(plane: Plane, vector: Vec3): number {
  return dot(plane.towardsEye, vector);
}
