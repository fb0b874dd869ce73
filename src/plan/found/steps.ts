import { dot, times as stretched, type Shape, type Side, type Vec3 } from '../../model/index.ts';
import { hasBit, indicesOf, without, type Bits } from './bits.ts';
import type { Cut, Leaving } from './cuts.ts';
import { SHORT } from './blocking.ts';
import { isFlatPanel } from './pieces.ts';
import { isRaw, type Ground } from './ground.ts';
import type { Unit } from './units.ts';
import type { Building } from './line.ts';
import type { Link } from './links.ts';
import { poseFor, turnBetween } from './poses.ts';
import type { Doing, Fold, FoldedFlap, FoundStep, Move } from './types.ts';
import { against } from './vectors.ts';

/** A step before it has its number, its name and its batch. */
export type Draft = Omit<FoundStep, 'number' | 'key' | 'batch' | 'times' | 'drilled'>;

type Row = Extract<Unit, { is: 'row' }>;

/** Travel beyond a socket's depth or past the work that takes a part clear, mm. */
const CLEAR = 60;
const PIN_TRAVEL = 90;
const FRAME_LIFT = 260;

/** The steps of one piece of building: most have one, a pin has its hole drilled first. */
export function draftsOf(ground: Ground, building: Building): readonly Draft[] {
  if (building.is === 'turn') return [turnDraft(ground, building)];
  const { cut } = building;
  const common = commonOf(ground, building);
  const moves = [...cut.leaving].reverse().flatMap((leaving) => movesOf(ground, cut, leaving));
  const draft: Draft = { ...common, does: doingOf(ground, cut), moves, newParts: newPartsOf(ground, building), side: sideOf(ground, cut) };
  switch (cut.kind) {
    case 'unfold': return [{ ...draft, moves: [], folds: foldOf(cut) }];
    case 'unpin': return drilledFirst(ground, cut, draft);
    case 'unrow': return punchedFirst(ground, cut, draft);
    default: return [draft];
  }
}

function commonOf(ground: Ground, building: Extract<Building, { is: 'cut' }>): Omit<Draft, 'does' | 'moves' | 'newParts' | 'side'> {
  const { cut, hands, costs } = building;
  const up = wayAt(ground, building.up);
  const parts = (set: Bits): readonly string[] => partsIn(ground, set);
  return {
    folds: [], turns: null, present: presentOf(ground, building), folded: foldedIn(ground, cut.restBits), foldedAfter: foldedIn(ground, building.set), works: [], drillsFor: [],
    up, pose: poseFor(up), onBench: false, letter: null, people: hands.people, held: hands.held.map(({ set }) => parts(set)), props: hands.propped.map(({ set }) => parts(set)), inHand: hands.inHand.map(({ set }) => parts(set)), costs,
  };
}

const wayAt = (ground: Ground, index: number): Vec3 => ground.blocking.ways[index] ?? [0, 0, 1];

/** The ids of the parts in a set, in the order of the model; a flap is no part. */
export function partsIn(ground: Ground, set: Bits): readonly string[] {
  const ids = new Set(indicesOf(without(set, ground.flats)).flatMap((index) => {
    const unit = ground.units.all[index];
    return unit === undefined || unit.is === 'folded' ? [] : unit.parts;
  }));
  return [...ground.units.parts.keys()].filter((id) => ids.has(id));
}

/** Flaps that are home, and the walls and corner tabs of boxes. */
function foldedIn(ground: Ground, set: Bits): readonly FoldedFlap[] {
  const home = ground.flaps.filter(({ folded }) => hasBit(set, folded.index)).map(({ folded }): FoldedFlap => ({ panel: folded.panel, flap: folded.flap.name, stage: 1 }));
  const boxes = ground.boxes.filter(({ unit }) => hasBit(set, unit)).flatMap(({ folded }) => folded);
  return [...home, ...boxes.filter((one) => !home.some(({ panel, flap }) => panel === one.panel && flap === one.flap))];
}

const foldOf = ({ flap }: Cut): readonly Fold[] =>
  (flap === null ? [] : [{ panel: flap.folded.panel, flap: flap.folded.flap.name, from: flap.folded.flap.raised, to: 1 }]);

/** What was there before the step: the rest, but for raw parts that come with it. */
function presentOf(ground: Ground, { cut }: Extract<Building, { is: 'cut' }>): readonly string[] {
  return cut.rest.filter((piece) => !isNew(ground, piece)).flatMap((piece) => partsIn(ground, piece));
}

/** Comes to hand as a raw part; a box was folded before. */
const isNew = (ground: Ground, piece: Bits): boolean => isRaw(ground, piece) && !ground.boxes.some(({ unit }) => hasBit(piece, unit));

/** Raw parts that come to hand: those that move, and those that what moves is put on. */
function newPartsOf(ground: Ground, { cut }: Extract<Building, { is: 'cut' }>): readonly string[] {
  const raw = [...cut.rest, ...cut.leaving.map(({ set }) => set)].filter((piece) => isNew(ground, piece));
  return cut.kind === 'unfold' ? [] : raw.flatMap((piece) => partsIn(ground, piece));
}

/** A pin and its nut go opposite ways; all else in one piece. */
function movesOf(ground: Ground, cut: Cut, leaving: Leaving): readonly Move[] {
  const [first = 0] = indicesOf(leaving.set);
  const unit = ground.units.all[first];
  const closes = closedBy(cut.undoes.filter(({ a, b }) => hasBit(leaving.set, a) || hasBit(leaving.set, b)));
  if (unit?.is === 'fastener') {
    const [pin = '', nut = ''] = unit.parts;
    return [
      { parts: [pin], by: stretched(against(leaving.way), PIN_TRAVEL), closes: [unit.connection] },
      { parts: [nut], by: stretched(leaving.way, PIN_TRAVEL), closes: [] },
    ];
  }
  return [{ parts: partsIn(ground, leaving.set), by: stretched(against(leaving.way), travelOf(ground, cut, leaving)), closes }];
}

const closedBy = (links: readonly Link[]): Move['closes'] => [...new Set(links.flatMap(({ connection }) => (connection === null ? [] : [connection])))];

/** How far a piece comes: out of its sockets, off its panel, or past all that it is slid through. */
function travelOf(ground: Ground, cut: Cut, { set, way }: Leaving): number {
  if (cut.kind === 'unrow') return PIN_TRAVEL;
  if (cut.kind === 'unhook') return CLEAR;
  const kinds = cut.undoes.filter(({ a, b }) => hasBit(set, a) || hasBit(set, b));
  if (kinds.some(({ is }) => is === 'sleeve')) return past(ground, cut.restBits, set, way) + CLEAR;
  if (kinds.some(({ is, a }) => is === 'inside' || (is === 'lay' && ground.flaps.some(({ panel }) => panel === a)))) return FRAME_LIFT;
  const depths = kinds.map(({ connection }) => (connection?.is === 'socket' ? connection.depth : 0));
  return kinds.some(({ is }) => is === 'socket') ? Math.max(...depths) + CLEAR : SHORT;
}

/** How far a set must go along a way until it is past another. */
function past(ground: Ground, rest: Bits, set: Bits, way: Vec3): number {
  const ends = (own: Bits): readonly number[] => indicesOf(own).flatMap((index) =>
    (ground.units.all[index]?.pieces ?? []).flatMap(({ points }) => Array.from({ length: points.length / 3 }, (_, at) =>
      dot([points[at * 3] ?? 0, points[at * 3 + 1] ?? 0, points[at * 3 + 2] ?? 0], way))));
  return Math.max(0, ends(rest).reduce((most, end) => Math.max(most, end), -Infinity) - ends(set).reduce((least, end) => Math.min(least, end), Infinity));
}

/** What a cut is called when it is done forwards. */
function doingOf(ground: Ground, cut: Cut): Doing {
  switch (cut.kind) {
    case 'unfold': return 'wrap';
    case 'unhook': return 'hang';
    case 'unpin': return 'pin';
    case 'unrow': return 'pin-side';
    case 'part': return partingOf(ground, cut);
  }
}

function partingOf(ground: Ground, cut: Cut): Doing {
  const kinds = new Set(cut.undoes.map(({ is }) => is));
  if (kinds.has('sleeve')) return cut.leaving.every(({ set }) => isRaw(ground, set)) ? 'push-through' : 'slide-on';
  if (kinds.has('inside')) return 'set-in';
  if (kinds.has('hinge') && cut.leaving.some(({ set }) => holdsPanel(ground, set))) return 'lay-panel';
  if (kinds.has('lay')) return cut.undoes.some(({ is, a }) => is === 'lay' && ground.flaps.some(({ panel }) => panel === a)) ? 'lay-frame' : 'lay-panel';
  if (!kinds.has('socket')) return 'fit';
  const most = Math.max(...cut.leaving.map(({ set }) => cut.undoes.filter(({ is, a, b }) => is === 'socket' && (hasBit(set, a) || hasBit(set, b))).length));
  return most > 1 ? 'close' : 'push';
}

/** Whether a flat panel is among what comes. */
const holdsPanel = (ground: Ground, set: Bits): boolean => partsIn(ground, set).some((id) => isFlatPanel(ground.units.parts.get(id)?.shape));

function drilledFirst(ground: Ground, cut: Cut, pin: Draft): readonly Draft[] {
  const pins = cut.leaving.flatMap(({ set }) => indicesOf(set).flatMap((index) => {
    const unit = ground.units.all[index];
    return unit?.is === 'fastener' ? [unit.connection.pin] : [];
  }));
  return [{ ...pin, does: 'drill', moves: [], newParts: [], drillsFor: pins, people: 2, costs: [] }, pin];
}

/** A tab that is punched where it lies gets all its holes before its pins. */
function punchedFirst(ground: Ground, cut: Cut, pins: Draft): readonly Draft[] {
  const rows = rowsOf(ground, cut.leaving.flatMap(({ set }) => indicesOf(set)));
  const holes = rows.filter(({ panel }) => isPunchedThere(ground.units.parts.get(panel)?.shape)).flatMap(({ parts }) => parts);
  return holes.length === 0 ? [pins] : [punchDraft(pins, holes), pins];
}

/** Holes punched through tab and panel for pins that come next. */
export const punchDraft = (pins: Draft, holes: readonly string[]): Draft =>
  ({ ...pins, does: 'punch-tab', moves: [], newParts: [], drillsFor: [...new Set(holes)], people: 2, costs: [] });

/** Whether the holes of a panel's pins are punched when its flaps lie where they are pinned. */
export const isPunchedThere = (shape: Shape | undefined): boolean =>
  (shape?.form === 'panel' || shape?.form === 'folded') && shape.pattern.holes.some(({ punched }) => punched === 'wrapped');

const rowsOf = (ground: Ground, indices: readonly number[]): readonly Row[] => indices.flatMap((index) => {
  const unit = ground.units.all[index];
  return unit?.is === 'row' ? [unit] : [];
});

function turnDraft(ground: Ground, building: Extract<Building, { is: 'turn' }>): Draft {
  const [from, to] = [wayAt(ground, building.from), wayAt(ground, building.up)];
  const loose = ground.links.find(({ is, a, b }) => is === 'sleeve' && hasBit(building.set, a) && hasBit(building.set, b));
  const present = partsIn(ground, building.set);
  return {
    does: 'turn', moves: [], folds: [], turns: { ...turnBetween(from, to, levelled(loose?.free[0], from)), to }, newParts: [], present, folded: foldedIn(ground, building.set), foldedAfter: foldedIn(ground, building.set), works: [], drillsFor: [],
    up: from, pose: poseFor(from), onBench: false, side: null, letter: null, people: 2, held: [], props: [], inHand: [], costs: building.costs,
  };
}

const levelled = (way: Vec3 | undefined, up: Vec3): Vec3 | null => (way !== undefined && Math.abs(dot(way, up)) < 0.1 ? way : null);

/** The side on which all that moves stands; for a flap its own, for cables that which they are hung on from. */
function sideOf(ground: Ground, cut: Cut): Side | null {
  if (cut.flap !== null) return cut.flap.folded.flap.side;
  const ways = cut.kind === 'unhook' ? cut.leaving.map(({ way }) => way) : cut.leaving.map(({ set }) => outOf(ground, set));
  return SIDES.find(([, out]) => ways.every((way) => dot(way, out) > Math.SQRT1_2 - 1e-6 || beyond(way, out)))?.[0] ?? null;
}

const SIDES: readonly (readonly [Side, Vec3])[] = [['front', [0, -1, 0]], ['back', [0, 1, 0]], ['left', [-1, 0, 0]], ['right', [1, 0, 0]]];

/** A place is on a side when it is at least a hand's breadth off the middle. */
const beyond = (way: Vec3, out: Vec3): boolean => dot(way, out) > 40;

/** From the middle of the finished item to the middle of a set, level, mm. */
function outOf(ground: Ground, set: Bits): Vec3 {
  const [own, all] = [middleOf(ground, set), middleOf(ground, ground.finished)];
  return [own[0] - all[0], own[1] - all[1], 0];
}

function middleOf(ground: Ground, set: Bits): Vec3 {
  const pieces = indicesOf(set).flatMap((index) => ground.units.all[index]?.pieces ?? []);
  const middle = (axis: 0 | 1 | 2): number => (Math.min(...pieces.map(({ min }) => min[axis])) + Math.max(...pieces.map(({ max }) => max[axis]))) / 2;
  return [middle(0), middle(1), middle(2)];
}
