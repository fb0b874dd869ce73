import type { Vec3 } from '../../model/index.ts';
import { hasBit, keyOf, type Bits } from './bits.ts';
import { copiesOf, formBook, formOf, type FormBook } from './alike.ts';
import { fixedCosts, handlingCosts, massOf, poseCosts, sumOf, turnCosts, WEIGHTS } from './costs.ts';
import { cutsOf, type Cut } from './cuts.ts';
import { floorOf, isRaw, type Ground } from './ground.ts';
import type { Link } from './links.ts';
import { NoOrder } from '../no-order.ts';
import { bodiesOf, restOver, type Lying, type Rest } from './resting.ts';
import { looseIn } from './stuck.ts';

/** What a set is taken apart into, with one direction up. */
export interface Choice {
  readonly cut: Cut;
  /** The piece of the rest that is built on in the same pose, when it is more than one unit. */
  readonly onward: Bits | null;
}

/** The best that is known of a set. */
export interface Known {
  readonly set: Bits;
  readonly choices: readonly (Choice | null)[];
  /** By direction up: the least cost of having it built so, its last step done in this very pose; and when it may be turned afterwards. */
  readonly builtIn: readonly number[];
  readonly best: readonly number[];
  /** By direction up: the pose in which the last step is done before it is turned to this one. */
  readonly from: readonly number[];
}

/** What a search keeps while it goes on. */
export interface Search {
  readonly ground: Ground;
  readonly ups: readonly Vec3[];
  readonly known: Map<string, Known>;
  readonly rests: Map<string, LyingSet>;
  readonly prices: Map<string, number>;
  readonly forms: Map<string, string>;
  readonly book: FormBook;
  /** Sets that may yet be looked at; none is left out in silence. */
  left: number;
  /** What the designer wants before what. */
  readonly wanted: readonly Wanted[];
}

/** Links to be closed before others: while one of the second is there, none of the first may be undone. */
export interface Wanted {
  readonly first: ReadonlySet<Link>;
  readonly then: ReadonlySet<Link>;
}

/** No plan here needs as many; an item that does is told so. */
const MOST_SETS = 8_000;

export const startSearch = (ground: Ground, wanted: readonly Wanted[] = []): Search =>
  ({ ground, wanted, ups: ground.blocking.ways, known: new Map(), rests: new Map(), prices: new Map(), forms: new Map(), book: formBook(ground), left: MOST_SETS });

/** Takes a set apart in every way, and keeps the cheapest for each direction up. */
export function solve(search: Search, set: Bits, copies: number): Known {
  const key = `${copies}*${keyOf(set)}`;
  const known = search.known.get(key);
  if (known !== undefined) return known;
  search.left -= 1;
  if (search.left < 0) throw tooMany(search.ground);
  const made = solved(search, set, copies);
  search.known.set(key, made);
  return made;
}

function tooMany(ground: Ground): NoOrder {
  const loose = looseIn(ground);
  const these = loose.length === 0 ? '' : `, such as ${loose.join(', ')}`;
  return new NoOrder(`no order found among ${MOST_SETS} part-built states, although every part comes off`, `fewer parts that come off in any order${these}`);
}

function solved(search: Search, set: Bits, copies: number): Known {
  const { ground, ups } = search;
  if (isRaw(ground, set)) return single(set, ups.length);
  const choices: (Choice | null)[] = ups.map(() => null);
  const builtIn = ups.map(() => Infinity);
  for (const tier of cutsOf(ground, set, search.wanted.length > 0)) {
    const cuts = tier.filter((cut) => isWanted(search, set, cut));
    const own = lyingAt(search, set);
    for (const each of cuts.map((cut) => weighed(search, copies, cut))) weigh(search, own, copies, each, choices, builtIn);
    if (builtIn.some((sum) => sum < Infinity)) break;
  }
  return turnedFrom(search, { set, choices, builtIn }, batchShare(copies));
}

/** Whether a cut keeps to the designer's wishes. */
const isWanted = ({ wanted }: Search, set: Bits, { undoes }: Cut): boolean => wanted.every(({ first, then }) =>
  !undoes.some((link) => first.has(link)) || ![...then].some((link) => hasBit(set, link.a) && hasBit(set, link.b)));

/** A cut with what it costs in whatever pose. */
interface Weighed {
  readonly cut: Cut;
  readonly fixed: number;
  readonly bases: readonly Base[];
  readonly allFresh: number;
}

function weighed(search: Search, copies: number, cut: Cut): Weighed {
  const bases = cut.rest.map((piece): Base => baseOf(search, piece, copies));
  const brought = [...cut.leaving].reverse().reduce((sum, { set: own }) => sum + shareOf(search, own), 0);
  return {
    cut, bases, fixed: batchShare(copies) * sumOf(fixedCosts(search.ground, cut)) + brought,
    allFresh: bases.reduce((sum, { price }) => sum + price, 0),
  };
}

/** Weighs one cut in every pose, and keeps it where it is the cheapest so far. */
function weigh(search: Search, floors: LyingSet, copies: number, { cut, fixed, bases, allFresh }: Weighed, choices: (Choice | null)[], builtIn: number[]): void {
  const { ground, ups } = search;
  const share = batchShare(copies);
  let rests: LyingSet | null = null;
  for (let pose = 0; pose < ups.length; pose++) {
    const { least, onward } = cheapestBase(bases, allFresh, pose);
    const before = fixed + least;
    if (before >= (builtIn[pose] ?? Infinity)) continue;
    rests ??= lyingAt(search, cut.restBits);
    const rest = restOver(restIn(search, rests, pose), floorIn(search, floors, pose));
    const sum = before + share * sumOf(poseCosts(ground, cut, pose, rest));
    if (sum >= (builtIn[pose] ?? Infinity) - 1e-9) continue;
    builtIn[pose] = sum;
    choices[pose] = { cut, onward };
  }
}

/** A piece of the rest: taken as a finished sub-assembly, or built on in the same pose. */
interface Base {
  readonly piece: Bits;
  readonly price: number;
  readonly known: Known | null;
}

/** One of a batch is always taken as it comes; it would be odd to build one of them elsewhere. */
function baseOf(search: Search, piece: Bits, copies: number): Base {
  const { ground } = search;
  const onward = !isRaw(ground, piece) && copiesOf(ground, piece) <= copies;
  return { piece, price: shareOf(search, piece), known: onward ? solve(search, piece, copies) : null };
}

function cheapestBase(bases: readonly Base[], allFresh: number, pose: number): { readonly least: number; readonly onward: Bits | null } {
  let least = allFresh;
  let onward: Bits | null = null;
  // A piece that comes apart in no way has no price that could be taken off the others'.
  if (!Number.isFinite(allFresh)) return { least, onward };
  for (const { piece, price, known } of bases) {
    const total = known === null ? Infinity : allFresh - price + (known.best[pose] ?? Infinity);
    if (total >= least + 1e-9) continue;
    least = total;
    onward = piece;
  }
  return { least, onward };
}

const single = (set: Bits, poses: number): Known => {
  const nothing = Array.from({ length: poses }, () => 0);
  return { set, choices: nothing.map(() => null), builtIn: nothing, best: nothing, from: nothing.map((_, index) => index) };
};

/** The cheapest pose to come from, for each pose. */
function turnedFrom(search: Search, made: Pick<Known, 'set' | 'choices' | 'builtIn'>, share: number): Known {
  const from = search.ups.map((_, index) => index);
  const least = share * (WEIGHTS.turn + WEIGHTS['turned-mass'] * massOf(search.ground, made.set));
  const best = made.builtIn.map((own, pose) => {
    let sum = own;
    made.builtIn.forEach((start, before) => {
      if (before === pose || start + least >= sum) return;
      const turn = turnAt(search, made.set, before, pose);
      if (turn === null || start + share * turn >= sum - 1e-9) return;
      sum = start + share * turn;
      from[pose] = before;
    });
    return sum;
  });
  return { ...made, best, from };
}

function turnAt(search: Search, set: Bits, from: number, to: number): number | null {
  const way = (pose: number): Vec3 => search.ups[pose] ?? [0, 0, 1];
  const rest = (pose: number): Rest => restAt(search, set, pose, set);
  const costs = turnCosts(search.ground, set, way(from), way(to), rest(from), rest(to));
  return costs === null ? null : sumOf(costs);
}

/** How a set lies with each direction up, as far as anybody has asked. */
export interface LyingSet {
  readonly set: Bits;
  readonly lying: (Lying | undefined)[];
  readonly floors: (number | undefined)[];
}

function lyingAt(search: Search, set: Bits): LyingSet {
  const key = keyOf(set);
  const known = search.rests.get(key) ?? { set, lying: [], floors: [] };
  search.rests.set(key, known);
  return known;
}

function restIn(search: Search, own: LyingSet, pose: number): Lying {
  return own.lying[pose] ??= bodiesOf(search.ground, own.set, pose);
}

/** The lowest place of a set with a direction up. */
function floorIn(search: Search, own: LyingSet, pose: number): number {
  return own.floors[pose] ??= floorOf(search.ground, own.set, pose);
}

/** How a part of a set lies with a direction up, over the floor that the whole set needs. */
export const restAt = (search: Search, part: Bits, pose: number, whole: Bits): Rest =>
  restOver(restIn(search, lyingAt(search, part), pose), floorIn(search, lyingAt(search, whole), pose));

/** What a further identical one costs of the first one's price. */
const FURTHER = 1 / 8;

/** What each of so many identical ones bears of the work on one. */
export const batchShare = (copies: number): number => (1 + (copies - 1) * FURTHER) / copies;

/** What a set costs as a sub-assembly of its own: its share of a batch of as many as the item can hold, and the bringing. */
export function shareOf(search: Search, set: Bits): number {
  const { ground } = search;
  if (isRaw(ground, set)) return 0;
  const form = formAt(search, set);
  const copies = copiesOf(ground, set);
  const known = search.prices.get(form) ?? Math.min(...solve(search, set, copies).builtIn) + batchShare(copies) * WEIGHTS['new-sub-assembly'];
  search.prices.set(form, known);
  return known + sumOf(handlingCosts(ground, set));
}

export function formAt(search: Search, set: Bits): string {
  const key = keyOf(set);
  const known = search.forms.get(key) ?? formOf(search.book, set);
  search.forms.set(key, known);
  return known;
}
