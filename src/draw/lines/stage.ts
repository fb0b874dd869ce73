import { Matrix4 } from 'three';
import type { Body } from '../types.ts';
import { flag, item, real, whole } from './arrays.ts';
import { leastFacing } from './tolerances.ts';
import type { Topology } from './topology.ts';

/** All bodies turned into the view: x to the right, y upwards, z towards the eye, in mm. */
export interface Stage {
  /** x y z of every point. */
  readonly points: Float64Array;
  /** nx ny nz d of every flat face. */
  readonly planes: Float64Array;
  /** 1 for flat faces that are turned to the eye. */
  readonly front: Uint8Array;
  /** Where each body's points and flat faces begin; one more entry than bodies. */
  readonly firstPoint: Int32Array;
  readonly firstPlane: Int32Array;
  /** Body to view, one matrix a body. */
  readonly matrices: readonly Matrix4[];
  readonly topologies: readonly Topology[];
  /** Diagonal of the box round everything, in view directions. */
  readonly diagonal: number;
}

/** Lays the bodies out in the view. */
export function stageOf(bodies: readonly Body[], topologies: readonly Topology[], view: Matrix4): Stage {
  const firstPoint = startsOf(topologies.map((t) => t.points.length / 3));
  const firstPlane = startsOf(topologies.map((t) => t.planes.length / 4));
  const matrices = bodies.map((body) => view.clone().multiply(new Matrix4().fromArray(body.pose)));
  const points = new Float64Array(3 * whole(firstPoint, bodies.length));
  const planes = new Float64Array(4 * whole(firstPlane, bodies.length));
  topologies.forEach((topology, b) => {
    const matrix = (matrices[b] as Matrix4).elements;
    turnPoints(topology.points, matrix, points, 3 * whole(firstPoint, b));
    turnPlanes(topology.planes, matrix, planes, 4 * whole(firstPlane, b));
  });
  const front = new Uint8Array(planes.length / 4);
  for (let plane = 0; plane < front.length; plane++) front[plane] = real(planes, 4 * plane + 2) > leastFacing ? 1 : 0;
  return { points, planes, front, firstPoint, firstPlane, matrices, topologies, diagonal: diagonalOf(topologies, matrices) };
}

/** 1 where a triangle of a body, by its place in the body's mesh, is turned to the eye; 0 where there is none (−1). */
export const facing = ({ topologies, front, firstPlane }: Stage, body: number, triangle: number): number =>
  (triangle < 0 ? 0 : flag(front, whole(firstPlane, body) + whole(item(topologies, body).planeOf, triangle)));

function startsOf(counts: readonly number[]): Int32Array {
  const starts = new Int32Array(counts.length + 1);
  counts.forEach((count, i) => { starts[i + 1] = whole(starts, i) + count; });
  return starts;
}

/** Turns and moves points by a matrix (column by column), writing them from `start` on. */
export function turnPoints(from: Float64Array, m: readonly number[], to: Float64Array, start: number): void {
  const [m0, m1, m2, , m4, m5, m6, , m8, m9, m10, , mx, my, mz] = m as Fifteen;
  for (let p = 0; p < from.length; p += 3) {
    const px = real(from, p);
    const py = real(from, p + 1);
    const pz = real(from, p + 2);
    to[start + p] = m0 * px + m4 * py + m8 * pz + mx;
    to[start + p + 1] = m1 * px + m5 * py + m9 * pz + my;
    to[start + p + 2] = m2 * px + m6 * py + m10 * pz + mz;
  }
}

/** A matrix column by column, its last number left out. */
type Fifteen = readonly [number, number, number, number, number, number, number, number, number, number, number, number, number, number, number];

/** Turns planes by a rigid matrix. */
export function turnPlanes(from: Float64Array, m: readonly number[], to: Float64Array, start: number): void {
  const [m0, m1, m2, , m4, m5, m6, , m8, m9, m10, , mx, my, mz] = m as Fifteen;
  for (let p = 0; p < from.length; p += 4) {
    const nx = real(from, p);
    const ny = real(from, p + 1);
    const nz = real(from, p + 2);
    const x = m0 * nx + m4 * ny + m8 * nz;
    const y = m1 * nx + m5 * ny + m9 * nz;
    const z = m2 * nx + m6 * ny + m10 * nz;
    to[start + p] = x;
    to[start + p + 1] = y;
    to[start + p + 2] = z;
    to[start + p + 3] = real(from, p + 3) + x * mx + y * my + z * mz;
  }
}

/** Diagonal of the box round the turned boxes of all bodies. */
function diagonalOf(topologies: readonly Topology[], matrices: readonly Matrix4[]): number {
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  topologies.forEach((topology, b) => {
    const m = (matrices[b] as Matrix4).elements;
    for (let k = 0; k < 3; k++) {
      const [low, high] = extentAlong(topology.box, m, k);
      least[k] = Math.min(least[k] as number, low);
      most[k] = Math.max(most[k] as number, high);
    }
  });
  return topologies.length === 0 ? 0 : Math.hypot(...most.map((value, k) => value - (least[k] as number)));
}

/** Least and greatest coordinate k of a box turned by a matrix. */
export function extentAlong(box: Float64Array, m: readonly number[], k: number): readonly [number, number] {
  let low = m[12 + k] as number;
  let high = low;
  for (let j = 0; j < 3; j++) {
    const [one, other] = [(m[4 * j + k] as number) * real(box, j), (m[4 * j + k] as number) * real(box, j + 3)];
    low += Math.min(one, other);
    high += Math.max(one, other);
  }
  return [low, high];
}
