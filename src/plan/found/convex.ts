import { cross, dot, lengthOf, minus, type Vec3 } from '../../model/index.ts';

/** A convex body: its corners (x y z by turns, mm) and directions across which its flat faces lie. */
export interface Piece {
  readonly points: Float64Array;
  readonly normals: readonly Vec3[];
  readonly min: Vec3;
  readonly max: Vec3;
}

/** Bodies that enter each other by less than this only touch, mm. */
export const TOUCHING = 0.3;
/** Rounds of the search for a plane between two bodies; those not parted by then are taken to meet. */
const MOST_ROUNDS = 48;
const SMALL = 1e-9;

export function pieceOf(points: readonly Vec3[], normals: readonly Vec3[]): Piece {
  const corners = new Float64Array(3 * points.length);
  points.forEach(([x, y, z], index) => {
    corners[3 * index] = x;
    corners[3 * index + 1] = y;
    corners[3 * index + 2] = z;
  });
  return pieceAt(corners, normals);
}

/** A convex body by its corners, x y z by turns, which it keeps. */
export function pieceAt(points: Float64Array, normals: readonly Vec3[]): Piece {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let at = 0; at < points.length; at += 3) {
    for (const axis of AXES) {
      const value = points[at + axis] ?? 0;
      if (value < min[axis]) min[axis] = value;
      if (value > max[axis]) max[axis] = value;
    }
  }
  return { points, normals, min, max };
}

const AXES = [0, 1, 2] as const;

/** The box round some bodies, itself a body. */
export function boxRound(pieces: readonly Piece[]): Piece {
  const end = (axis: 0 | 1 | 2, most: boolean): number => pieces.reduce((reach, piece) =>
    (most ? Math.max(reach, piece.max[axis]) : Math.min(reach, piece.min[axis])), most ? -Infinity : Infinity);
  const corners = [false, true].flatMap((x) => [false, true].flatMap((y) => [false, true].map((z): Vec3 => [end(0, x), end(1, y), end(2, z)])));
  return pieceOf(corners, [[1, 0, 0], [0, 1, 0], [0, 0, 1]]);
}

/** How far a body reaches along a direction. */
export function reachOf(points: Float64Array, [x, y, z]: Vec3): number {
  let most = -Infinity;
  for (let at = 0; at < points.length; at += 3) {
    most = Math.max(most, (points[at] ?? 0) * x + (points[at + 1] ?? 0) * y + (points[at + 2] ?? 0) * z);
  }
  return most;
}

/**
 * Whether a body, swept along `way` (mm), stays out of a standing one, but for a touch of `touching` mm. Continuous:
 * the swept body is the hull of its start and its end. A yes is a proof; a no may be said of bodies that barely touch.
 */
export function staysOut(mover: Piece, way: Vec3, standing: Piece, touching: number = TOUCHING): boolean {
  if (boxesApart(mover, way, standing, touching)) return true;
  const across = [...mover.normals, ...standing.normals];
  if (across.some((axis) => partedAlong(axis, mover, way, standing, touching))) return true;
  if (lengthOf(way) > 0 && across.some((axis) => partedBeside(axis, mover, way, standing, touching))) return true;
  return planeBetween(mover.points, way, standing.points);
}

/** Whether the boxes round a swept and a standing body are apart. */
export function boxesApart(mover: Piece, way: Vec3, standing: Piece, touching: number = TOUCHING): boolean {
  for (let axis = 0; axis < 3; axis++) {
    const travel = way[axis] ?? 0;
    if ((mover.min[axis] ?? 0) + Math.min(0, travel) > (standing.max[axis] ?? 0) - touching) return true;
    if ((mover.max[axis] ?? 0) + Math.max(0, travel) < (standing.min[axis] ?? 0) + touching) return true;
  }
  return false;
}

/** Whether a gap, or an overlap of less than a touch, lies across a direction of length 1. */
function partedAlong(axis: Vec3, mover: Piece, way: Vec3, standing: Piece, touching: number): boolean {
  const travel = dot(axis, way);
  const back: Vec3 = [-axis[0], -axis[1], -axis[2]];
  const above = reachOf(mover.points, axis) + Math.max(0, travel) + reachOf(standing.points, back);
  if (above < touching) return true;
  return reachOf(mover.points, back) + Math.max(0, -travel) + reachOf(standing.points, axis) < touching;
}

/** The same across a direction at right angles to the way and to a face. */
function partedBeside(normal: Vec3, mover: Piece, way: Vec3, standing: Piece, touching: number): boolean {
  const beside = cross(normal, way);
  const length = lengthOf(beside);
  if (length < SMALL * lengthOf(way)) return false;
  return partedAlong([beside[0] / length, beside[1] / length, beside[2] / length], mover, way, standing, touching);
}

/** The farthest corner of (swept mover − standing) along a direction. */
function farthest(mover: Float64Array, way: Vec3, standing: Float64Array, towards: Vec3): Vec3 {
  const [x, y, z] = towards;
  const own = farthestCorner(mover, x, y, z);
  const other = farthestCorner(standing, -x, -y, -z);
  const swept = dot(way, towards) > 0 ? 1 : 0;
  return [
    (mover[own] ?? 0) + swept * way[0] - (standing[other] ?? 0),
    (mover[own + 1] ?? 0) + swept * way[1] - (standing[other + 1] ?? 0),
    (mover[own + 2] ?? 0) + swept * way[2] - (standing[other + 2] ?? 0),
  ];
}

function farthestCorner(points: Float64Array, x: number, y: number, z: number): number {
  let best = 0;
  let most = -Infinity;
  for (let at = 0; at < points.length; at += 3) {
    const reach = (points[at] ?? 0) * x + (points[at + 1] ?? 0) * y + (points[at + 2] ?? 0) * z;
    if (reach > most) {
      most = reach;
      best = at;
    }
  }
  return best;
}

/** Gilbert, Johnson and Keerthi 1988: walks to the place of the difference of two bodies that is nearest to the origin, or finds a plane between. */
function planeBetween(mover: Float64Array, way: Vec3, standing: Float64Array): boolean {
  let simplex: Vec3[] = [farthest(mover, way, standing, [1, 0.3, 0.2])];
  let towards = negative(simplex[0] ?? [0, 0, 0]);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (dot(towards, towards) < SMALL) return false;
    const corner = farthest(mover, way, standing, towards);
    if (dot(corner, towards) < 0) return true;
    const next = nearestFeature([corner, ...simplex]);
    if (next === null) return false;
    simplex = next.simplex;
    towards = next.towards;
  }
  return false;
}

const negative = ([x, y, z]: Vec3): Vec3 => [-x, -y, -z];

interface Feature {
  readonly simplex: Vec3[];
  /** From the feature towards the origin. */
  readonly towards: Vec3;
}

/** Of a simplex whose first corner is the newest, the part next to the origin; null when the origin lies within. */
function nearestFeature([a, b, c, d]: readonly Vec3[]): Feature | null {
  if (a === undefined || b === undefined) return null;
  if (c === undefined) return ofLine(a, b);
  return d === undefined ? ofTriangle(a, b, c) : ofTetrahedron(a, b, c, d);
}

function ofLine(a: Vec3, b: Vec3): Feature {
  const [ab, ao] = [minus(b, a), negative(a)];
  return dot(ab, ao) > 0 ? { simplex: [a, b], towards: cross(cross(ab, ao), ab) } : { simplex: [a], towards: ao };
}

function ofTriangle(a: Vec3, b: Vec3, c: Vec3): Feature {
  const [ab, ac, ao] = [minus(b, a), minus(c, a), negative(a)];
  const normal = cross(ab, ac);
  if (dot(cross(normal, ac), ao) > 0) {
    return dot(ac, ao) > 0 ? { simplex: [a, c], towards: cross(cross(ac, ao), ac) } : ofLine(a, b);
  }
  if (dot(cross(ab, normal), ao) > 0) return ofLine(a, b);
  return dot(normal, ao) > 0 ? { simplex: [a, b, c], towards: normal } : { simplex: [a, c, b], towards: negative(normal) };
}

function ofTetrahedron(a: Vec3, b: Vec3, c: Vec3, d: Vec3): Feature | null {
  const ao = negative(a);
  if (dot(cross(minus(b, a), minus(c, a)), ao) > 0) return ofTriangle(a, b, c);
  if (dot(cross(minus(c, a), minus(d, a)), ao) > 0) return ofTriangle(a, c, d);
  if (dot(cross(minus(d, a), minus(b, a)), ao) > 0) return ofTriangle(a, d, b);
  return null;
}
