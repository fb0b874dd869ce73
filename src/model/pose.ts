import { Matrix4, Vector3 } from 'three';
import type { Pose, Vec3 } from './types.ts';

/** Used again by every call below, which is done with them before it ends: poses are told by the hundred thousand. */
const [product, factor, vector] = [new Matrix4(), new Matrix4(), new Vector3()];

const read = (pose: Pose): Matrix4 => factor.fromArray(pose as number[]);

export const standstill: Pose = new Matrix4().toArray();

export const moved = (by: Vec3): Pose => new Matrix4().makeTranslation(...by).toArray();

/** Turn about a line through the origin, right-handed, rad. */
export const turned = (axis: Vec3, angle: number): Pose =>
  new Matrix4().makeRotationAxis(new Vector3(...axis).normalize(), angle).toArray();

/** Applies the poses from the last to the first: `chained(a, b)` does b, then a. */
export const chained = (...poses: readonly Pose[]): Pose => {
  product.identity();
  for (const pose of poses) product.multiply(read(pose));
  return product.toArray();
};

export const undone = (pose: Pose): Pose => read(pose).invert().toArray();

export const placed = (pose: Pose, [x, y, z]: Vec3): Vec3 => vector.set(x, y, z).applyMatrix4(read(pose)).toArray();

/** A direction turned with a pose. */
export const pointed = (pose: Pose, [towardsX, towardsY, towardsZ]: Vec3): Vec3 => {
  const [x, y, z] = vector.set(towardsX, towardsY, towardsZ).transformDirection(read(pose)).toArray();
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

export const asMatrix = (pose: Pose): Matrix4 => new Matrix4().fromArray(pose as number[]);
