import { real, whole } from './arrays.ts';
import type { Flats } from './flats.ts';
import type { Welded } from './weld.ts';

/** The surface of a mesh as flat convex faces of any number of sides: fewer than its triangles. */
export interface ConvexFaces {
  /** Where each face's sides begin in `faceSides`; one more entry than faces. */
  readonly faceStarts: Int32Array;
  /** The sides of each face in turn, as its triangles' sides: side k of triangle t is 3 t + k. */
  readonly faceSides: Int32Array;
}

/** Each side of a triangle with the sides before and after it round its face; both −1 once it lies within a face. */
interface Rounds {
  readonly before: Int32Array;
  readonly after: Int32Array;
}

/**
 * Joins triangles that lie in one flat face wherever the joined face is convex: every side between two of them is
 * tried once, in order. After S. Hertel and K. Mehlhorn, "Fast triangulation of simple polygons" (1983; from
 * memory): at most four times as many faces as there must be.
 * @param neighbours the triangle across each side, or −1.
 */
export function convexFacesOf(welded: Welded, flats: Flats, neighbours: Int32Array): ConvexFaces {
  const rounds = trianglesApart(neighbours.length);
  for (let side = 0; side < neighbours.length; side++) {
    const [own, other] = [Math.floor(side / 3), whole(neighbours, side)];
    if (other <= own || whole(flats.planeOf, own) !== whole(flats.planeOf, other)) continue;
    const across = sideAcross(welded.triangles, side, other);
    if (across >= 0) joinOver(rounds, welded, flats.planes, 4 * whole(flats.planeOf, own), side, across);
  }
  return facesOf(rounds);
}

function trianglesApart(sides: number): Rounds {
  const [before, after] = [new Int32Array(sides), new Int32Array(sides)];
  for (let first = 0; first < sides; first += 3) {
    before.set([first + 2, first, first + 1], first);
    after.set([first + 1, first + 2, first], first);
  }
  return { before, after };
}

/** The side of a triangle that runs along another triangle's side the other way, or −1. */
function sideAcross(triangles: Int32Array, side: number, triangle: number): number {
  const [from, to] = [whole(triangles, side), whole(triangles, nextInTriangle(side))];
  for (let other = 3 * triangle; other < 3 * triangle + 3; other++) {
    if (whole(triangles, other) === to && whole(triangles, nextInTriangle(other)) === from) return other;
  }
  return -1;
}

/** The side after a side, round its own triangle. */
export const nextInTriangle = (side: number): number => (side % 3 === 2 ? side - 2 : side + 1);

/** Takes the sides between two faces away, if what they make together has no inside corner at either end. */
function joinOver({ before, after }: Rounds, welded: Welded, planes: Float64Array, plane: number, side: number, across: number): void {
  const [intoFrom, outOfFrom] = [whole(before, side), whole(after, across)];
  const [intoTo, outOfTo] = [whole(before, across), whole(after, side)];
  if (!turnsLeft(welded, planes, plane, intoFrom, outOfFrom) || !turnsLeft(welded, planes, plane, intoTo, outOfTo)) return;
  after[intoFrom] = outOfFrom;
  before[outOfFrom] = intoFrom;
  after[intoTo] = outOfTo;
  before[outOfTo] = intoTo;
  for (const within of [side, across]) {
    before[within] = -1;
    after[within] = -1;
  }
}

/** Whether the way turns to the left, or goes straight on, where one side ends and another begins: seen from outside. */
function turnsLeft({ points, triangles }: Welded, planes: Float64Array, plane: number, into: number, outOf: number): boolean {
  const a = 3 * whole(triangles, into);
  const b = 3 * whole(triangles, outOf);
  const c = 3 * whole(triangles, nextInTriangle(outOf));
  const ux = real(points, b) - real(points, a);
  const uy = real(points, b + 1) - real(points, a + 1);
  const uz = real(points, b + 2) - real(points, a + 2);
  const vx = real(points, c) - real(points, b);
  const vy = real(points, c + 1) - real(points, b + 1);
  const vz = real(points, c + 2) - real(points, b + 2);
  const turn = real(planes, plane) * (uy * vz - uz * vy) + real(planes, plane + 1) * (uz * vx - ux * vz) + real(planes, plane + 2) * (ux * vy - uy * vx);
  return turn > 0 || (turn === 0 && ux * vx + uy * vy + uz * vz > 0);
}

/** Every round that is left is a face. */
function facesOf({ after }: Rounds): ConvexFaces {
  const sides: number[] = [];
  const starts = [0];
  const listed = new Uint8Array(after.length);
  for (let first = 0; first < after.length; first++) {
    if (whole(after, first) < 0 || listed[first] === 1) continue;
    for (let side = first; listed[side] !== 1; side = whole(after, side)) {
      listed[side] = 1;
      sides.push(side);
    }
    starts.push(sides.length);
  }
  return { faceStarts: Int32Array.from(starts), faceSides: Int32Array.from(sides) };
}
