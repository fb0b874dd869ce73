import type { Vec } from './pose.ts';
import type { Mesh } from './unpack.ts';

/** Numbers for the graphics chip: flat faces and the lines between them. */
export interface Drawn {
  /** Six numbers a corner: place, and the normal of its triangle. */
  readonly faces: Float32Array;
  /** Ten numbers an end of a line: place, normals of the faces on both sides, 1 for a crease, 0 where the surface is round. */
  readonly lines: Float32Array;
  /** The eight corners of the box round it, mm. */
  readonly box: readonly Vec[];
}

/** Faces that turn less than this are one flat face; those that turn less than the second are one round surface. Cosines of 0.5° and 30°. */
const FLAT = 0.99996;
const ROUND = 0.866;
/** Where the far corner of a face lies this near to its neighbour's plane, mm, both are one flat face: a sliver's own normal says nothing. */
const NEAR = 0.06;

/** Each line is drawn as a crease, or where a round surface turns away from the eye: that is settled while drawing. */
export function facesAndLines({ corners, triangles }: Mesh): Drawn {
  const faces = new Float32Array(triangles.length * 6);
  const sides = new Map<number, Side[]>();
  for (let first = 0; first < triangles.length; first += 3) {
    const { normal, size } = planeOf(corners, triangles, first);
    for (let corner = 0; corner < 3; corner++) {
      const from = triangles[first + corner] || 0;
      const to = triangles[first + (corner + 1) % 3] || 0;
      faces.set(placeOf(corners, from), (first + corner) * 6);
      faces.set(normal, (first + corner) * 6 + 3);
      const key = Math.min(from, to) * 65536 + Math.max(from, to);
      const side: Side = { from: placeOf(corners, from), to: placeOf(corners, to), far: placeOf(corners, triangles[first + (corner + 2) % 3] || 0), normal, size };
      sides.set(key, (sides.get(key) || []).concat(side));
    }
  }
  const lines: number[] = [];
  sides.forEach(([one, other]) => {
    if (one === undefined || (other !== undefined && isFlat(one, other))) return;
    const beyond = other === undefined ? scaled(one.normal, -1) : other.normal;
    for (const end of [one.from, one.to]) lines.push(...end, ...one.normal, ...beyond, dot(one.normal, beyond) < ROUND ? 1 : 0);
  });
  return { faces, lines: new Float32Array(lines), box: boxOf(corners) };
}

const placeOf = (corners: Float32Array, corner: number): Vec => [corners[3 * corner] || 0, corners[3 * corner + 1] || 0, corners[3 * corner + 2] || 0];
const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const less = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const scaled = (a: Vec, by: number): Vec => [a[0] * by, a[1] * by, a[2] * by];

/** One side of a triangle: its ends, the corner across, and the triangle's normal and size. */
interface Side {
  readonly from: Vec;
  readonly to: Vec;
  readonly far: Vec;
  readonly normal: Vec;
  readonly size: number;
}

function isFlat(one: Side, other: Side): boolean {
  if (dot(one.normal, other.normal) > FLAT) return true;
  const [large, small] = one.size < other.size ? [other, one] : [one, other];
  return Math.abs(dot(large.normal, less(small.far, large.from))) < NEAR;
}

/** A triangle's normal, and twice its area. */
function planeOf(corners: Float32Array, triangles: Uint16Array, first: number): { readonly normal: Vec; readonly size: number } {
  const [a, b, c] = [0, 1, 2].map((corner) => placeOf(corners, triangles[first + corner] || 0)) as [Vec, Vec, Vec];
  const [u, v] = [less(b, a), less(c, a)];
  const cross: Vec = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const size = Math.sqrt(dot(cross, cross));
  return { normal: scaled(cross, 1 / (size || 1)), size };
}

function boxOf(corners: Float32Array): readonly Vec[] {
  const [least, most] = extent(corners);
  return [0, 1, 2, 3, 4, 5, 6, 7].map((corner) => [0, 1, 2].map((axis) => ((corner >> axis) & 1 ? most[axis] : least[axis]) || 0) as unknown as Vec);
}

/** Least and most of numbers that stand for x, y and z by turns. */
export function extent(corners: ArrayLike<number>): readonly [least: readonly number[], most: readonly number[]] {
  const least = [Infinity, Infinity, Infinity];
  const most = [-Infinity, -Infinity, -Infinity];
  for (let index = 0; index < corners.length; index++) {
    const [axis, value] = [index % 3, corners[index] || 0];
    least[axis] = Math.min(least[axis] || 0, value);
    most[axis] = Math.max(most[axis] || 0, value);
  }
  return [least, most];
}
