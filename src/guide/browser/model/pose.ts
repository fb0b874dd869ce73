/** A pose as the first three rows of its matrix, row by row. */
export type Pose = readonly number[];
export type Vec = readonly [number, number, number];

const at = (pose: Pose, index: number): number => pose[index] || 0;

/** Does `second`, then `first`. */
export function chained(first: Pose, second: Pose): Pose {
  const result: number[] = [];
  for (let row = 0; row < 12; row += 4) {
    for (let column = 0; column < 4; column++) {
      result.push(at(first, row) * at(second, column) + at(first, row + 1) * at(second, 4 + column) + at(first, row + 2) * at(second, 8 + column)
        + (column === 3 ? at(first, row + 3) : 0));
    }
  }
  return result;
}

export const placed = (pose: Pose, [x, y, z]: Vec): Vec => [0, 4, 8].map((row) => at(pose, row) * x + at(pose, row + 1) * y + at(pose, row + 2) * z + at(pose, row + 3)) as unknown as Vec;

/** A direction of the whole in a body's own coordinates. */
export const turnedBack = (pose: Pose, [x, y, z]: Vec): Vec => [0, 1, 2].map((column) => at(pose, column) * x + at(pose, 4 + column) * y + at(pose, 8 + column) * z) as unknown as Vec;

/** Straight between two poses: close enough to a turn where they differ little. */
export const between = (from: Pose, to: Pose, share: number): Pose => from.map((value, index) => value + (at(to, index) - value) * share);
