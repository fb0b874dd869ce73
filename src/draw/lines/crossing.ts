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
function cutBy({ points, topology: { triangles } }: Faces, t: number, planes: Float64Array, plane: number, touch: number): readonly [Point, Point] | null {
  const [a, b, c] = [3 * whole(triangles, 3 * t), 3 * whole(triangles, 3 * t + 1), 3 * whole(triangles, 3 * t + 2)];
  const f = heightOver(points, a, planes, plane) + touch;
  const g = heightOver(points, b, planes, plane) + touch;
  const h = heightOver(points, c, planes, plane) + touch;
  if ((f >= 0 && g >= 0 && h >= 0) || (f < 0 && g < 0 && h < 0)) return null;
  if (f >= 0 === g >= 0) return [between(points, a, c, f / (f - h)), between(points, b, c, g / (g - h))];
  if (g >= 0 === h >= 0) return [between(points, b, a, g / (g - f)), between(points, c, a, h / (h - f))];
  return [between(points, a, b, f / (f - g)), between(points, c, b, h / (h - g))];
}

function heightOver(points: Float64Array, c: number, planes: Float64Array, plane: number): number {
  return real(points, c) * real(planes, plane) + real(points, c + 1) * real(planes, plane + 1)
    + real(points, c + 2) * real(planes, plane + 2) - real(planes, plane + 3);
}

function between(points: Float64Array, from: number, to: number, share: number): Point {
  const [x, y, z] = [real(points, from), real(points, from + 1), real(points, from + 2)];
  return [x + share * (real(points, to) - x), y + share * (real(points, to + 1) - y), z + share * (real(points, to + 2) - z)];
}

function cross(p: Float64Array, i: number, q: Float64Array, j: number): Point {
  const [ax, ay, az] = [real(p, i), real(p, i + 1), real(p, i + 2)];
  const [bx, by, bz] = [real(q, j), real(q, j + 1), real(q, j + 2)];
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

/** The stretch that both cuts share, along the line in which the planes meet. */
function common(one: readonly [Point, Point], other: readonly [Point, Point], along: Point): readonly number[] | null {
  const [a0, a1] = inOrder(one, along);
  const [b0, b1] = inOrder(other, along);
  const from = placeOn(a0, along) > placeOn(b0, along) ? a0 : b0;
  const to = placeOn(a1, along) < placeOn(b1, along) ? a1 : b1;
  return placeOn(from, along) < placeOn(to, along) ? [...from, ...to] : null;
}

function inOrder([p, q]: readonly [Point, Point], along: Point): readonly [Point, Point] {
  return placeOn(p, along) <= placeOn(q, along) ? [p, q] : [q, p];
}

function placeOn(point: Point, along: Point): number {
  return point[0] * along[0] + point[1] * along[1] + point[2] * along[2];
}
