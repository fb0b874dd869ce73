import type { Mesh } from '../../model/index.ts';
import { Reals, Wholes, real, whole } from './arrays.ts';
import { hashOf } from './hash.ts';

/** Points and triangles of a mesh in which every place is one point and every triangle has three. */
export interface Welded {
  readonly points: Float64Array;
  readonly triangles: Int32Array;
}

/** Places that are kept, in cells of eight tolerances by a hash of column, row and layer. */
interface Kept {
  readonly points: Reals;
  /** The first place of each hash and the next with the same, or −1. */
  readonly buckets: Int32Array;
  readonly next: Wholes;
  readonly tolerance: number;
}

/** Joins points nearer than `tolerance` (mm) and drops the triangles that vanish by it. */
export function weld(mesh: Mesh, tolerance: number): Welded {
  const names = new Int32Array(mesh.positions.length / 3);
  const kept = { points: new Reals(), buckets: new Int32Array(2 ** Math.ceil(Math.log2(2 * names.length + 2))).fill(-1), next: new Wholes(), tolerance };
  for (let p = 0; p < names.length; p++) {
    const [x, y, z] = [real(mesh.positions, 3 * p), real(mesh.positions, 3 * p + 1), real(mesh.positions, 3 * p + 2)];
    const near = keptNear(kept, x, y, z);
    names[p] = near < 0 ? keep(kept, x, y, z) : near;
  }
  return { points: kept.points.done(), triangles: renamed(mesh.triangles, names) };
}

/** A place kept within the tolerance, or −1: looked for in the cells that a ball of that radius reaches. */
function keptNear(kept: Kept, x: number, y: number, z: number): number {
  const { tolerance } = kept;
  const [lastI, lastJ, lastK] = [cellOf(kept, x + tolerance), cellOf(kept, y + tolerance), cellOf(kept, z + tolerance)];
  for (let i = cellOf(kept, x - tolerance); i <= lastI; i++) {
    for (let j = cellOf(kept, y - tolerance); j <= lastJ; j++) {
      for (let k = cellOf(kept, z - tolerance); k <= lastK; k++) {
        const found = keptIn(kept, bucketOf(kept, i, j, k), x, y, z);
        if (found >= 0) return found;
      }
    }
  }
  return -1;
}

function keptIn({ points: { values }, buckets, next, tolerance }: Kept, bucket: number, x: number, y: number, z: number): number {
  for (let q = whole(buckets, bucket); q >= 0; q = whole(next.values, q)) {
    const [dx, dy, dz] = [real(values, 3 * q) - x, real(values, 3 * q + 1) - y, real(values, 3 * q + 2) - z];
    if (dx * dx + dy * dy + dz * dz <= tolerance * tolerance) return q;
  }
  return -1;
}

function keep(kept: Kept, x: number, y: number, z: number): number {
  const made = kept.next.count;
  const bucket = bucketOf(kept, cellOf(kept, x), cellOf(kept, y), cellOf(kept, z));
  for (const value of [x, y, z]) kept.points.push(value);
  kept.next.push(whole(kept.buckets, bucket));
  kept.buckets[bucket] = made;
  return made;
}

const cellOf = ({ tolerance }: Kept, value: number): number => Math.floor(value / (8 * tolerance));

const bucketOf = ({ buckets }: Kept, i: number, j: number, k: number): number => hashOf(Math.imul(i, 31) + j, k, buckets.length);

function renamed(triangles: Uint32Array, names: Int32Array): Int32Array {
  const kept = new Wholes();
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [whole(names, triangles[t] as number), whole(names, triangles[t + 1] as number), whole(names, triangles[t + 2] as number)];
    if (a === b || b === c || c === a) continue;
    for (const corner of [a, b, c]) kept.push(corner);
  }
  return kept.done();
}
