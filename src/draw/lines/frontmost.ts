import { real, whole } from './arrays.ts';
import { slot } from './grid.ts';
import type { Occluders } from './occluders.ts';
import { greatestZ, leastZ, planeAt, stride } from './occluders.ts';
import type { Tolerances } from './tolerances.ts';

/**
 * The face nearest to the eye at a place of the view plane, by its place in the occluders, or −1.
 * Where faces of two bodies lie in each other the earlier body counts, so that they do not flicker.
 */
export function frontmost(occluders: Occluders, x: number, y: number, tolerances: Tolerances): number {
  const { grid, numbers, body } = occluders;
  const cell = slot(y - grid.y, grid.cell, grid.rows) * grid.columns + slot(x - grid.x, grid.cell, grid.columns);
  const reach = tolerances.contourInset + tolerances.innerGrowth;
  let best = -1;
  let bestZ = -Infinity;
  const end = whole(grid.starts, cell + 1);
  for (let m = whole(grid.starts, cell); m < end; m++) {
    const face = whole(grid.members, m);
    if (real(numbers, stride * face + greatestZ) < bestZ - tolerances.behind) break;
    if (!covers(numbers, stride * face, x, y, reach)) continue;
    const z = heightAt(numbers, stride * face, x, y);
    if (best >= 0 && !isBefore(face, z, best, bestZ, numbers, body, tolerances.behind)) continue;
    best = face;
    bestZ = z;
  }
  return best;
}

function covers(f: Float64Array, at: number, x: number, y: number, reach: number): boolean {
  return real(f, at) * x + real(f, at + 1) * y >= real(f, at + 2) - reach
    && real(f, at + 3) * x + real(f, at + 4) * y >= real(f, at + 5) - reach
    && real(f, at + 6) * x + real(f, at + 7) * y >= real(f, at + 8) - reach;
}

/** Height of a face towards the eye, kept within its corners' heights: steep faces run away otherwise. */
function heightAt(f: Float64Array, at: number, x: number, y: number): number {
  const plane = at + planeAt;
  const z = (real(f, plane + 3) - real(f, plane) * x - real(f, plane + 1) * y) / real(f, plane + 2);
  return Math.min(real(f, at + greatestZ), Math.max(real(f, at + leastZ), z));
}

function isBefore(face: number, z: number, best: number, bestZ: number, f: Float64Array, body: Int32Array, same: number): boolean {
  const step = Math.abs(z - bestZ) * Math.min(real(f, stride * face + planeAt + 2), real(f, stride * best + planeAt + 2));
  const [mine, other] = [whole(body, face), whole(body, best)];
  return mine !== other && step <= same ? mine < other : z > bestZ;
}
