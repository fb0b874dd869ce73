import { real, whole } from './arrays.ts';
import { slot } from './grid.ts';
import type { Occluders } from './occluders.ts';
import { firstSide, greatestZ, leastZ } from './occluders.ts';
import type { Tolerances } from './tolerances.ts';

/**
 * The face nearest to the eye at a place of the view plane, by its place in the occluders, or −1.
 * Where faces of two bodies lie in each other the earlier body counts, so that they do not flicker.
 */
export function frontmost(occluders: Occluders, x: number, y: number, tolerances: Tolerances): number {
  const { grid, numbers, starts } = occluders;
  const cell = slot(y - grid.y, grid.cell, grid.rows) * grid.columns + slot(x - grid.x, grid.cell, grid.columns);
  const reach = tolerances.contourInset + tolerances.innerGrowth;
  let best = -1;
  let bestZ = -Infinity;
  const end = whole(grid.starts, cell + 1);
  for (let m = whole(grid.starts, cell); m < end; m++) {
    const face = whole(grid.members, m);
    const at = whole(starts, face);
    if (real(numbers, at + greatestZ) < bestZ - tolerances.behind) break;
    if (!covers(numbers, at, whole(starts, face + 1), x, y, reach)) continue;
    const z = heightAt(numbers, at, x, y);
    if (best >= 0 && !isBefore(face, z, best, bestZ, occluders, tolerances.behind)) continue;
    best = face;
    bestZ = z;
  }
  return best;
}

function covers(f: Float64Array, at: number, end: number, x: number, y: number, reach: number): boolean {
  for (let side = at + firstSide; side < end; side += 3) {
    if (real(f, side) * x + real(f, side + 1) * y < real(f, side + 2) - reach) return false;
  }
  return true;
}

/** Height of a face towards the eye, kept within its corners' heights: steep faces run away otherwise. */
function heightAt(f: Float64Array, at: number, x: number, y: number): number {
  const z = (real(f, at + 3) - real(f, at) * x - real(f, at + 1) * y) / real(f, at + 2);
  return Math.min(real(f, at + greatestZ), Math.max(real(f, at + leastZ), z));
}

function isBefore(face: number, z: number, best: number, bestZ: number, { numbers: f, body, starts }: Occluders, same: number): boolean {
  const step = Math.abs(z - bestZ) * Math.min(real(f, whole(starts, face) + 2), real(f, whole(starts, best) + 2));
  const [mine, other] = [whole(body, face), whole(body, best)];
  return mine !== other && step <= same ? mine < other : z > bestZ;
}
