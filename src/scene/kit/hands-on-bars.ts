import { cross, lengthOf, minus, placed, plus, times, unit, type Vec3 } from '../../model/index.ts';
import type { Mark, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { BREADTH, CLEAR_OF_WORK, type HandRoom } from './hand-room.ts';
import type { StageHand } from './stage.ts';

export type Hand = Extract<Mark, { mark: 'hand' }>;

/** Places on a bar are tried so far from each other, mm. */
const EVERY = 10;
/** The two hands of one person are no nearer and no farther from each other than this, mm (common practice, no source). */
export const APART = { least: 1.5 * BREADTH, most: 900 } as const;
/** Bars whose upper sides are less apart than this are equally high, mm. */
const LEVEL = 60;
/** A bar that rises more than this is held from the side (the sine). */
const STEEP = 0.7;

/**
 * Hands on bars, where the usual places are in the way of the work: on the highest bars that have room for both, within reach of
 * each other on one bar or on two that are equally high; else a single hand; none where no bar has a free place. Of the places
 * those farthest from the work; where there are such on a bar, places that cover no arrow.
 */
export function handsOnBars(stage: StageHand, ids: readonly string[], room: HandRoom, view: View): readonly Hand[] {
  const bars = ids.flatMap((id) => barOf(stage, id)).toSorted((one, other) => rank(other) - rank(one) || other.length - one.length);
  let single: readonly Hand[] = [];
  for (const high of new Set(bars.map(rank))) {
    const free = bars.filter((bar) => rank(bar) === high).flatMap((bar) => freePlaces(bar, room, view));
    const pair = farthestPair(free);
    if (pair !== null) return pair;
    if (single.length === 0) single = free.toSorted((a, b) => b.far - a.far).slice(0, 1).map(({ hand }) => hand);
  }
  return single;
}

/** A bar as it lies. */
export interface Bar {
  readonly from: Vec3;
  readonly way: Vec3;
  readonly length: number;
  readonly radius: number;
  readonly top: number;
}

interface Place {
  readonly hand: Hand;
  /** How far from the work, mm. */
  readonly far: number;
}

/** How high up, in steps. */
export const rank = ({ top }: Bar): number => Math.round(top / LEVEL);

/** A tube as it lies in a step; none where the part is none. */
export function barOf(stage: StageHand, id: string): readonly Bar[] {
  const { shape } = stage.part(id);
  if (shape.form !== 'tube') return [];
  const [pose, radius] = [stage.pose(id), shape.outside / 2];
  const [from, to] = [-0.5, 0.5].map((share) => placed(pose, [share * shape.length, 0, 0])) as [Vec3, Vec3];
  return [{ from, way: turnedBy(pose, [1, 0, 0]), length: shape.length, radius, top: Math.max(from[2], to[2]) + radius }];
}

/** Where a hand is clear and the bar is bare. */
export function freePlaces(bar: Bar, room: HandRoom, view: View): readonly Place[] {
  const ontos: readonly Vec3[] = Math.abs(bar.way[2]) < STEEP ? [[0, 0, -1]] : besides(view);
  const count = Math.max(0, Math.floor((bar.length - BREADTH) / EVERY));
  const all = Array.from({ length: count + 1 }, (_, index) => plus(bar.from, times(bar.way, BREADTH / 2 + index * EVERY)));
  const places = ontos.flatMap((onto) => all.flatMap((axis): readonly Place[] => {
    const hand: Hand = { mark: 'hand', at: minus(axis, times(onto, bar.radius)), onto, person: 2 };
    const far = room.farFromWork(hand.at);
    return far >= CLEAR_OF_WORK && room.isBare(hand, bar.way) ? [{ hand, far }] : [];
  }));
  const uncovering = places.filter(({ hand }) => room.isClearOnPaper(hand));
  return uncovering.length > 0 ? uncovering : places;
}

/** To the right and to the left on paper. */
function besides({ towardsEye, up }: View): readonly Vec3[] {
  const right = unit(cross(up, towardsEye));
  return [right, times(right, -1)];
}

/** Of free places the two within reach of each other that are farthest from the work; null where there are none. */
function farthestPair(free: readonly Place[]): readonly [Hand, Hand] | null {
  const pairs = free.flatMap((a, index) => free.slice(index + 1).flatMap((b) => {
    const apart = lengthOf(minus(a.hand.at, b.hand.at));
    return apart >= APART.least && apart <= APART.most ? [{ hands: [a.hand, b.hand] as const, far: Math.min(a.far, b.far), sum: a.far + b.far }] : [];
  }));
  return pairs.toSorted((a, b) => b.far - a.far || b.sum - a.sum)[0]?.hands ?? null;
}
