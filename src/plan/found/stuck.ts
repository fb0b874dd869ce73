import { dot, type Vec3 } from '../../model/index.ts';
import { FACES } from '../../read/index.ts';
import { NoOrder } from '../no-order.ts';
import { bitsOf, countOf, hasBit, indicesOf, isEmpty, without, type Bits } from './bits.ts';
import { roomBeside } from './beside.ts';
import { cutsOf, type Cut } from './cuts.ts';
import { isRaw, piecesIn, type Ground } from './ground.ts';
import type { Unit } from './units.ts';

/**
 * Why an item comes apart in no way, by what is in the way of what; null when all of it does come apart, piece by
 * piece, so that something else keeps the search from an order.
 */
export function stuckIn(ground: Ground): NoOrder | null {
  const [set] = stuckSets(ground, ground.finished);
  if (set === undefined) return null;
  const pair = pairIn(ground, set);
  if (pair === null) {
    const names = namesOf(ground, set);
    return new NoOrder(`${names.slice(0, MOST_NAMES).join(', ')}${names.length > MOST_NAMES ? ' and others' : ''} hold each other: none of them can come last`, 'leave one of them out, or open what they close');
  }
  const { mover, past } = pair;
  const room = roomBeside(ground, set, mover, past);
  const place = room === null ? 'give one of them another place' : `set ${nameOf(past)} ${room.distance} mm farther ${directionOf(room.way)}`;
  return new NoOrder(`${nameOf(mover)} cannot go where it belongs past ${nameOf(past)}`, `${place}, or leave one of them out`);
}

/** So many parts are named one by one. */
const MOST_NAMES = 4;

/** Parts that come off alone, some of them, in the first set on the way down where several may go. */
export function looseIn(ground: Ground): readonly string[] {
  for (let set: Bits | undefined = ground.finished; set !== undefined && countOf(set) > 1;) {
    const cuts = cutsIn(ground, set);
    const alone = cuts.filter(({ leaving }) => leaving.length === 1 && leaving.every((one) => countOf(one.set) === 1));
    if (alone.length > 1) return [...new Set(alone.flatMap(({ leaving }) => leaving.flatMap((one) => namesOf(ground, one.set))))].slice(0, MOST_NAMES);
    set = cuts[0]?.restBits;
  }
  return [];
}

/** Sets that no cut takes further apart. What can leave a set can leave any smaller one too, so that any cut will do. */
function stuckSets(ground: Ground, whole: Bits): readonly Bits[] {
  const waiting = [whole];
  const stuck: Bits[] = [];
  for (let set = waiting.pop(); set !== undefined; set = waiting.pop()) {
    if (isRaw(ground, set)) continue;
    const [first] = cutsIn(ground, set);
    if (first === undefined) stuck.push(set);
    else waiting.push(...first.rest, ...first.leaving.map((leaving) => leaving.set));
  }
  return stuck;
}

const cutsIn = (ground: Ground, set: Bits): readonly Cut[] => cutsOf(ground, set, false).flat().filter(({ restBits }) => !isEmpty(restBits));

/** What cannot go past what. */
interface Pair {
  readonly mover: Unit;
  readonly past: Unit;
}

/** A unit without which others come off, and one that it has kept from that: of several, the one that leaves the least stuck, is joined the least and weighs the least. */
function pairIn(ground: Ground, set: Bits): Pair | null {
  const tried = indicesOf(set).flatMap((index): readonly (Pair & { readonly left: number; readonly joined: number })[] => {
    const past = ground.units.all[index];
    if (past === undefined || past.is === 'flat' || past.is === 'folded') return [];
    const pieces = piecesIn(ground, withoutOne(ground, set, past), false);
    const mover = pieces.flatMap((piece) => cutsIn(ground, piece).flatMap((cut) => keptBack(ground, cut, past)))[0];
    if (mover === undefined) return [];
    const left = pieces.flatMap((piece) => stuckSets(ground, piece)).reduce((sum, stuck) => sum + countOf(stuck), 0);
    const joined = (ground.linksAt[index] ?? []).length;
    return [{ mover, past, left, joined }];
  });
  return [...tried].sort((one, other) => one.left - other.left || one.joined - other.joined || one.past.mass - other.past.mass || one.past.index - other.past.index)[0] ?? null;
}

/** A set without one unit, and without the flaps and pins of a panel that is left out. */
function withoutOne(ground: Ground, set: Bits, { index, parts }: Unit): Bits {
  const flaps = ground.units.all.filter((unit) => unit.is !== 'part' && unit.is !== 'fastener' && unit.panel === parts[0]).map((unit) => unit.index);
  return without(set, bitsOf(ground.size, [index, ...flaps]));
}

/** A unit that leaves in a cut, and would not have with another one there. */
function keptBack(ground: Ground, { leaving, kind }: Cut, past: Unit): readonly Unit[] {
  return leaving.flatMap(({ set, way }) => indicesOf(set).flatMap((index) => {
    const unit = ground.units.all[index];
    const blockers = kind === 'part' || kind === 'unhook' ? ground.blocking.out[ground.blocking.ways.indexOf(way)]?.[index] : ground.foldBlocks.get(index) ?? ground.blocking.own[index];
    const isBound = (ground.linksAt[index] ?? []).some(({ a, b }) => a === past.index || b === past.index);
    return unit !== undefined && blockers !== undefined && blockers !== null && hasBit(blockers, past.index) && !isBound ? [unit] : [];
  }));
}

const nameOf = ({ parts }: Unit): string => parts[0] ?? '';

const namesOf = (ground: Ground, set: Bits): readonly string[] =>
  [...new Set(indicesOf(set).flatMap((index) => ground.units.all[index]?.parts.slice(0, 1) ?? []))];

/** The direction, as item files name it, that a way is nearest to. */
const directionOf = (way: Vec3): string =>
  Object.entries(FACES).sort((one, other) => dot(other[1], way) - dot(one[1], way))[0]?.[0] ?? '';
