import { placed, plus, times, type Connection, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, View } from '../types.ts';
import { barMarks, halfOf } from './bar-marks.ts';
import { turnedBy } from './directions.ts';
import { boxRound } from './extent.ts';
import { nearestOf } from './nearest.ts';
import type { Slide } from './on-the-way.ts';
import { partsShown } from './parts-shown.ts';
import { sleeveEnds } from './sleeve-ends.ts';
import { stageHand, type StageHand } from './stage.ts';
import { homeName, type StepGivens } from './work-scene.ts';

type Sleeve = Extract<Connection, { readonly is: 'sleeve' }>;

/** Lengths stand off the work, and off each other, by these shares of how long the bars are. */
const OFF = { first: 0.07, next: 0.075 } as const;
/** A bar is level where its direction rises no more than this (the sine). */
const LEVEL = 0.3;

/**
 * How the work stands when joints have been pushed over level bars, or bars through joints, as far as their marks: seen level from
 * beside the bars, each mark of the nearest told from its foot. Null where nothing of that kind is done.
 */
export function homeOnBars({ model, step, solids }: StepGivens): Scene | null {
  const hand = stageHand(model, step, solids);
  const slides = step.motions.filter((motion): motion is Slide => motion.kind === 'slide');
  const sleeves = slides.flatMap(({ closes }) => closes.filter((each): each is Sleeve => each.is === 'sleeve'));
  const bar = nearestOf(hand, [...new Set(sleeves.map((each) => each.bar))]);
  if (bar === undefined) return null;
  const way = turnedBy(hand.pose(bar), [1, 0, 0]);
  const view = besideBar(way);
  if (view === null) return null;
  const shown = partsShown(step);
  const moved = new Set(slides.flatMap(({ parts }) => parts));
  const bars = [...new Set(model.connections.flatMap((each) => (each.is === 'sleeve' && shown.includes(each.bar) && shown.includes(each.joint) ? [each.bar] : [])))];
  const bodies = [...shown.map((id) => hand.body(id, moved.has(id) ? 'new' : 'present')), ...bars.flatMap((id) => barMarks({ model, hand, offsets: new Map() }, id))];
  return { id: homeName(step), bodies, view, marks: lengthsFromFoot(hand, bar, sleeveEnds(model, bar, sleeves.filter((each) => each.bar === bar).map(({ joint }) => joint)), boxRound(bodies).min[2]) };
}

/** Level, square to a level bar, from the reader's side; null where the bar stands. */
function besideBar(way: Vec3): View | null {
  if (Math.abs(way[2]) > LEVEL) return null;
  return { towardsEye: Math.abs(way[0]) > Math.abs(way[1]) ? [0, -1, 0] : [1, 0, 0], up: [0, 0, 1] };
}

/** Under the work, one below the other. */
function lengthsFromFoot(hand: StageHand, bar: string, places: readonly number[], low: number): readonly Mark[] {
  const half = halfOf(hand.part(bar));
  const at = (height: number): Vec3 => placed(hand.pose(bar), [height - half, 0, 0]);
  const down = at(0)[2] - low;
  return places.filter((place) => place > 0).map((place, index): Mark => ({
    mark: 'length', from: at(0), to: at(place), away: plus([0, 0, -down], times([0, 0, -2 * half], OFF.first + OFF.next * index)), told: tell.mm(place), dots: true,
  }));
}
