import { dot, type Vec3 } from '../../model/index.ts';
import { hasBit, indicesOf, union, type Bits } from './bits.ts';
import type { Cut } from './cuts.ts';
import { floorOf, heightOf, isRaw, piecesIn, type Ground } from './ground.ts';
import type { Rest, Unheld } from './resting.ts';

/** What a step costs and why: names that a reason can print. Weights are set by hand so that plans read as a builder works (common practice, no source). */
export const WEIGHTS = {
  step: 1,
  /** The same again in the same step. */
  again: 0.3,
  /** Holes drilled for pins; for each hole that is not drilled from above. */
  drill: 0.6,
  'drilled-sideways': 0.6,
  /** The same through a flat panel, which shows where the drill goes. */
  'panel-drilled-sideways': 0.3,
  /** Something put in from below, where the bench is. */
  'from-below': 6,
  /** A pin or a tab's row of pins put in from the side. */
  'pinned-sideways': 0.6,
  'folded-against-the-bench': 8,
  /** A panel laid or wrapped on work that already holds a bar in sleeves. */
  'wrapped-on-the-posts': 5,
  /** For each socket still empty in a frame that is put over a box: it is squared first. */
  'set-in-open': 1.5,
  'cable-not-upright': 2,
  /** A body that a second pair of hands keeps from falling over; one that it holds in mid-air. */
  held: 0.6,
  'held-up': 2,
  /** For each kg of work that stands on its edge and each metre beyond IN_BALANCE that its mass is beside it: it is not steadied but carried. */
  'leans-out': 2,
  /** A body that something must be put under, and for each metre that it must be tall; and one that would fall over without. */
  propped: 0.5,
  'propped-high': 5,
  'propped-upright': 2.2,
  /** For each kg of a raw part that is lifted to its place. */
  lifted: 0.05,
  /** A sub-assembly too heavy for one hand, taken up and brought to its place; and for each kg of it. */
  handled: 0.6,
  'handled-mass': 0.06,
  /** The same where bars are in sleeves already: this is no sub-assembly any more, but the work itself. */
  'work-handled': 2.6,
  /** A piece that is not fast while it is carried with others. */
  'carried-loose': 4,
  /** A further piece laid out by measure to build on. */
  'laid-out': 0.5,
  /** The same again where several sockets are met at once. */
  'again-closed': 1,
  /** For each metre over table height that the work is tall. */
  tall: 0.6,
  'second-person': 0.2,
  turn: 2,
  'turned-over': 0.3,
  /** For each kg that is turned. */
  'turned-mass': 0.06,
  /** For each piece that is not fast while the work is turned. */
  'turned-loose': 0.8,
  'new-sub-assembly': 0.4,
  /** A rule of good practice broken, because the designer wishes it. */
  'against-practice': 1.5,
  /** Feet knocked into bars on which sleeves may still slide off their marks. */
  'knocked-loose': 8,
  /** For each mouth beyond two that one piece meets at once. */
  'many-mouths': 0.4,
} as const;

export type CostName = keyof typeof WEIGHTS;

/** One part of a price. */
export interface Cost {
  readonly name: CostName;
  readonly value: number;
}

export const sumOf = (costs: readonly Cost[]): number => costs.reduce((sum, { value }) => sum + value, 0);

/** One part of a price, as often as told. */
const cost = (name: CostName, times = 1): readonly Cost[] => (times === 0 ? NONE : times === 1 ? ONCE[name] : [{ name, value: WEIGHTS[name] * times }]);
const when = (name: CostName, met: boolean): readonly Cost[] => (met ? ONCE[name] : NONE);

const NONE: readonly Cost[] = [];
const ONCE = Object.fromEntries(Object.entries(WEIGHTS).map(([name, value]) => [name, [{ name: name as CostName, value }]])) as unknown as Readonly<Record<CostName, readonly Cost[]>>;

/** Who and what holds the work during a step. */
export interface Hands {
  readonly people: 1 | 2;
  /** Bodies that a free hand holds, and those that need a prop. */
  readonly held: readonly Unheld[];
  readonly propped: readonly Unheld[];
  /** Light work that would fall over: somebody has it in hand. */
  readonly inHand: readonly Unheld[];
}

/** Heavier than this, kg, or longer than this, mm, takes two; lighter work is held in the hand while something is put on it. */
const HEAVY = 3;
const LONG = 900;
const IN_HAND = 3;
/** Work that leans out so far is still steadied, mm (set by hand). */
const IN_BALANCE = 215;
const STEEP = 0.5;
const TABLE = 250;
/** A prop taller than this is no harder to find, mm. */
const HIGH = 600;

/** What of a cut is the same in every pose: whether the rest is light enough for a hand, how many bring what leaves, and what it costs in all of them. */
export interface Carried {
  readonly light: boolean;
  readonly movers: 1 | 2;
  readonly anyPose: readonly Cost[];
}

export const carriedIn = (ground: Ground, cut: Cut): Carried => ({
  light: massOf(ground, cut.restBits) < IN_HAND,
  movers: cut.leaving.some(({ set }) => massOf(ground, set) > HEAVY || (mouths(cut, set) > 1 && spanOf(ground, set) > LONG)) ? 2 : 1,
  anyPose: [
    ...cost('set-in-open', cut.kind === 'part' ? emptySockets(ground, cut) : 0), ...when('wrapped-on-the-posts', isWrappedOn(ground, cut) && onPosts(ground, cut.restBits)),
    ...when('knocked-loose', isKnockedLoose(ground, cut)),
  ],
});

/** Whether a flap is wrapped, or a panel laid that will be. */
const isWrappedOn = (ground: Ground, { kind, undoes }: Cut): boolean => kind === 'unfold' || (kind === 'part' && undoes.some(({ is, a }) => is === 'lay' && isWrapped(ground, a)));

/** Whether feet come on bars that sit in sleeves without their pins. */
function isKnockedLoose({ links }: Ground, { kind, undoes, restBits }: Cut): boolean {
  const bars = new Set(kind === 'part' ? undoes.flatMap(({ is, b }) => (is === 'foot' ? [b] : [])) : []);
  if (bars.size === 0) return false;
  const pinned = (a: number, b: number): boolean => links.some((pin) => pin.is === 'pin' && pin.b === a && hasBit(restBits, pin.a) && links.some((other) => other.is === 'pin' && other.a === pin.a && other.b === b));
  return links.some(({ is, a, b }) => is === 'sleeve' && bars.has(a) && hasBit(restBits, b) && !pinned(a, b));
}

/** Nothing would fall: one brings what comes, or two do. */
const ONE: Hands = { people: 1, held: [], propped: [], inHand: [] };
const TWO: Hands = { people: 2, held: [], propped: [], inHand: [] };

/** Two people at most, a body each: first what moves, then what would fall; the rest is propped. */
export function handsFor({ light, movers }: Carried, rest: Rest): Hands {
  const inHand = rest.pieces.length === 1 && light;
  if (rest.unheld.length === 0) return movers > 1 ? TWO : ONE;
  if (inHand) return { ...(movers > 1 ? TWO : ONE), inHand: rest.unheld.filter(({ tips }) => tips) };
  const loose = [...rest.unheld].sort((a, b) => sumOf(propCosts(b)) - sumOf(propCosts(a)));
  const held = loose.slice(0, 2 - movers);
  return { people: movers + held.length > 1 ? 2 : 1, held, propped: loose.slice(held.length), inHand: [] };
}

/** How many sockets and sleeves a piece meets as it comes. */
const mouths = (cut: Cut, set: Bits): number =>
  cut.undoes.filter(({ is, a, b }) => (is === 'socket' || is === 'sleeve') && (hasBit(set, a) || hasBit(set, b))).length;

export const massOf = (ground: Ground, set: Bits): number => indicesOf(set).reduce((sum, index) => sum + (ground.mass[index] ?? 0), 0);

function spanOf(ground: Ground, set: Bits): number {
  const pieces = indicesOf(set).flatMap((index) => ground.units.all[index]?.pieces ?? []);
  return Math.max(...[0, 1, 2].map((axis) =>
    Math.max(...pieces.map(({ max }) => max[axis] ?? 0)) - Math.min(...pieces.map(({ min }) => min[axis] ?? 0))));
}

/** What one step of building costs in whatever pose. */
export function fixedCosts(ground: Ground, cut: Cut): readonly Cost[] {
  const lifted = cut.leaving.reduce((sum, { set }) => sum + (isRaw(ground, set) ? massOf(ground, set) : 0), 0);
  return [
    ...cost('step'),
    ...cost(cut.leaving.some(({ set }) => sockets(cut, set) > 1) ? 'again-closed' : 'again', cut.leaving.length - 1),
    ...cost('many-mouths', cut.leaving.reduce((sum, { set }) => sum + Math.max(0, mouths(cut, set) - 2), 0)),
    ...cost('laid-out', cut.rest.length - 1),
    ...cost('lifted', lifted),
    ...cost('against-practice', cut.breaks),
  ];
}

/** What it costs more in one pose, told by the number of the way that is up; `rest` is how the work lies before it. */
export function poseCosts(ground: Ground, cut: Cut, up: number, rest: Rest, carried: Carried): readonly Cost[] {
  const hands = handsFor(carried, rest);
  return [
    ...hands.held.flatMap(({ tips }) => cost(tips ? 'held' : 'held-up')),
    ...hands.propped.flatMap(propCosts),
    ...cost('leans-out', rest.unheld.reduce((sum, { set, tips, beside }) => sum + (tips ? massOf(ground, set) * Math.max(0, beside - IN_BALANCE) / 1000 : 0), 0)),
    ...when('second-person', hands.people === 2),
    ...cost('tall', Math.max(0, heightOf(ground, cut.restBits, up) - TABLE) / 1000),
    ...kindCosts(ground, cut, up), ...carried.anyPose,
  ];
}

const propCosts = ({ tips, gap }: Unheld): readonly Cost[] =>
  [...when('propped-upright', tips), ...when('propped', !tips), ...cost('propped-high', Math.min(gap, HIGH) / 1000)];

/** How many sockets a piece meets as it comes. */
const sockets = (cut: Cut, set: Bits): number => cut.undoes.filter(({ is, a, b }) => is === 'socket' && (hasBit(set, a) || hasBit(set, b))).length;

/** What it takes to bring a sub-assembly. */
export function handlingCosts(ground: Ground, set: Bits): readonly Cost[] {
  const mass = massOf(ground, set);
  const loose = cost('carried-loose', piecesIn(ground, set, true).length - 1);
  if (onPosts(ground, set)) return [...cost('work-handled'), ...cost('handled-mass', mass), ...loose];
  return mass < HEAVY ? loose : [...cost('handled'), ...cost('handled-mass', mass), ...loose];
}

function kindCosts(ground: Ground, cut: Cut, pose: number): readonly Cost[] {
  const up = ground.blocking.ways[pose] ?? [0, 0, 1];
  const slopes = cut.leaving.map(({ way }) => dot(way, up));
  const below = when('from-below', slopes.some((slope) => slope < -STEEP));
  const sideways = slopes.some((slope) => Math.abs(slope) < STEEP);
  switch (cut.kind) {
    case 'unpin': return [...below, ...cost('drill'), ...cost(cut.undoes.some(({ b }) => ground.blocking.off.has(b)) ? 'panel-drilled-sideways' : 'drilled-sideways', sideways ? cut.leaving.length : 0)];
    case 'unrow': return [...below, ...when('pinned-sideways', sideways)];
    case 'unhook': return when('cable-not-upright', up[2] < 0.9);
    case 'unfold': return foldCosts(ground, cut, pose);
    case 'part': return below;
  }
}

/** Sockets of the corners round a box that have no bar yet when it is set in. */
function emptySockets(ground: Ground, { undoes, leaving, restBits }: Cut): number {
  const bars = new Set(undoes.flatMap(({ is, b }) => (is === 'inside' ? [b] : [])));
  if (bars.size === 0) return 0;
  const there = leaving.map(({ set }) => set).reduce(union, restBits);
  const sockets = ground.links.filter(({ is }) => is === 'socket');
  const corners = new Set(sockets.filter(({ a }) => bars.has(a)).map(({ b }) => b));
  return sockets.filter(({ a, b }) => corners.has(b) && !hasBit(there, a)).length;
}

const isWrapped = (ground: Ground, panel: number): boolean => ground.flaps.some((flap) => flap.panel === panel);

/** Whether a bar sits in a sleeve somewhere in the work. */
const onPosts = (ground: Ground, set: Bits): boolean => ground.links.some(({ is, a, b }) => is === 'sleeve' && hasBit(set, a) && hasBit(set, b));

/** A flap that would have to go through the bench that the work lies on. */
function foldCosts(ground: Ground, { flap, restBits }: Cut, up: number): readonly Cost[] {
  if (flap === null) return [];
  return when('folded-against-the-bench', (flap.lows[up] ?? 0) < floorOf(ground, restBits, up) - 1);
}

/** What it costs to turn work from one direction up to another; infinite when something would come off. */
export function turnCosts(ground: Ground, set: Bits, from: Vec3, to: Vec3, before: Rest, after: Rest): readonly Cost[] | null {
  if (before.unheld.length > 1 || after.unheld.length > 1 || !staysTogether(ground, set, from, to, before)) return null;
  return [
    ...cost('turn'),
    ...when('turned-over', dot(from, to) < -STEEP),
    ...cost('turned-mass', massOf(ground, set)),
    ...cost('turned-loose', before.pieces.length - 1),
    ...cost('held', after.unheld.length),
  ];
}

/** Bars in sleeves must lie level all the while: the turn goes about them. Nothing may just lie on something else. */
function staysTogether(ground: Ground, set: Bits, from: Vec3, to: Vec3, { pieces }: Rest): boolean {
  if (pieces.length < 2) return true;
  const loose = ground.links.filter(({ a, b }) => hasBit(set, a) && hasBit(set, b) && !pieces.some((piece) => hasBit(piece, a) && hasBit(piece, b)));
  return loose.every(({ is, free }) => is !== 'lay' && free.every((way) => Math.abs(dot(way, from)) < 0.1 && Math.abs(dot(way, to)) < 0.1))
    && axesOf(loose.flatMap(({ free }) => free)) < 2;
}

/** How many different lines some ways lie along. */
const axesOf = (ways: readonly Vec3[]): number =>
  ways.filter((way, index) => !ways.slice(0, index).some((other) => Math.abs(dot(other, way)) > 0.999)).length;

