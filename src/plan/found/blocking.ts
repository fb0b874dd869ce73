import { times, type Vec3 } from '../../model/index.ts';
import { addBit, emptyBits, type Bits } from './bits.ts';
import { boxesApart, boxRound, staysOut, type Piece } from './convex.ts';
import type { Link } from './links.ts';
import { against, parallel, sameWay } from './vectors.ts';
import type { Unit, Units } from './units.ts';

/** What stands in the way of what, once and for all: whether one unit blocks another does not depend on the rest (Wilson and Latombe 1994). */
export interface Blocking {
  /** All ways that any link leaves free, and their opposites. */
  readonly ways: readonly Vec3[];
  /** By way, by unit that moves out of the item: those it would run into or that are held to it. */
  readonly out: readonly (readonly Bits[])[];
  /** By flat panel: what it would run into on the short way off its bars, by way. */
  readonly off: ReadonlyMap<number, readonly Bits[]>;
  /** By unit: what a pin or row of pins would run into on its own way out, its nut on the other. */
  readonly own: readonly (Bits | null)[];
}

/** A short way takes a part out of its socket or off what it lies on, mm. */
export const SHORT = 120;

/** Works out who blocks whom, for every unit and every way. */
export function blockingOf(units: Units, links: readonly Link[]): Blocking {
  const ways = waysOf(links);
  const far = farOf(units.all);
  const linked = linkTable(units.all.length, links);
  return {
    ways,
    out: tablesFor(units.all, ways, far, linked),
    off: new Map(units.all.filter((unit) => isLaid(unit, links)).map((unit) => [unit.index, offBars(units.all, unit, ways, linked)])),
    own: units.all.map((unit) => ownWay(units.all, unit, linked)),
  };
}

/** Every free way and its opposite, each once; a way and its opposite stand side by side, those across first, those up last. */
function waysOf(links: readonly Link[]): readonly Vec3[] {
  const lines: Vec3[] = [];
  for (const way of links.flatMap(({ free }) => free)) {
    if (!lines.some((known) => parallel(known, way))) lines.push(isForwards(way) ? way : against(way));
  }
  return lines.sort((a, b) => b[0] - a[0] || b[1] - a[1] || b[2] - a[2]).flatMap((way) => [way, against(way)]);
}

const isForwards = ([x, y, z]: Vec3): boolean => x > 0 || (x === 0 && (y > 0 || (y === 0 && z > 0)));

export const oppositeWay = (way: number): number => way ^ 1;

/** Out of everything: as long as the item and half as much, mm. */
function farOf(units: readonly Unit[]): number {
  const pieces = units.flatMap(({ pieces: own }) => own);
  const span = [0, 1, 2].map((axis) => Math.max(...pieces.map(({ max }) => max[axis] ?? 0)) - Math.min(...pieces.map(({ min }) => min[axis] ?? 0)));
  return 1.5 * Math.hypot(...span);
}

type Linked = readonly (readonly (readonly Link[])[])[];

/** The links between each two units, from either's side. */
function linkTable(count: number, links: readonly Link[]): Linked {
  const table: Link[][][] = Array.from({ length: count }, () => []);
  for (const link of links) {
    for (const [one, other] of [[link.a, link.b], [link.b, link.a]] as const) {
      const row = table[one];
      if (row !== undefined) row[other] = [...(row[other] ?? []), link];
    }
  }
  return table;
}

function tablesFor(units: readonly Unit[], ways: readonly Vec3[], distance: number, linked: Linked): readonly (readonly Bits[])[] {
  const tables = ways.map(() => units.map(() => emptyBits(units.length)));
  const rooms = units.map((unit) => boxRound(bodies(unit)));
  ways.forEach((way, index) => {
    if (index % 2 === 1) return;
    const forth = tables[index] ?? [];
    const back = tables[index + 1] ?? [];
    for (const mover of units) {
      for (const other of units) {
        if (mover === other || !blocks(mover, other, way, distance, linked, rooms)) continue;
        addBit(forth[mover.index] ?? emptyBits(0), other.index);
        addBit(back[other.index] ?? emptyBits(0), mover.index);
      }
    }
  });
  return tables;
}

/** A panel that lies on bars and is not wrapped round any. */
const isLaid = ({ index }: Unit, links: readonly Link[]): boolean =>
  links.some(({ is, a }) => is === 'lay' && a === index) && !links.some(({ is, b }) => is === 'crease' && b === index);

function offBars(units: readonly Unit[], panel: Unit, ways: readonly Vec3[], linked: Linked): readonly Bits[] {
  const rooms = units.map((unit) => boxRound(bodies(unit)));
  return ways.map((way) => {
    const blockers = emptyBits(units.length);
    for (const other of units) if (other !== panel && blocks(panel, other, way, SHORT, linked, rooms)) addBit(blockers, other.index);
    return blockers;
  });
}

/** The two lives of one flap never meet. */
const oneFlap = (one: Unit, other: Unit): boolean =>
  'flap' in one && 'flap' in other && one.is !== 'row' && other.is !== 'row' && one.panel === other.panel && one.flap === other.flap;

function blocks(mover: Unit, other: Unit, way: Vec3, distance: number, linked: Linked, rooms: readonly Piece[]): boolean {
  if (oneFlap(mover, other)) return false;
  const between = linked[mover.index]?.[other.index] ?? [];
  if (between.length > 0) return !between.every((link) => leavesAlong(link, mover.index, way));
  const travel = times(way, distance);
  const [own, its] = [rooms[mover.index], rooms[other.index]];
  return own !== undefined && its !== undefined && !boxesApart(own, travel, its) && runsInto(bodies(mover), travel, bodies(other));
}

/** Whether a link lets one of its units go that way. */
export const leavesAlong = (link: Link, mover: number, way: Vec3): boolean =>
  link.free.some((free) => sameWay(link.a === mover ? free : against(free), way));

const bodies = (unit: Unit): readonly Piece[] => (unit.nut.length === 0 ? unit.pieces : [...unit.pieces, ...unit.nut]);

const runsInto = (movers: readonly Piece[], way: Vec3, others: readonly Piece[]): boolean =>
  movers.some((mover) => others.some((other) => !staysOut(mover, way, other)));

/** A pin goes its own way, its nut the other, a short way by hand; what it holds has its hole. */
function ownWay(units: readonly Unit[], unit: Unit, linked: Linked): Bits | null {
  if (unit.is !== 'fastener' && unit.is !== 'row') return null;
  const out = unit.is === 'fastener' ? unit.connection.out : unit.out;
  const blockers = emptyBits(units.length);
  for (const other of units) {
    if (other === unit || linked[unit.index]?.[other.index] !== undefined || isUnfolded(unit, other)) continue;
    if (runsInto(unit.pieces, times(out, SHORT), bodies(other)) || runsInto(unit.nut, times(out, -SHORT), bodies(other))) addBit(blockers, other.index);
  }
  return blockers;
}

/** A row of pins goes through its flap once that is folded; while it is flat there is no such row. */
const isUnfolded = (row: Unit, other: Unit): boolean =>
  row.is === 'row' && other.is === 'flat' && other.panel === row.panel && other.flap.name === row.flap;
