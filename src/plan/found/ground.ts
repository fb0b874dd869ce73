import { cross, dot, unit as unitVector, type Connection, type Vec3 } from '../../model/index.ts';
import { addBit, countOf, emptyBits, hasBit, without, type Bits } from './bits.ts';
import { boxesIn, type Box } from './boxes.ts';
import { blockingOf, oppositeWay, type Blocking } from './blocking.ts';
import { reachOf } from './convex.ts';
import { foldBlocking, foldWays, lowestOnWay, wayOf, type FoldWay, type FoldWays } from './folding.ts';
import { linksOf, type Link } from './links.ts';
import { unitsOf, type Unit, type Units } from './units.ts';
import type { Model, Solids } from '../../model/index.ts';

type Folded = Extract<Unit, { is: 'folded' | 'flat' }>;

/** A flap with all that belongs to it. */
export interface FlapFacts {
  readonly panel: number;
  readonly folded: Folded;
  readonly flat: number;
  /** Its pins, where it has any. */
  readonly row: number | null;
  readonly rowBits: Bits;
  /** Length of its side, mm. */
  readonly length: number;
  /** The direction of its bar. */
  readonly along: Vec3;
  readonly way: FoldWay;
  /** By way, seen as a direction up: the lowest that it comes while it is folded, mm. */
  readonly lows: readonly number[];
}

/** A flap round its bar. */
interface Wrapping {
  readonly a: number;
  readonly b: number;
  readonly flap: FlapFacts;
}

/** How a body stands on its lowest places: whether without falling over, and how far its centre of mass lies beside them, mm. */
export interface Balance {
  readonly steady: boolean;
  readonly beside: number;
}

/** All that is worked out once for an item, before any order is looked for. */
export interface Ground {
  readonly size: number;
  readonly units: Units;
  readonly links: readonly Link[];
  /** By unit: its links. */
  readonly linksAt: readonly (readonly Link[])[];
  /** By unit: those it is linked with. */
  readonly near: readonly Bits[];
  /** The same by links that hold whatever else is there; and by unit its wraps, which hold while their flap is pinned. */
  readonly firmNear: readonly Bits[];
  readonly wrapsAt: readonly (readonly Wrapping[])[];
  readonly blocking: Blocking;
  /** By way, seen as a direction up: the height of each unit's lowest place, mm. */
  readonly lows: readonly Float64Array[];
  readonly flaps: readonly FlapFacts[];
  /** Panels that are folded to boxes before they are hung. */
  readonly boxes: readonly Box[];
  readonly foldBlocks: ReadonlyMap<number, Bits>;
  /** Those that are hooked on. */
  readonly cables: Bits;
  /** The flat lives of flaps: no units of their own beside their panel. */
  readonly flats: Bits;
  /** The finished item: all units but the flat lives of folded flaps. */
  readonly finished: Bits;
  /** By look: how many units of the finished item look so. */
  readonly finishedLooks: Int32Array;
  /** By unit, kg; and where its mass is, taken to be in the middles of its bodies' boxes. */
  readonly mass: Float64Array;
  readonly middles: readonly Vec3[];
  /** By way: how far along it each unit's bodies have their middles at most, mm. */
  readonly places: readonly Float64Array[];
  /** By way, seen as a direction up, and unit: its corners as they lie, east, north and height by turns, mm. */
  readonly corners: readonly (readonly Float64Array[])[];
  /** What was asked before: how a body stands in a pose. */
  readonly balances: Map<string, Balance>;
}

export function groundOf(model: Pick<Model, 'parts'>, connections: readonly Connection[], solids: Solids): Ground {
  const units = unitsOf(model, connections, solids);
  const links = linksOf(units, connections);
  const size = units.all.length;
  const linksAt = units.all.map(({ index }) => links.filter(({ a, b }) => a === index || b === index));
  const nearBy = (counts: (link: Link) => boolean): readonly Bits[] => linksAt.map((own, index) => bitsFrom(size, own.filter(counts).map(({ a, b }) => (a === index ? b : a))));
  const blocking = blockingOf(units, links);
  const ways = foldWays(units);
  const flaps = flapsOf(units, links, ways, blocking.ways);
  const wraps = (own: readonly Link[]): readonly Wrapping[] => own.filter(({ is }) => is === 'wrap')
    .flatMap(({ a, b }) => flaps.filter(({ folded }) => folded.index === a).map((flap) => ({ a, b, flap })));
  return {
    size, units, links, linksAt, near: nearBy(() => true), firmNear: nearBy(({ is, firm }) => is !== 'wrap' && firm), wrapsAt: linksAt.map(wraps), blocking,
    lows: blocking.ways.map((up) => Float64Array.from(units.all, (unit) => lowOf(unit, up))),
    flaps,
    boxes: boxesIn(units, connections),
    foldBlocks: foldBlocking(units, ways),
    cables: bitsFrom(size, links.filter(({ is }) => is === 'hook').map(({ a }) => a)),
    flats: bitsFrom(size, units.all.filter(({ is }) => is === 'flat').map(({ index }) => index)),
    finished: bitsFrom(size, units.all.filter(({ is }) => is !== 'flat').map(({ index }) => index)),
    finishedLooks: looksOf(units.all.filter(({ is }) => is !== 'flat'), size),
    mass: Float64Array.from(units.all, ({ mass }) => mass),
    middles: units.all.map(middleOf),
    corners: blocking.ways.map((up) => units.all.map((unit) => cornersOf(unit, up))),
    balances: new Map(),
    places: blocking.ways.map((way) => Float64Array.from(units.all, (unit) => placeAlong(unit, way))),
  };
}

function bitsFrom(size: number, indices: readonly number[]): Bits {
  const set = emptyBits(size);
  indices.forEach((index) => addBit(set, index));
  return set;
}

function looksOf(units: readonly Unit[], size: number): Int32Array {
  const counts = new Int32Array(size);
  for (const { look } of units) counts[look] = (counts[look] ?? 0) + 1;
  return counts;
}

function middleOf({ pieces }: Unit): Vec3 {
  const share = 1 / Math.max(1, pieces.length);
  return pieces.reduce<Vec3>((sum, { min, max }) => [
    sum[0] + (share * (min[0] + max[0])) / 2, sum[1] + (share * (min[1] + max[1])) / 2, sum[2] + (share * (min[2] + max[2])) / 2,
  ], [0, 0, 0]);
}

const lowOf = ({ pieces }: Unit, [x, y, z]: Vec3): number => Math.min(...pieces.map(({ points }) => -reachOf(points, [-x, -y, -z])));

/** Two level directions square to each other, with a direction up. */
export function levelled(up: Vec3): readonly [Vec3, Vec3] {
  const east = unitVector(cross(up, Math.abs(up[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0]));
  return [east, cross(up, east)];
}

const placeAlong = ({ pieces }: Unit, way: Vec3): number =>
  Math.max(...pieces.map(({ min, max }) => dot([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2], way)));

function cornersOf({ pieces }: Unit, up: Vec3): Float64Array {
  const [east, north] = levelled(up);
  const corners = new Float64Array(pieces.reduce((sum, { points }) => sum + points.length, 0));
  let to = 0;
  for (const { points } of pieces) {
    for (let at = 0; at < points.length; at += 3) {
      const point: Vec3 = [points[at] ?? 0, points[at + 1] ?? 0, points[at + 2] ?? 0];
      for (const way of [east, north, up]) corners[to++] = dot(point, way);
    }
  }
  return corners;
}

/** Height of the lowest place of a set, with the direction up that a way's number tells, mm. */
export function floorOf(ground: Ground, set: Bits, up: number): number {
  const lows = ground.lows[up] ?? new Float64Array();
  let low = Infinity;
  for (let at = 0; at < set.length; at++) {
    for (let word = set[at] ?? 0; word !== 0; word &= word - 1) low = Math.min(low, lows[at * 32 + 31 - Math.clz32(word & -word)] ?? Infinity);
  }
  return low;
}

/** How tall a set stands, mm. */
export const heightOf = (ground: Ground, set: Bits, up: number): number => -floorOf(ground, set, oppositeWay(up)) - floorOf(ground, set, up);

function flapsOf(units: Units, links: readonly Link[], ways: FoldWays, ups: readonly Vec3[]): readonly FlapFacts[] {
  return units.all.filter((unit): unit is Folded => unit.is === 'folded').flatMap((folded): readonly FlapFacts[] => {
    const panel = units.parts.get(folded.panel);
    const flat = units.all.find((unit) => unit.is === 'flat' && unit.panel === folded.panel && unit.flap === folded.flap);
    const base = units.of.get(folded.panel);
    if (panel === undefined || flat === undefined || base === undefined) return [];
    const row = units.all.find((unit) => unit.is === 'row' && unit.panel === folded.panel && unit.flap === folded.flap.name)?.index ?? null;
    const wrap = links.find((link) => link.is === 'wrap' && link.a === folded.index);
    return [{
      panel: base.index, folded, flat: flat.index, row, rowBits: bitsFrom(units.all.length, row === null ? [] : [row]),
      length: folded.flap.to - folded.flap.from, along: wrap?.free[0] ?? [1, 0, 0],
      way: wayOf(ways, folded), lows: ups.map((up) => lowestOnWay(wayOf(ways, folded), panel.pose, up)),
    }];
  });
}

/** A wrapped flap holds by itself once it is pinned. */
const isPinned = ({ row }: FlapFacts, set: Bits): boolean => row === null || hasBit(set, row);

/** The parts of a set that hang together, by all its links or by those that hold; each part once, in order of its first unit. */
export function piecesIn(ground: Ground, set: Bits, holding: boolean): readonly Bits[] {
  const left = set.slice();
  const found: Bits[] = [];
  for (let word = 0; word < left.length; word++) {
    for (let bits = left[word] ?? 0; bits !== 0; bits = left[word] ?? 0) {
      const piece = grown(ground, set, word * 32 + 31 - Math.clz32(bits & -bits), holding);
      for (let at = 0; at < left.length; at++) left[at] = (left[at] ?? 0) & ~(piece[at] ?? 0);
      found.push(piece);
    }
  }
  return found;
}

function grown(ground: Ground, set: Bits, first: number, holding: boolean): Bits {
  const near = holding ? ground.firmNear : ground.near;
  const piece = emptyBits(ground.size);
  addBit(piece, first);
  const waiting = [first];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const neighbours = near[at] ?? piece;
    for (let word = 0; word < piece.length; word++) {
      let fresh = (neighbours[word] ?? 0) & (set[word] ?? 0) & ~(piece[word] ?? 0);
      piece[word] = (piece[word] ?? 0) | fresh;
      for (; fresh !== 0; fresh &= fresh - 1) waiting.push(word * 32 + 31 - Math.clz32(fresh & -fresh));
    }
    if (!holding) continue;
    for (const { a, b, flap } of ground.wrapsAt[at] ?? []) {
      const other = a === at ? b : a;
      if (!hasBit(set, other) || hasBit(piece, other) || !isPinned(flap, set)) continue;
      addBit(piece, other);
      waiting.push(other);
    }
  }
  return piece;
}

/** Whether a set is one raw part: a single unit, or a panel that lies flat. */
export const isRaw = (ground: Ground, set: Bits): boolean => countOf(without(set, ground.flats)) < 2;
