import { chained, dot, undone, type Pose, type Vec3 } from '../../model/index.ts';
import { addBit, emptyBits, type Bits } from './bits.ts';
import { boxRound, pieceAt, reachOf, staysOut, type Piece } from './convex.ts';
import type { FlapForm } from './flap-forms.ts';
import { seenFrom } from './pieces.ts';
import { against, carried, turnedBy } from './vectors.ts';
import type { Unit, Units } from './units.ts';

const STILL: Vec3 = [0, 0, 0];

type FlapUnit = Extract<Unit, { is: 'folded' | 'flat' }>;

/** The way of a flap from flat to home, told without gaps as its panel would stand: hulls of each facet over small turns, and all of it in a box. */
export interface FoldWay {
  readonly hulls: readonly Piece[];
  readonly whole: Piece;
}

/** The ways of all flaps in their panels' coordinates, worked out once for each pattern. */
export type FoldWays = ReadonlyMap<FlapForm, FoldWay>;

export function foldWays(units: Units): FoldWays {
  const ways = new Map<FlapForm, FoldWay>();
  for (const unit of units.all) {
    if (unit.is !== 'folded' || ways.has(unit.flap)) continue;
    const own = units.flaps.get(unit.panel) ?? [];
    const opposite = own.find((flap) => ways.has(flap) && OPPOSITE[flap.side] === unit.flap.side && flap.family === unit.flap.family);
    const known = opposite === undefined ? undefined : ways.get(opposite);
    ways.set(unit.flap, known === undefined ? foldWay(unit.flap) : turnedRound(known));
  }
  return ways;
}

const OPPOSITE = { left: 'right', right: 'left', front: 'back', back: 'front' } as const;

const turnedRound = ({ hulls, whole }: FoldWay): FoldWay => ({ hulls: hulls.map(halfTurned), whole: halfTurned(whole) });

function halfTurned({ points, normals, min, max }: Piece): Piece {
  return {
    points: points.map((value, index) => (index % 3 === 2 ? value : -value)), normals: normals.map(([x, y, z]): Vec3 => [-x, -y, z]),
    min: [-max[0], -max[1], min[2]], max: [-min[0], -min[1], max[2]],
  };
}

/** The way of one flap. Throws when the flap is of no panel of these units. */
export function wayOf(ways: FoldWays, folded: FlapUnit): FoldWay {
  const way = ways.get(folded.flap);
  if (way === undefined) throw new RangeError(`the flap ${folded.flap.name} belongs to no panel`);
  return way;
}

/** The way of a flap in its panel's coordinates. */
export function foldWay(flap: FlapForm): FoldWay {
  const places = flap.stages.map((stage) => flap.piecesAt(stage));
  const hulls = places.slice(1).flatMap((facets, index) => facets.flatMap((facet, at) => hullBetween(places[index]?.[at], facet)));
  return { hulls, whole: boxRound(hulls) };
}

/** A facet that lies still between two stages takes no room of its own but at its place. */
export function hullBetween(before: Piece | undefined, after: Piece): readonly Piece[] {
  if (before === undefined || before === after || after.points.every((value, index) => Math.abs(value - (before.points[index] ?? 0)) < 1e-9)) return [];
  const points = new Float64Array(before.points.length + after.points.length);
  points.set(before.points);
  points.set(after.points, before.points.length);
  return [pieceAt(points, [...before.normals, ...after.normals])];
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
    const key = `${folding.look} ${folding.flap.name} ${other.look} ${other.is} ${placeKey(units, back, other)}`;
    const met = known.get(key) ?? foldMeets(way, bodies.map((piece) => seenFrom(back, piece)));
    known.set(key, met);
    if (met) addBit(blockers, other.index);
  }
  return blockers;
}

/** The flap itself, what it hangs on, and the pins that come after it. */
const isOfPanelItself = (folding: FlapUnit, other: Unit): boolean =>
  other.parts[0] === folding.panel && (other.is === 'part' || other.is === 'folded' || other.is === 'flat') && (other.is === 'part' || other.flap === folding.flap)
  || (other.is === 'row' && other.panel === folding.panel && other.flap === folding.flap.name);

/** How a unit stands to a panel. */
function placeKey(units: Units, back: Pose, other: Unit): string {
  const pose = units.parts.get(other.parts[0] ?? '')?.pose ?? [];
  const side = other.is === 'row' ? other.flap : other.is === 'folded' || other.is === 'flat' ? other.flap.name : '';
  return side + chained(back, pose).map((value) => Math.round(value * 1000)).join(' ');
}

/** The lowest that a flap comes on its way, its panel standing in a pose, seen with a direction up, mm along it. */
export function lowestOnWay(way: FoldWay, pose: Pose, up: Vec3): number {
  const down = against(turnedBy(undone(pose), up));
  return dot(carried(pose, 0, 0, 0), up) - Math.max(...way.hulls.map(({ points }) => reachOf(points, down)));
}
