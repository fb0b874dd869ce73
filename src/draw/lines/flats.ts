import { real, whole } from './arrays.ts';
import { flatCosine } from './tolerances.ts';
import type { Welded } from './weld.ts';

/** The flat faces of a mesh: which one each triangle lies in, and their planes n·p = d (nx, ny, nz, d). */
export interface Flats {
  readonly planeOf: Int32Array;
  readonly planes: Float64Array;
}

/** Direction, area and least height of each triangle. */
interface Facets {
  readonly normals: Float64Array;
  readonly areas: Float64Array;
  readonly sliver: Uint8Array;
}

/**
 * Gathers triangles that meet at less than 0.3° into flat faces.
 * @param neighbours the triangle across each side, or −1.
 * @param leastHeight triangles lower than this (mm) take the direction of a neighbour.
 */
export function flatsOf(welded: Welded, neighbours: Int32Array, leastHeight: number): Flats {
  const facets = facetsOf(welded, leastHeight);
  const directions = settledDirections(welded, neighbours, facets);
  const leader = joinFlat(neighbours, directions);
  return averagePlanes(welded, facets, directions, leader);
}

function facetsOf({ points, triangles }: Welded, leastHeight: number): Facets {
  const count = triangles.length / 3;
  const normals = new Float64Array(3 * count);
  const areas = new Float64Array(count);
  const sliver = new Uint8Array(count);
  for (let t = 0; t < count; t++) {
    const [a, b, c] = [3 * whole(triangles, 3 * t), 3 * whole(triangles, 3 * t + 1), 3 * whole(triangles, 3 * t + 2)];
    const [ux, uy, uz] = [real(points, b) - real(points, a), real(points, b + 1) - real(points, a + 1), real(points, b + 2) - real(points, a + 2)];
    const [vx, vy, vz] = [real(points, c) - real(points, a), real(points, c + 1) - real(points, a + 1), real(points, c + 2) - real(points, a + 2)];
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const twice = length(nx, ny, nz);
    const longest = Math.max(length(ux, uy, uz), length(vx, vy, vz), length(ux - vx, uy - vy, uz - vz));
    if (twice > 0) {
      normals[3 * t] = nx / twice;
      normals[3 * t + 1] = ny / twice;
      normals[3 * t + 2] = nz / twice;
    }
    areas[t] = twice / 2;
    sliver[t] = twice < leastHeight * longest ? 1 : 0;
  }
  return { normals, areas, sliver };
}

const length = (x: number, y: number, z: number): number => Math.sqrt(x * x + y * y + z * z);

/** A sliver lies along its longest side, so it takes the direction of the triangle across that side. */
function settledDirections(welded: Welded, neighbours: Int32Array, facets: Facets): Float64Array {
  const settled = Float64Array.from(facets.normals);
  facets.sliver.forEach((isSliver, t) => {
    if (isSliver === 0) return;
    const model = acrossSlivers(welded, neighbours, facets, t);
    settled.set(facets.normals.subarray(3 * model, 3 * model + 3), 3 * t);
  });
  return settled;
}

function acrossSlivers(welded: Welded, neighbours: Int32Array, facets: Facets, from: number): number {
  const seen = new Set([from]);
  let t = from;
  while (facets.sliver[t] === 1) {
    const next = [0, 1, 2]
      .sort((a, b) => sideLength(welded, t, b) - sideLength(welded, t, a))
      .map((side) => whole(neighbours, 3 * t + side))
      .find((n) => n >= 0 && !seen.has(n));
    if (next === undefined) return from;
    seen.add(next);
    t = next;
  }
  return t;
}

function sideLength({ points, triangles }: Welded, t: number, side: number): number {
  const a = 3 * whole(triangles, 3 * t + side);
  const b = 3 * whole(triangles, 3 * t + ((side + 1) % 3));
  return Math.hypot(real(points, b) - real(points, a), real(points, b + 1) - real(points, a + 1), real(points, b + 2) - real(points, a + 2));
}

function joinFlat(neighbours: Int32Array, directions: Float64Array): Int32Array {
  const leader = Int32Array.from({ length: neighbours.length / 3 }, (_, t) => t);
  for (let h = 0; h < neighbours.length; h++) {
    const t = Math.floor(h / 3);
    const n = whole(neighbours, h);
    if (n > t && cosine(directions, t, n) > flatCosine) join(leader, t, n);
  }
  return leader.map((_, t) => leaderOf(leader, t));
}

/** The first member of a triangle's set; paths are halved on the way. */
function leaderOf(leader: Int32Array, from: number): number {
  let t = from;
  while (whole(leader, t) !== t) {
    leader[t] = whole(leader, whole(leader, t));
    t = whole(leader, t);
  }
  return t;
}

function join(leader: Int32Array, a: number, b: number): void {
  const [first, second] = [leaderOf(leader, a), leaderOf(leader, b)];
  leader[Math.max(first, second)] = Math.min(first, second);
}

function cosine(directions: Float64Array, a: number, b: number): number {
  return real(directions, 3 * a) * real(directions, 3 * b)
    + real(directions, 3 * a + 1) * real(directions, 3 * b + 1)
    + real(directions, 3 * a + 2) * real(directions, 3 * b + 2);
}

/** Planes weighted by area, so that slivers do not count. */
function averagePlanes(welded: Welded, facets: Facets, directions: Float64Array, leader: Int32Array): Flats {
  const number = new Map<number, number>();
  const planeOf = leader.map((first) => {
    const known = number.get(first) ?? number.size;
    number.set(first, known);
    return known;
  });
  const planes = new Float64Array(4 * number.size);
  const weights = new Float64Array(number.size);
  planeOf.forEach((plane, t) => {
    const weight = real(facets.areas, t) + 1e-30;
    weights[plane] = real(weights, plane) + weight;
    for (let k = 0; k < 3; k++) planes[4 * plane + k] = real(planes, 4 * plane + k) + weight * real(directions, 3 * t + k);
  });
  weights.forEach((_, plane) => {
    const length = Math.hypot(real(planes, 4 * plane), real(planes, 4 * plane + 1), real(planes, 4 * plane + 2)) || 1;
    for (let k = 0; k < 3; k++) planes[4 * plane + k] = real(planes, 4 * plane + k) / length;
  });
  planeOf.forEach((plane, t) => {
    const share = (real(facets.areas, t) + 1e-30) / real(weights, plane);
    planes[4 * plane + 3] = real(planes, 4 * plane + 3) + share * heightAlong(welded, t, planes, plane);
  });
  return { planeOf, planes };
}

/** Distance of a triangle's middle from the origin along the plane's normal. */
function heightAlong({ points, triangles }: Welded, t: number, planes: Float64Array, plane: number): number {
  let sum = 0;
  for (let corner = 0; corner < 3; corner++) {
    const p = 3 * whole(triangles, 3 * t + corner);
    for (let k = 0; k < 3; k++) sum += real(points, p + k) * real(planes, 4 * plane + k);
  }
  return sum / 3;
}
