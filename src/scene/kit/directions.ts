import { placed, type Pose, type Vec3 } from '../../model/index.ts';

export const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const times = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];
export const lengthOf = (a: Vec3): number => Math.hypot(...a);
export const unit = (a: Vec3): Vec3 => times(a, 1 / lengthOf(a));

/** A direction after the turn of a pose, its shift left out. */
export function turnedBy(pose: Pose, direction: Vec3): Vec3 {
  const origin = placed(pose, [0, 0, 0]);
  return plus(placed(pose, direction), times(origin, -1));
}
