import { times, type Vec3 } from '../../model/index.ts';
import { hasBit, type Bits } from './bits.ts';
import { SHORT } from './blocking.ts';
import { boxRound, pieceOf, staysOut, type Piece } from './convex.ts';
import type { Ground } from './ground.ts';
import type { Link } from './links.ts';
import { against, axisOf } from './vectors.ts';
import type { Unit } from './units.ts';

/** How far a part would have to be set aside, and which way. */
export interface Room {
  readonly way: Vec3;
  /** Whole mm. */
  readonly distance: number;
}

/** Nothing is looked for farther away, mm. */
const FARTHEST = 150;

const STILL: Vec3 = [0, 0, 0];

/** Where a fitting on a bar would let another part by, or come off itself: the shortest way along its bar, or null. */
export function roomBeside(ground: Ground, set: Bits, mover: Unit, past: Unit): Room | null {
  const link = (ground.linksAt[past.index] ?? []).find(({ is, a }) => is === 'bracket' && a === past.index);
  const bar = link === undefined ? undefined : ground.units.all[link.b];
  if (link === undefined || bar === undefined) return null;
  const others = ground.units.all.filter((unit) => hasBit(set, unit.index) && unit !== past && unit !== bar);
  const along = barAlong(ground, bar);
  for (let distance = 1; distance <= FARTHEST; distance++) {
    for (const way of [along, against(along)]) {
      const pieces = past.pieces.map((piece) => shifted(piece, times(way, distance)));
      if (isOnBar(pieces, bar) && comesOff(pieces, link, others) && others.includes(mover)) return { way, distance };
    }
  }
  return null;
}

const barAlong = (ground: Ground, bar: Unit): Vec3 => axisOf(ground.units.parts.get(bar.parts[0] ?? '')?.pose ?? [], 0);

/** All of it is still on its bar. */
const isOnBar = (pieces: readonly Piece[], bar: Unit): boolean => {
  const [own, its] = [boxRound(pieces), boxRound(bar.pieces)];
  return [0, 1, 2].every((axis) => ((own.min[axis] ?? 0) >= (its.min[axis] ?? 0) && (own.max[axis] ?? 0) <= (its.max[axis] ?? 0)) || !isLongest(its, axis));
};

const isLongest = ({ min, max }: Piece, axis: number): boolean =>
  [0, 1, 2].every((other) => (max[other] ?? 0) - (min[other] ?? 0) <= (max[axis] ?? 0) - (min[axis] ?? 0));

/** Whether it comes off the bar the way that its link leaves it, past all others. */
const comesOff = (pieces: readonly Piece[], link: Link, others: readonly Unit[]): boolean => link.free.some((way) =>
  others.every((other) => [...other.pieces, ...other.nut].every((standing) => pieces.every((piece) => staysOut(piece, STILL, standing) && staysOut(piece, times(way, SHORT), standing)))));

function shifted({ points, normals }: Piece, by: Vec3): Piece {
  const places: Vec3[] = [];
  for (let at = 0; at < points.length; at += 3) places.push([(points[at] ?? 0) + by[0], (points[at + 1] ?? 0) + by[1], (points[at + 2] ?? 0) + by[2]]);
  return pieceOf(places, normals);
}
