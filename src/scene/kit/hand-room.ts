import { dot, lengthOf, minus, placed, plus, times, unit, type PartKind, type Vec3 } from '../../model/index.ts';
import { FASTENERS, type Step } from '../../plan/index.ts';
import type { Mark, Scene, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import type { StageHand } from './stage.ts';
import { isMet, nearestFar, placedBodies } from './triangles.ts';

/** A hand that holds is so far from all that is drilled, punched, pinned, bent or moved in the step, mm: a hand's breadth and a little more (common practice, no source). */
export const CLEAR_OF_WORK = 100;
/** A hand's breadth, and the room that it and the wrist need over what it is on, mm (common practice, no source). */
export const BREADTH = 90;
const WRIST = 100;
/** No farther is asked how near anything is, mm. */
const FAR = 1000;

type Hand = Extract<Mark, { mark: 'hand' }>;

/** What is free for hands in a step. */
export interface HandRoom {
  /** How far a place is from what is drilled, punched, pinned, bent or moved in the step, mm; no more than 1000. */
  farFromWork(place: Vec3): number;
  /** Whether a hand at a place is seen, and nothing is where it would be with its wrist on a bar that goes that way. */
  isBare(hand: Hand, along: Vec3): boolean;
  /** Whether a hand covers no arrow and nothing that a number points to. */
  isClearOnPaper(hand: Hand): boolean;
}

/** `moving` is all that comes or bends in the step, its pins left out. */
export function handRoom(stage: StageHand, step: Step, { bodies, marks, view }: Scene, moving: readonly Moving[]): HandRoom {
  const ways = moving.map(({ bodies: those, off }) => ({ off, placed: placedBodies(those) }));
  const axes = axesOf(stage, step);
  const told = marks.flatMap((mark) => (mark.mark === 'arrow' ? pairs(mark.path) : mark.mark === 'order' || mark.mark === 'label' ? [[mark.at, mark.at] as const] : []))
    .map(([from, to]) => [flat(from, view.towardsEye), flat(to, view.towardsEye)] as const);
  const stands = once(() => placedBodies(bodies));
  return {
    farFromWork: (place) => Math.min(
      ...ways.flatMap(({ off, placed: those }) => off.map((each) => nearestFar(those, minus(place, each), FAR))),
      ...axes.map(([from, to]) => farFrom(place, from, to)), FAR),
    isBare: ({ at, onto }, along) => {
      const off = minus(at, times(onto, OFF));
      return !isMet(stands(), off, view.towardsEye, FAR) && [-0.5, 0, 0.5].every((share) => !isMet(stands(), plus(off, times(along, share * BREADTH)), times(onto, -1), WRIST));
    },
    isClearOnPaper: ({ at, onto }) => {
      const middle = flat(minus(at, times(onto, BREADTH / 3)), view.towardsEye);
      return told.every(([from, to]) => farFrom(middle, from, to) >= BREADTH);
    },
  };
}

/** Bodies, and how far off they are in several moments of a step, mm. */
export interface Moving {
  readonly bodies: readonly SceneBody[];
  readonly off: readonly Vec3[];
}

/** What slides in a step on its way, its pins and cords left out. */
export function slidingParts(stage: StageHand, { motions, standing }: Step): readonly Moving[] {
  return motions.flatMap((motion): readonly Moving[] => {
    if (motion.kind !== 'slide') return [];
    const parts = motion.parts.filter((id) => !SMALL.has(stage.part(id).kind));
    const by = turnedBy(standing.pose, motion.by);
    const moments = Math.max(1, Math.ceil(lengthOf(by) / MOMENT));
    return parts.length === 0 ? [] : [{ bodies: parts.map((id) => stage.body(id, 'new')), off: Array.from({ length: moments + 1 }, (_, index) => times(by, -index / moments)) }];
  });
}

/** Nobody is hurt by these as they come, nor holds work by them. */
export const SMALL: ReadonlySet<SceneBody['kind']> = new Set<PartKind>([...FASTENERS, 'fitting']);
/** What slides is looked at every so many mm of its way. */
const MOMENT = 60;
/** Off the face that a hand is on, mm. */
const OFF = 1;
/** So far over a hole there are the tool and what swings at it, and so far under its pin the nut or the bit's point, mm. */
const TOOL = { over: 200, under: 70 } as const;

/** Where every pin that the step puts in or makes a hole for goes, with its tool. */
function axesOf(stage: StageHand, { drillsFor, newParts }: Step): readonly (readonly [Vec3, Vec3])[] {
  return [...drillsFor, ...newParts.flatMap(({ ids }) => ids)].flatMap((id) => {
    const { shape } = stage.part(id);
    return shape.form === 'pin' ? [[placed(stage.pose(id), [0, 0, TOOL.over]), placed(stage.pose(id), [0, 0, -shape.length - TOOL.under])] as const] : [];
  });
}

function once<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | null = null;
  return () => (made ??= { value: make() }).value;
}

/** A place as it is seen: what lies behind it on the way from the eye is the same place. */
function flat(place: Vec3, towardsEye: Vec3): Vec3 {
  const eye = unit(towardsEye);
  return minus(place, times(eye, dot(place, eye)));
}

const pairs = (path: readonly Vec3[]): readonly (readonly [Vec3, Vec3])[] => path.slice(1).map((to, index) => [path[index] ?? to, to]);

/** From a place to the nearest of a straight line between two others, mm. */
function farFrom(place: Vec3, from: Vec3, to: Vec3): number {
  const way = minus(to, from);
  const long = lengthOf(way);
  if (long === 0) return lengthOf(minus(place, from));
  const share = Math.min(1, Math.max(0, dot(way, minus(place, from)) / long ** 2));
  return lengthOf(minus(place, plus(from, times(way, share))));
}
