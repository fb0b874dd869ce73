import type { Mesh } from '../../model/index.ts';
import { item, real } from './arrays.ts';

/** Points and triangles of a mesh in which every place is one point and every triangle has three. */
export interface Welded {
  readonly points: Float64Array;
  readonly triangles: Int32Array;
}

/** Joins points nearer than `tolerance` (mm) and drops the triangles that vanish by it. */
export function weld(mesh: Mesh, tolerance: number): Welded {
  const kept: number[] = [];
  const cell = tolerance * 8;
  const buckets = new Map<string, number[]>();
  const names = new Int32Array(mesh.positions.length / 3);
  for (let p = 0; p < names.length; p++) {
    const at = [0, 1, 2].map((k) => real(mesh.positions, 3 * p + k)) as [number, number, number];
    const near = nearKeys(at, cell, tolerance).flatMap((key) => buckets.get(key) ?? [])
      .find((q) => distance(kept, q, at) <= tolerance);
    names[p] = near ?? kept.length / 3;
    if (near !== undefined) continue;
    const key = at.map((v) => Math.floor(v / cell)).join();
    const bucket = buckets.get(key);
    if (bucket) bucket.push(kept.length / 3);
    else buckets.set(key, [kept.length / 3]);
    kept.push(...at);
  }
  return { points: Float64Array.from(kept), triangles: renamed(mesh.triangles, names) };
}

function renamed(triangles: Uint32Array, names: Int32Array): Int32Array {
  const kept: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => names[triangles[t + k] as number]) as [number, number, number];
    if (a !== b && b !== c && c !== a) kept.push(a, b, c);
  }
  return Int32Array.from(kept);
}

/** The cells that a ball of the tolerance's radius reaches: one, but for points near a cell's side. */
function nearKeys(at: readonly number[], cell: number, tolerance: number): readonly string[] {
  const spans = at.map((v) => [...new Set([Math.floor((v - tolerance) / cell), Math.floor((v + tolerance) / cell)])]);
  return item(spans, 0).flatMap((x) => item(spans, 1).flatMap((y) => item(spans, 2).map((z) => `${x},${y},${z}`)));
}

function distance(points: readonly number[], p: number, at: readonly [number, number, number]): number {
  return Math.hypot(item(points, 3 * p) - at[0], item(points, 3 * p + 1) - at[1], item(points, 3 * p + 2) - at[2]);
}
