import { Matrix4 } from 'three';
import type { Body } from '../types.ts';
import { crossingOf } from './crossing.ts';
import type { LineCaches } from './caches.ts';
import { numbersKey, remembered } from './caches.ts';
import { item, real } from './arrays.ts';
import { extentAlong, turnPlanes, turnPoints } from './stage.ts';
import type { Topology } from './topology.ts';
import { boxesOfTriangles } from './triangleBoxes.ts';
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
  const spans = [0, 1, 2].map((k) => extentAlong(b.box, bToA, k));
  const common = Float64Array.from([
    ...spans.map(([low], k) => Math.max(low, real(a.box, k))),
    ...spans.map(([, high], k) => Math.min(high, real(a.box, k + 3))),
  ]);
  if ([0, 1, 2].some((k) => real(common, k) > real(common, k + 3))) return new Float64Array();
  const axis = [0, 1, 2].reduce((best, k) => (real(common, k + 3) - real(common, k) > real(common, best + 3) - real(common, best) ? k : best), 0);
  const points = new Float64Array(b.points.length);
  const planes = new Float64Array(b.planes.length);
  turnPoints(b.points, bToA, points, 0);
  turnPlanes(b.planes, bToA, planes, 0);
  const near = nearTriangles(a, a.points, a.planes, reachingInto(a, common), common, axis);
  const others = nearTriangles(b, points, planes, reachingInto(b, turnedBack(common, bToA, b.diagonal * slack)), common, axis);
  return sweep(near, others, axis, touch);
}

/** Share of a body's diagonal by which a box turned into its coordinates is widened, so that rounding loses no triangle. */
const slack = 1e-9;

/** The box, in a body's own coordinates, round a box that stands in coordinates into which `pose` turns the body, widened by `margin` mm. */
function turnedBack(box: Float64Array, pose: readonly number[], margin: number): Float64Array {
  const back = new Matrix4().fromArray(pose).invert().elements;
  const spans = [0, 1, 2].map((k) => extentAlong(box, back, k));
  return Float64Array.from([...spans.map(([low]) => low - margin), ...spans.map(([, high]) => high + margin)]);
}

/** Triangles whose own boxes reach into a box, both in the body's coordinates. */
function reachingInto({ triangleBoxes }: Topology, box: Float64Array): readonly number[] {
  const found: number[] = [];
  for (let t = 0; 6 * t < triangleBoxes.length; t++) {
    if (overlap(triangleBoxes, 6 * t, box, 0)) found.push(t);
  }
  return found;
}

/** Those of a body's triangles that reach into the common box, in order of their least coordinate along the axis of the sweep. */
function nearTriangles(topology: Topology, points: Float64Array, planes: Float64Array, among: readonly number[], common: Float64Array, axis: number): Near {
  const candidates = boxesOfTriangles(topology.triangles, points, among);
  const places = [...among.keys()].filter((place) => overlap(candidates, 6 * place, common, 0))
    .sort((p, q) => real(candidates, 6 * p + axis) - real(candidates, 6 * q + axis) || p - q);
  const boxes = new Float64Array(6 * places.length);
  places.forEach((place, i) => { boxes.set(candidates.subarray(6 * place, 6 * place + 6), 6 * i); });
  return { topology, points, planes, triangles: places.map((place) => item(among, place)), boxes };
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
