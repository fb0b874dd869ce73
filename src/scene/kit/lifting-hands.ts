import { dot, lengthOf, minus, plus, times, type Model, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { Scene } from '../types.ts';
import { boxRound, middleOf } from './extent.ts';
import { handRoom } from './hand-room.ts';
import { APART, barOf, freePlaces, rank, type Hand } from './hands-on-bars.ts';
import { handsAlong } from './held.ts';
import type { StageHand } from './stage.ts';

/** Work that is lifted: its parts there, before it is moved, and the whole scene that hands on it are drawn in. */
export interface Lifted {
  readonly model: Model;
  readonly stage: StageHand;
  readonly step: Step;
  readonly present: readonly string[];
  readonly scene: Scene;
}

/** How work is turned: the level direction that it turns about, and the one towards the side that rises; null where it rolls over or is turned on the spot. */
export interface Turning {
  readonly about: Vec3;
  readonly rises: Vec3 | null;
}

/**
 * Hands by which work is turned over or stood up: on bars that do not come out of their joints. First on posts that pins hold in
 * their sleeves, then on bars between joints that such posts hold; on the upper edge where no two free places are on either. One hand of each of two
 * people, where it can be at both ends of what the work turns about; both hands of the second person where it is held before that.
 */
export function liftingHands({ model, stage, step, present, scene }: Lifted, turning: Turning | null): readonly Hand[] {
  const before = present.map((id) => stage.body(id, 'present'));
  const middle = middleOf(boxRound(before));
  const room = handRoom(stage, step, scene, []);
  const { posts, framed } = fastBars(model, present);
  for (const ids of [posts, [...posts, ...framed]]) {
    const bars = ids.flatMap((id) => barOf(stage, id));
    for (const least of [...new Set(bars.map(rank))].toSorted((a, b) => b - a)) {
      const free = bars.filter((bar) => rank(bar) >= least).flatMap((bar) => freePlaces(bar, room, scene.view)).map(({ hand }) => hand);
      const pair = turning === null ? bestPair(free, APART, nearMiddle(middle)) : bestPair(free, PEOPLE, atEnds(turning, middle));
      if (pair !== null) return turning === null ? pair : [{ ...pair[0], person: 1 }, { ...pair[1], person: 2 }];
    }
  }
  return handsAlong(before, turning === null ? 'one' : 'two');
}

/** The bars of some parts that cannot be pulled out: posts that a pin holds in a sleeve, and bars in the sockets of two joints that are pinned so. */
export function fastBars({ connections }: Model, present: readonly string[]): { readonly posts: readonly string[]; readonly framed: readonly string[] } {
  const there = new Set(present);
  const pins = connections.flatMap((each) => (each.is === 'pin' && there.has(each.pin) ? [each.holds] : []));
  const pinned = connections.flatMap((each) => (each.is === 'sleeve' && pins.some((holds) => holds.includes(each.bar) && holds.includes(each.joint)) ? [each] : []));
  const joints = new Set(pinned.map(({ joint }) => joint));
  const sockets = connections.flatMap((each) => (each.is === 'socket' && there.has(each.bar) && joints.has(each.joint) ? [each.bar] : []));
  const posts = [...new Set(pinned.map(({ bar }) => bar))].filter((id) => there.has(id));
  return { posts, framed: [...new Set(sockets.filter((bar, index) => sockets.indexOf(bar) !== index))] };
}

/** Two people are no nearer to each other than this, mm (common practice, no source). */
const PEOPLE = { least: 250, most: Infinity } as const;
/** More than this between the hands of one person is no better, mm. */
const WIDE = 400;

/** What a pair of places is worth, mm. */
type Worth = (one: Vec3, other: Vec3) => number;

const halfway = (one: Vec3, other: Vec3): Vec3 => times(plus(one, other), 0.5);

/** Apart, and the work's middle between them. */
const nearMiddle = (middle: Vec3): Worth => (one, other) => Math.min(WIDE, lengthOf(minus(other, one))) - 2 * lengthOf(minus(halfway(one, other), middle));

/** Far from each other along what the work turns about, level across it, its middle between them or, where a side rises, at that. */
const atEnds = ({ about, rises }: Turning, middle: Vec3): Worth => (one, other) => {
  const [apart, off] = [minus(other, one), minus(halfway(one, other), middle)];
  const along = dot(apart, about);
  const aside = lengthOf(minus(apart, times(about, along)));
  const across = lengthOf(minus(off, times(about, dot(off, about))));
  return Math.abs(along) - aside / 2 - Math.abs(dot(off, about)) + (rises === null ? -across : dot(off, rises));
};

/** Of free places the two that are worth most, so far apart, mm; null where there are none. */
function bestPair(free: readonly Hand[], { least, most }: { readonly least: number; readonly most: number }, worth: Worth): readonly [Hand, Hand] | null {
  let best: { readonly hands: readonly [Hand, Hand]; readonly value: number } | null = null;
  for (const [index, one] of free.entries()) {
    for (const other of free.slice(index + 1)) {
      const apart = lengthOf(minus(other.at, one.at));
      const value = apart < least || apart > most ? -Infinity : worth(one.at, other.at);
      if (value > (best?.value ?? -Infinity)) best = { hands: [one, other], value };
    }
  }
  return best?.hands ?? null;
}
