import { cross, dot, lengthOf, minus, tidy, times, turned, unit, type Pose, type Vec3 } from '../../model/index.ts';

/**
 * The pose in which a direction of the finished item is up. Upright work keeps its front in front; upside down it is
 * turned over about its long side; lying, its top points to the right.
 */
export function poseFor(up: Vec3): Pose {
  if (up[2] > 0.999) return turned([0, 0, 1], 0);
  if (up[2] < -0.999) return turned([1, 0, 0], Math.PI);
  const right = unit(minus([0, 0, 1], times(up, up[2])));
  const away = cross(up, right);
  return [right[0], away[0], up[0], 0, right[1], away[1], up[1], 0, right[2], away[2], up[2], 0, 0, 0, 0, 1];
}

/** The axis and the angle (rad) of the turn that brings another direction up; about `level`, when that will do. */
export function turnBetween(from: Vec3, to: Vec3, level: Vec3 | null): { readonly axis: Vec3; readonly angle: number } {
  const axis = cross(from, to);
  const angle = Math.acos(Math.max(-1, Math.min(1, dot(from, to))));
  if (lengthOf(axis) > 1e-6) return { axis: tidy(unit(axis)), angle };
  return { axis: tidy(level ?? acrossFrom(from)), angle };
}

/** A level direction to turn over about: the item's height when it lies, its width when it stands. */
const acrossFrom = (up: Vec3): Vec3 => (Math.abs(up[2]) > 0.9 ? [1, 0, 0] : unit(minus([0, 0, 1], times(up, up[2]))));

