import { Matrix4 } from 'three';
import type { Body } from '../types.ts';
import { crossingOf } from './crossing.ts';
import type { LineCaches } from './caches.ts';
import { numbersKey, remembered } from './caches.ts';
import { item, real, whole } from './arrays.ts';
import { extentAlong, turnPlanes, turnPoints } from './stage.ts';
import type { Topology } from './topology.ts';
import { touchShare } from './tolerances.ts';

/** Lines where two bodies pass through each other: eight numbers each, in the first body's coordinates. */
export interface Crossings {
  readonly first: number;
  readonly second: number;
  /** x y z, x y z, triangle of the first, triangle of the second. */
  readonly segments: Float64Array;
}

/** Finds where bodies enter each other, whatever the view. Bodies that only touch have no crossings. */
export function crossingsOf(bodies: readonly Body[], topologies: readonly Topology[], caches: LineCaches): readonly Crossings[] {
  const boxes = boxesOf(bodies, topologies);
  const found: Crossings[] = [];
  bodies.forEach((one, first) => {
    for (let second = first + 1; second < bodies.length; second++) {
      const other = item(bodies, second);
      if (!enter(boxes, 6 * first, 6 * second)) continue;
      const relative = new Matrix4().fromArray(one.pose).invert().multiply(new Matrix4().fromArray(other.pose)).elements;
      const ofFirst = remembered(caches.crossings, one.mesh, () => new WeakMap<typeof one.mesh, Map<string, Float64Array>>());
      const ofPair = remembered(ofFirst, other.mesh, () => new Map<string, Float64Array>());
      const segments = remembered(ofPair, numbersKey(relative), () => pairCrossings(item(topologies, first), item(topologies, second), relative));
      if (segments.length > 0) found.push({ first, second, segments });
    }
  });
  return found;
}

/** Least x y z and greatest x y z of the box round each body. */
function boxesOf(bodies: readonly Body[], topologies: readonly Topology[]): Float64Array {
  const boxes = new Float64Array(6 * bodies.length);
  bodies.forEach(({ pose }, b) => {
    for (let k = 0; k < 3; k++) {
      const [low, high] = extentAlong(item(topologies, b).box, pose, k);
      boxes[6 * b + k] = low;
      boxes[6 * b + k + 3] = high;
    }
  });
  return boxes;
}

/** Whether two boxes share more than a side. */
function enter(boxes: Float64Array, one: number, other: number): boolean {
  return real(boxes, one) < real(boxes, other + 3) && real(boxes, other) < real(boxes, one + 3)
    && real(boxes, one + 1) < real(boxes, other + 4) && real(boxes, other + 1) < real(boxes, one + 4)
    && real(boxes, one + 2) < real(boxes, other + 5) && real(boxes, other + 2) < real(boxes, one + 5);
}

/** Triangles of one body near the other, with their boxes, all in the first body's coordinates. */
interface Near {
  readonly points: Float64Array;
  readonly planes: Float64Array;
  readonly topology: Topology;
  readonly triangles: readonly number[];
  /** Least x y z and greatest x y z of every triangle in the list. */
  readonly boxes: Float64Array;
}

function pairCrossings(a: Topology, b: Topology, bToA: readonly number[]): Float64Array {
  const touch = touchShare * Math.max(a.diagonal, b.diagonal);
  const points = new Float64Array(b.points.length);
  const planes = new Float64Array(b.planes.length);
  turnPoints(b.points, bToA, points, 0);
  turnPlanes(b.planes, bToA, planes, 0);
  const spans = [0, 1, 2].map((k) => extentAlong(b.box, bToA, k));
  const common = Float64Array.from([
    ...spans.map(([low], k) => Math.max(low, real(a.box, k))),
    ...spans.map(([, high], k) => Math.min(high, real(a.box, k + 3))),
  ]);
  const axis = [0, 1, 2].reduce((best, k) => (real(common, k + 3) - real(common, k) > real(common, best + 3) - real(common, best) ? k : best), 0);
  const near = nearTriangles(a, a.points, a.planes, common, axis);
  const others = nearTriangles(b, points, planes, common, axis);
  return sweep(near, others, axis, touch);
}

/** Triangles that reach into the common box, in order of their least coordinate along the axis of the sweep. */
function nearTriangles(topology: Topology, points: Float64Array, planes: Float64Array, common: Float64Array, axis: number): Near {
  const count = topology.triangles.length / 3;
  const all = new Float64Array(6 * count);
  const found: number[] = [];
  for (let t = 0; t < count; t++) {
    writeBox(topology.triangles, points, t, all);
    if (overlap(all, 6 * t, common, 0)) found.push(t);
  }
  const triangles = found.sort((p, q) => real(all, 6 * p + axis) - real(all, 6 * q + axis) || p - q);
  const boxes = new Float64Array(6 * triangles.length);
  triangles.forEach((t, i) => {
    for (let k = 0; k < 6; k++) boxes[6 * i + k] = real(all, 6 * t + k);
  });
  return { topology, points, planes, triangles, boxes };
}

function writeBox(triangles: Int32Array, points: Float64Array, t: number, boxes: Float64Array): void {
  const [a, b, c] = [3 * whole(triangles, 3 * t), 3 * whole(triangles, 3 * t + 1), 3 * whole(triangles, 3 * t + 2)];
  for (let k = 0; k < 3; k++) {
    boxes[6 * t + k] = Math.min(real(points, a + k), real(points, b + k), real(points, c + k));
    boxes[6 * t + k + 3] = Math.max(real(points, a + k), real(points, b + k), real(points, c + k));
  }
}

function overlap(p: Float64Array, i: number, q: Float64Array, j: number): boolean {
  return real(p, i) <= real(q, j + 3) && real(q, j) <= real(p, i + 3)
    && real(p, i + 1) <= real(q, j + 4) && real(q, j + 1) <= real(p, i + 4)
    && real(p, i + 2) <= real(q, j + 5) && real(q, j + 2) <= real(p, i + 5);
}

function sweep(a: Near, b: Near, axis: number, touch: number): Float64Array {
  const segments: number[] = [];
  for (let i = 0; i < a.triangles.length; i++) {
    const end = real(a.boxes, 6 * i + 3 + axis);
    for (let j = 0; j < b.triangles.length && real(b.boxes, 6 * j + axis) <= end; j++) {
      if (!overlap(a.boxes, 6 * i, b.boxes, 6 * j)) continue;
      const [t, u] = [item(a.triangles, i), item(b.triangles, j)];
      const segment = crossingOf(a, t, b, u, touch);
      if (segment) segments.push(...segment, t, u);
    }
  }
  return Float64Array.from(segments);
}
