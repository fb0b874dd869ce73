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
export function reachBeside(bodies: Boxed, side: LegSide, half: number, [low, high]: readonly [number, number]): Reach {
  const outs = Array.from({ length: Math.max(0, Math.ceil((high - low) / PITCH)) }, () => -Infinity);
  for (const ring of facesIn(bodies, side, half, 0)) {
    const heights = ring.map(([, , up]) => (up - low) / PITCH);
    const [first, last] = [Math.max(0, Math.floor(Math.min(...heights))), Math.min(outs.length - 1, Math.floor(Math.max(...heights)))];
    for (let place = first; place <= last; place++) {
      const within = [[[0, 0, -1], -(low + PITCH * place)], [[0, 0, 1], low + PITCH * (place + 1)]] as const;
      const here = first === last ? ring : within.reduce<Ring>(behind, ring);
      outs[place] = here.reduce((most, [out]) => Math.max(most, out), outs[place] ?? -Infinity);
    }
  }
  return { from: low, pitch: PITCH, outs };
}

/** How high bodies reach between two distances out from a leg's axis, in a strip so far to both sides, mm; −∞ where there is nothing. */
export const highestBeside = (bodies: Boxed, side: LegSide, half: number, [from, to]: readonly [number, number]): number =>
  facesIn(bodies, side, half, from).map((ring) => behind(ring, [[1, 0, 0], to])).flat().reduce((most, [, , up]) => Math.max(most, up), -Infinity);

/** Corners by how far each is out from a leg's axis, aside of it, and up, mm. */
type Ring = readonly Vec3[];

/** The bodies' faces, each as far as it lies in a strip to both sides of a leg's axis and farther out than `from`. */
function facesIn(bodies: Boxed, { at, out }: LegSide, half: number, from: number): readonly Ring[] {
  const across = cross([0, 0, 1], out);
  const sides: readonly Plane[] = [[[0, 1, 0], half], [[0, -1, 0], half], [[-1, 0, 0], -from]];
  const beside = (place: Vec3): Vec3 => [dot(minus(place, at), out), dot(minus(place, at), across), place[2]];
  return bodies.flatMap(({ body: { mesh: { positions, triangles }, pose }, box }): readonly Ring[] => {
    if (clipped([beside(box.min), beside(box.max)], half, from)) return [];
    const corners = Array.from({ length: positions.length / 3 }, (_, index) => beside(placed(pose, [positions[3 * index] ?? 0, positions[3 * index + 1] ?? 0, positions[3 * index + 2] ?? 0])));
    const corner = (index: number): Ring => corners.slice(triangles[index], (triangles[index] ?? -1) + 1);
    return Array.from({ length: triangles.length / 3 }, (_, index): Ring => [...corner(3 * index), ...corner(3 * index + 1), ...corner(3 * index + 2)])
      .filter((ring) => !clipped(ring, half, from)).map((ring) => sides.reduce(behind, ring)).filter((ring) => ring.length > 0);
  });
}

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
