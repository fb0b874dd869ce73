import { Matrix4, Vector3 } from 'three';
import type { Pose, Vec3 } from './types.ts';

export const standstill: Pose = new Matrix4().toArray();

export const moved = (by: Vec3): Pose => new Matrix4().makeTranslation(...by).toArray();

/** Turn about a line through the origin, right-handed, rad. */
export const turned = (axis: Vec3, angle: number): Pose =>
  new Matrix4().makeRotationAxis(new Vector3(...axis).normalize(), angle).toArray();

/** Applies the poses from the last to the first: `chained(a, b)` does b, then a. */
export const chained = (...poses: readonly Pose[]): Pose =>
  poses.reduce((left, right) => asMatrix(left).multiply(asMatrix(right)).toArray(), standstill);

export const undone = (pose: Pose): Pose => asMatrix(pose).invert().toArray();

export const placed = (pose: Pose, point: Vec3): Vec3 =>
  new Vector3(...point).applyMatrix4(asMatrix(pose)).toArray();

/** A direction turned with a pose. */
export const pointed = (pose: Pose, direction: Vec3): Vec3 => {
  const [x, y, z] = new Vector3(...direction).transformDirection(asMatrix(pose)).toArray();
  return [rounded(x), rounded(y), rounded(z)];
};

/** A quarter turn leaves dust in the sixteenth figure; no direction means it. */
const rounded = (value: number): number => Math.round(value * 1e12) / 1e12 + 0;

/** Where an own axis of a pose looks (0 to 2), or where its origin stands (3). */
export const columnOf = (pose: Pose, column: number): Vec3 => [pose[4 * column] ?? 0, pose[4 * column + 1] ?? 0, pose[4 * column + 2] ?? 0];

/** The pose whose own x, y, z axes become the given directions, with the origin at `at`. */
export function facing(at: Vec3, x: Vec3, y: Vec3, z: Vec3): Pose {
  const matrix = new Matrix4().makeBasis(new Vector3(...x), new Vector3(...y), new Vector3(...z));
  return matrix.setPosition(...at).toArray();
}

export const asMatrix = (pose: Pose): Matrix4 => new Matrix4().fromArray([...pose]);
