import { real, whole } from './arrays.ts';
import { leastCrossing } from './tolerances.ts';

/** A mesh with its planes, in any common coordinates. */
export interface Faces {
  readonly points: Float64Array;
  readonly planes: Float64Array;
  readonly topology: { readonly triangles: Int32Array; readonly planeOf: Int32Array };
}

type Point = readonly [number, number, number];

/**
 * The straight line along which two triangles pass through each other, as x y z x y z, or null.
 * After T. Möller, "A fast triangle-triangle intersection test" (1997): each triangle is cut by the
 * other's plane and the two cuts are laid over each other. The planes lie `touch` mm deeper than
 * the faces, so that bodies that only touch do not cross.
 */
export function crossingOf(a: Faces, t: number, b: Faces, u: number, touch: number): readonly number[] | null {
  const [p, q] = [4 * whole(a.topology.planeOf, t), 4 * whole(b.topology.planeOf, u)];
  const cutOfB = cutBy(b, u, a.planes, p, touch);
  if (!cutOfB) return null;
  const cutOfA = cutBy(a, t, b.planes, q, touch);
  if (!cutOfA) return null;
  const along = cross(a.planes, p, b.planes, q);
  return Math.hypot(...along) < leastCrossing ? null : common(cutOfA, cutOfB, along);
}

/** Both ends of a triangle's cut by a plane that lies `touch` under the given one. */
function cutBy(faces: Faces, t: number, planes: Float64Array, plane: number, touch: number): readonly [Point, Point] | null {
  const corners = [0, 1, 2].map((k) => 3 * whole(faces.topology.triangles, 3 * t + k));
  const heights = corners.map((c) => heightOver(faces.points, c, planes, plane) + touch);
  if (heights.every((h) => h >= 0) || heights.every((h) => h < 0)) return null;
  const ends: Point[] = [];
  for (let k = 0; k < 3; k++) {
    const [h, g] = [heights[k] as number, heights[(k + 1) % 3] as number];
    if (h >= 0 !== g >= 0) ends.push(between(faces.points, corners[k] as number, corners[(k + 1) % 3] as number, h / (h - g)));
  }
  const [one, other] = ends;
  return one && other ? [one, other] : null;
}

function heightOver(points: Float64Array, c: number, planes: Float64Array, plane: number): number {
  return real(points, c) * real(planes, plane) + real(points, c + 1) * real(planes, plane + 1)
    + real(points, c + 2) * real(planes, plane + 2) - real(planes, plane + 3);
}

function between(points: Float64Array, from: number, to: number, share: number): Point {
  const at = (k: number): number => real(points, from + k) + share * (real(points, to + k) - real(points, from + k));
  return [at(0), at(1), at(2)];
}

function cross(p: Float64Array, i: number, q: Float64Array, j: number): Point {
  const [ax, ay, az] = [real(p, i), real(p, i + 1), real(p, i + 2)];
  const [bx, by, bz] = [real(q, j), real(q, j + 1), real(q, j + 2)];
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

function common(one: readonly [Point, Point], other: readonly [Point, Point], along: Point): readonly number[] | null {
  const place = (point: Point): number => point[0] * along[0] + point[1] * along[1] + point[2] * along[2];
  const sorted = [one, other].map((cut) => [...cut].sort((p, q) => place(p) - place(q)) as [Point, Point]);
  const [[a0, a1], [b0, b1]] = sorted as [[Point, Point], [Point, Point]];
  const from = place(a0) > place(b0) ? a0 : b0;
  const to = place(a1) < place(b1) ? a1 : b1;
  return place(from) < place(to) ? [...from, ...to] : null;
}
