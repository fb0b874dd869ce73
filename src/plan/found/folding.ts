import { chained, standstill, undone, type Flap, type FlatPattern, type Pose, type Vec3 } from '../../model/index.ts';
import { addBit, emptyBits, type Bits } from './bits.ts';
import { pieceOf, reachOf, staysOut, type Piece } from './convex.ts';
import { flapPieces } from './flaps.ts';
import { against, carried, dot, minus } from './vectors.ts';
import type { Unit, Units } from './units.ts';

/** A facet between two stages bulges out of the hull of both by no more than this, mm: well under what counts as a touch. */
const BULGE = 0.2;
const STILL: Vec3 = [0, 0, 0];

type FlapUnit = Extract<Unit, { is: 'folded' | 'flat' }>;

/** The way of a flap from flat to home, told without gaps as its panel would stand: hulls of each facet over small turns, and all of it in a box. */
export interface FoldWay {
  readonly hulls: readonly Piece[];
  readonly whole: Piece;
}

/** The ways of all flaps in their panels' coordinates, worked out once for each pattern. */
export type FoldWays = ReadonlyMap<Flap, FoldWay>;

export function foldWays(units: Units): FoldWays {
  const ways = new Map<Flap, FoldWay>();
  for (const unit of units.all) {
    const shape = unit.is === 'folded' ? units.parts.get(unit.panel)?.shape : undefined;
    if (unit.is !== 'folded' || shape?.form !== 'panel' || ways.has(unit.flap)) continue;
    const { pattern } = shape;
    const opposite = [...ways].find(([flap]) => isOpposite(pattern, flap, unit.flap));
    ways.set(unit.flap, opposite === undefined ? foldWay(pattern, unit.flap) : turnedRound(opposite[1]));
  }
  return ways;
}

/** A pattern looks the same turned by half: opposite flaps of one length fold alike. */
const isOpposite = ({ flaps }: FlatPattern, one: Flap, other: Flap): boolean =>
  flaps.includes(one) && OPPOSITE[one.side] === other.side && one.from === other.from && one.to === other.to;

const OPPOSITE = { left: 'right', right: 'left', front: 'back', back: 'front' } as const;

const turnedRound = ({ hulls, whole }: FoldWay): FoldWay => ({ hulls: hulls.map(halfTurned), whole: halfTurned(whole) });

function halfTurned({ points, normals, least, most }: Piece): Piece {
  return {
    points: points.map((value, index) => (index % 3 === 2 ? value : -value)), normals: normals.map(([x, y, z]): Vec3 => [-x, -y, z]),
    least: [-most[0], -most[1], least[2]], most: [-least[0], -least[1], most[2]],
  };
}

/** The way of one flap. Throws when the flap is of no panel of these units. */
export function wayOf(ways: FoldWays, folded: FlapUnit): FoldWay {
  const way = ways.get(folded.flap);
  if (way === undefined) throw new RangeError(`the flap ${folded.flap.side} belongs to no panel`);
  return way;
}

/** The way of a flap in its panel's coordinates. */
export function foldWay(pattern: FlatPattern, flap: Flap): FoldWay {
  const places = stagesOf(flap).map((stage) => flapPieces(pattern, flap, standstill, stage));
  const hulls = places.slice(1).flatMap((facets, index) => facets.flatMap((facet, at) => hullOf(places[index]?.[at], facet)));
  return { hulls, whole: pieceOf(hulls.flatMap(({ least, most }) => [least, most]), [[1, 0, 0], [0, 1, 0], [0, 0, 1]]) };
}

/** Each crease in turn, in steps so small that no facet bulges; the last half-cut and the last crease too. */
function stagesOf(flap: Flap): readonly number[] {
  const moves = flap.creases.length + 1;
  const farthest = flap.edge - (flap.creases[0] ?? 0);
  const step = 2 * Math.acos(1 - BULGE / farthest);
  const steps = moves * Math.ceil(Math.max(flap.creaseAngle, flap.turnBack) / step);
  return Array.from({ length: steps + 1 }, (_, index) => index / steps);
}

/** A facet that lies still between two stages takes no room of its own but at its place. */
function hullOf(before: Piece | undefined, after: Piece): readonly Piece[] {
  if (before === undefined || after.points.every((value, index) => Math.abs(value - (before.points[index] ?? 0)) < 1e-9)) return [];
  const points: Vec3[] = [];
  for (const { points: own } of [before, after]) {
    for (let at = 0; at < own.length; at += 3) points.push([own[at] ?? 0, own[at + 1] ?? 0, own[at + 2] ?? 0]);
  }
  return [pieceOf(points, [...before.normals, ...after.normals])];
}

/** Whether bodies that stand in the panel's coordinates are in a flap's way. */
export const foldMeets = (way: FoldWay, others: readonly Piece[]): boolean => others.some((other) =>
  !staysOut(way.whole, STILL, other) && way.hulls.some((hull) => !staysOut(hull, STILL, other)));

/** By flap unit that is folded: those that its way from flat to home would run into. */
export function foldBlocking(units: Units, ways: FoldWays): ReadonlyMap<number, Bits> {
  const known = new Map<string, boolean>();
  return new Map(units.all.filter((unit): unit is FlapUnit => unit.is === 'folded').map((unit) => [unit.index, blockersOf(units, unit, wayOf(ways, unit), known)]));
}

function blockersOf(units: Units, folding: FlapUnit, way: FoldWay, known: Map<string, boolean>): Bits {
  const blockers = emptyBits(units.all.length);
  const panel = units.parts.get(folding.panel);
  if (panel === undefined) return blockers;
  const back = undone(panel.pose);
  const room = seenFrom(panel.pose, way.whole);
  for (const other of units.all) {
    const bodies = [...other.pieces, ...other.nut];
    if (isOfPanelItself(folding, other) || bodies.every((piece) => staysOut(room, STILL, piece))) continue;
    const key = `${folding.look} ${folding.flap.side} ${other.look} ${other.is} ${placeKey(units, back, other)}`;
    const met = known.get(key) ?? foldMeets(way, bodies.map((piece) => seenFrom(back, piece)));
    known.set(key, met);
    if (met) addBit(blockers, other.index);
  }
  return blockers;
}

/** A body carried by a pose. */
export function seenFrom(pose: Pose, { points, normals }: Piece): Piece {
  const places: Vec3[] = [];
  for (let at = 0; at < points.length; at += 3) places.push(carried(pose, points[at] ?? 0, points[at + 1] ?? 0, points[at + 2] ?? 0));
  return pieceOf(places, normals.map((normal) => turnedBy(pose, normal)));
}

const turnedBy = (pose: Pose, [x, y, z]: Vec3): Vec3 => minus(carried(pose, x, y, z), carried(pose, 0, 0, 0));

/** The flap itself, what it hangs on, and the pins that come after it. */
const isOfPanelItself = (folding: FlapUnit, other: Unit): boolean =>
  other.parts[0] === folding.panel && (other.is === 'part' || other.is === 'folded' || other.is === 'flat') && (other.is === 'part' || other.flap === folding.flap)
  || (other.is === 'row' && other.panel === folding.panel && other.flap === folding.flap.side);

/** How a unit stands to a panel. */
function placeKey(units: Units, back: Pose, other: Unit): string {
  const pose = units.parts.get(other.parts[0] ?? '')?.pose ?? [];
  const side = other.is === 'row' ? other.flap + other.row : other.is === 'folded' || other.is === 'flat' ? other.flap.side : '';
  return side + chained(back, pose).map((value) => Math.round(value * 1000)).join(' ');
}

/** The lowest that a flap comes on its way, its panel standing in a pose, seen with a direction up, mm along it. */
export function lowestOnWay(way: FoldWay, pose: Pose, up: Vec3): number {
  const down = against(turnedBy(undone(pose), up));
  return dot(carried(pose, 0, 0, 0), up) - Math.max(...way.hulls.map(({ points }) => reachOf(points, down)));
}
