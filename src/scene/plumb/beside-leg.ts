import { cross, dot, minus, placed, type Vec3 } from '../../model/index.ts';
import { boxRound, type Box } from '../kit/extent.ts';
import type { SceneBody } from '../types.ts';

/** A leg by a place on its axis, and a level way out from it. */
export interface LegSide {
  readonly at: Vec3;
  readonly out: Vec3;
}

/** How far out from a leg's axis bodies reach at heights one after the other, from below, mm; −∞ where there is nothing. */
export interface Reach {
  /** The lowest height, and from one to the next. */
  readonly from: number;
  readonly pitch: number;
  readonly outs: readonly number[];
}

/** Bodies with the boxes round them. */
export type Boxed = readonly { readonly body: SceneBody; readonly box: Box }[];

export const boxed = (bodies: readonly SceneBody[]): Boxed => bodies.map((body) => ({ body, box: boxRound([body]) }));

/** From one height to the next, mm. */
const PITCH = 4;

/** How far bodies reach out between two heights, in a strip so far to both sides of the leg's axis. */
export function reachBeside(faces: Faces, half: number, [low, high]: readonly [number, number]): Reach {
  const outs = Array.from({ length: Math.max(0, Math.ceil((high - low) / PITCH)) }, () => -Infinity);
  for (const ring of narrowed(faces, half, 0)) {
    ring.forEach((corner, index) => { raiseAlong(outs, low, corner, ring[(index + 1) % ring.length] ?? corner); });
  }
  return { from: low, pitch: PITCH, outs };
}

/** Raises what is known at each height to where an edge reaches there: a flat face reaches nowhere farther than its edges. */
function raiseAlong(outs: number[], low: number, one: Vec3, other: Vec3): void {
  const [[foot, , from], [head, , to]] = one[2] <= other[2] ? [one, other] : [other, one];
  const [first, last] = [Math.max(0, Math.floor((from - low) / PITCH)), Math.min(outs.length - 1, Math.floor((to - low) / PITCH))];
  const slope = to > from ? (head - foot) / (to - from) : 0;
  for (let place = first; place <= last; place++) {
    const below = low + PITCH * place;
    const begin = below <= from ? foot : foot + slope * (below - from);
    const end = below + PITCH >= to ? head : foot + slope * (below + PITCH - from);
    outs[place] = Math.max(outs[place] ?? -Infinity, begin, end);
  }
}

/** How high bodies reach between two distances out from a leg's axis, in a strip so far to both sides, mm; −∞ where there is nothing. */
export const highestBeside = (faces: Faces, half: number, [from, to]: readonly [number, number]): number =>
  narrowed(faces, half, from).flatMap((ring) => behind(ring, [[1, 0, 0], to])).reduce((most, [, , up]) => Math.max(most, up), -Infinity);

/** Corners by how far each is out from a leg's axis, aside of it, and up, mm. */
type Ring = readonly Vec3[];

/** Faces beside a leg. */
export type Faces = readonly Ring[];

/** The bodies' faces, each as far as it lies in a strip so far to both sides of a leg's axis and farther out than `from`, mm. */
export function facesBeside(bodies: Boxed, { at, out }: LegSide, half: number, from: number): Faces {
  const across = cross([0, 0, 1], out);
  const sides = sidesOf(half, from);
  const beside = (place: Vec3): Vec3 => [dot(minus(place, at), out), dot(minus(place, at), across), place[2]];
  return bodies.flatMap(({ body: { mesh: { positions, triangles }, pose }, box }): readonly Ring[] => {
    if (clipped([beside(box.min), beside(box.max)], half, from)) return [];
    const corners = Array.from({ length: positions.length / 3 }, (_, index) => beside(placed(pose, [positions[3 * index] ?? 0, positions[3 * index + 1] ?? 0, positions[3 * index + 2] ?? 0])));
    const corner = (index: number): Vec3 => corners[triangles[index] ?? 0] ?? at;
    const rings: Ring[] = [];
    for (let index = 0; index < triangles.length; index += 3) {
      const ring: Ring = [corner(index), corner(index + 1), corner(index + 2)];
      if (clipped(ring, half, from)) continue;
      const inside = sides.reduce(behind, ring);
      if (inside.length > 0) rings.push(inside);
    }
    return rings;
  });
}

/** Those faces as far as they lie in a narrower strip, or one that begins farther out. */
function narrowed(faces: Faces, half: number, from: number): Faces {
  const sides = sidesOf(half, from);
  return faces.map((ring) => sides.reduce(behind, ring)).filter((ring) => ring.length > 0);
}

const sidesOf = (half: number, from: number): readonly Plane[] => [[[0, 1, 0], half], [[0, -1, 0], half], [[-1, 0, 0], -from]];

/** Whether all places are beyond one side of a strip. */
const clipped = (places: Ring, half: number, from: number): boolean =>
  places.every(([out]) => out < from) || places.every(([, aside]) => aside < -half) || places.every(([, aside]) => aside > half);

/** Places p with `normal · p ≤ offset`. */
type Plane = readonly [normal: Vec3, offset: number];

/** What of a ring lies behind a plane (Sutherland and Hodgman's clip). */
function behind(ring: Ring, [normal, offset]: Plane): Ring {
  const over = (p: Vec3): number => dot(normal, p) - offset;
  if (ring.every((p) => over(p) <= 0)) return ring;
  return ring.flatMap((p, index): readonly Vec3[] => {
    const next = ring[(index + 1) % ring.length] ?? p;
    const [here, there] = [over(p), over(next)];
    const share = here / (here - there);
    const crossing: readonly Vec3[] = here > 0 !== there > 0 ? [[p[0] + share * (next[0] - p[0]), p[1] + share * (next[1] - p[1]), p[2] + share * (next[2] - p[2])]] : [];
    return here <= 0 ? [p, ...crossing] : crossing;
  });
}
