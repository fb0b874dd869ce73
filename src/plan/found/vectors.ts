import { dot, minus, type Pose, type Vec3 } from '../../model/index.ts';

/** The other way; never −0, so that a direction is told in one way alone. */
export const against = (a: Vec3): Vec3 => [0 - a[0], 0 - a[1], 0 - a[2]];

/** Directions closer than this are one: the cosine of half a degree. */
const ALIKE = Math.cos(Math.PI / 360);
export const sameWay = (a: Vec3, b: Vec3): boolean => dot(a, b) > ALIKE;
export const parallel = (a: Vec3, b: Vec3): boolean => Math.abs(dot(a, b)) > ALIKE;

/** A point carried by a pose; like `placed`, without the detour over a matrix object. */
export function carried(pose: Pose, x: number, y: number, z: number): Vec3 {
  const at = (row: number): number =>
    (pose[row] ?? 0) * x + (pose[4 + row] ?? 0) * y + (pose[8 + row] ?? 0) * z + (pose[12 + row] ?? 0);
  return [at(0), at(1), at(2)];
}

/** One of a pose's own axes (0, 1, 2) in the coordinates that it leads to. */
export const axisOf = (pose: Pose, axis: 0 | 1 | 2): Vec3 => [pose[axis * 4] ?? 0, pose[axis * 4 + 1] ?? 0, pose[axis * 4 + 2] ?? 0];

/** A direction after the turn of a pose, its shift left out. */
export const turnedBy = (pose: Pose, [x, y, z]: Vec3): Vec3 => minus(carried(pose, x, y, z), carried(pose, 0, 0, 0));
