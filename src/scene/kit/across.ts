import { cross, dot, lengthOf, minus, placed, plus, times, unit, undone, type Connection, type Model, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, View } from '../types.ts';
import type { Step } from '../../plan/index.ts';
import { turnedBy } from './directions.ts';
import { stageHand, type StageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';
import { homeName, type StepGivens } from './work-scene.ts';

type Pin = Extract<Connection, { readonly is: 'pin' }>;
type Tube = Extract<Shape, { readonly form: 'tube' }>;
type Plate = Extract<Shape, { readonly form: 'plate' }>;

/** Lengths stand off the panel by this share of its width. */
const OFF = 0.12;
/** An edge nearer to a bar's side than this is told by the picture alone, mm. */
const LEAST = 1;
/** A bar is upright where its direction rises more than this (the sine). */
const UPRIGHT = 0.7;

/**
 * A flat panel on the bars that it will be pinned to, cut through a hole, seen along the bars: the hole stands over the bar's
 * middle, and the panel's edges so far past the bars. Null where a step brings no such panel.
 */
export function homeAcrossBars({ model, step, solids }: StepGivens): Scene | null {
  const fresh = new Set(step.newParts.flatMap(({ ids }) => ids));
  const hand = stageHand(model, step, solids);
  const pins = model.connections.filter((each): each is Pin => each.is === 'pin');
  const panel = pins.flatMap(({ holds }) => holds).find((id) => fresh.has(id) && hand.part(id).shape.form === 'plate');
  if (panel === undefined) return homeOnHinge(model, step, hand, fresh);
  const own = pins.filter(({ holds }) => holds.includes(panel));
  const bars = [...new Set(own.flatMap(({ holds }) => holds.filter((id) => hand.part(id).shape.form === 'tube')))];
  const [first, pin] = [bars[0], own[0]];
  if (first === undefined || pin === undefined) return null;
  const view = alongBars(turnedBy(hand.pose(first), [1, 0, 0]));
  const plane = { at: placed(hand.pose(pin.pin), [0, 0, 0]), towardsEye: view.towardsEye };
  const bodies = [...bars.flatMap((id) => hand.bodyBehind(id, 'present', plane) ?? []), ...[hand.bodyBehind(panel, 'new', plane) ?? []].flat()];
  return { id: homeName(step), bodies, view, marks: pastBars(hand, hand.part(panel), bars, view, plane.at) };
}

/** A flat panel on the first of its hinges, cut through the hole that the hinge's peg stands in, seen along its axis. Null where a step brings no such panel. */
function homeOnHinge(model: Model, step: Step, hand: StageHand, fresh: ReadonlySet<string>): Scene | null {
  const hinge = model.connections.find((each) => each.is === 'hinge' && each.leaves.some((id) => fresh.has(id)));
  if (hinge?.is !== 'hinge') return null;
  const panel = hinge.leaves.find((id) => fresh.has(id)) ?? hinge.leaves[1];
  const { shape } = hand.part(panel);
  if (shape.form !== 'plate') return null;
  const middle = placed(hand.pose(hinge.hinge), [0, 0, 0]);
  const [hole] = shape.holes.map(({ at: [x, y] }) => placed(hand.pose(panel), [x, y, 0])).toSorted((a, b) => lengthOf(minus(a, middle)) - lengthOf(minus(b, middle)));
  if (hole === undefined) return null;
  const view = alongBars(turnedBy(step.standing.pose, hinge.axis));
  const plane = { at: hole, towardsEye: view.towardsEye };
  const bodies = [...hinge.leaves.filter((id) => id !== panel), hinge.hinge, panel].flatMap((id) => hand.bodyBehind(id, id === panel ? 'new' : 'present', plane) ?? []);
  return { id: homeName(step), bodies, view, marks: [] };
}

function alongBars(bar: Vec3): View {
  const towardsEye = unit(dot(bar, STANDARD_VIEW.towardsEye) < 0 ? times(bar, -1) : bar);
  return { towardsEye, up: Math.abs(towardsEye[2]) > UPRIGHT ? [0, 1, 0] : [0, 0, 1] };
}

/** How far each edge of the panel stands past the side of the bar that is nearest to it, where both are cut. */
function pastBars(hand: StageHand, { id, shape }: Part, bars: readonly string[], { towardsEye }: View, at: Vec3): readonly Mark[] {
  if (shape.form !== 'plate') return [];
  const pose = hand.pose(id);
  const out = turnedBy(pose, [0, 0, 1]);
  const across = unit(cross(out, towardsEye));
  const [edge, middle] = [halfAcross(shape, turnedBy(undone(pose), across)), placed(pose, [0, 0, 0])];
  const along = (point: Vec3): number => dot(minus(point, middle), across);
  const places = bars.map((bar) => ({ at: along(placed(hand.pose(bar), [0, 0, 0])), half: (hand.part(bar).shape as Tube).outside / 2 })).toSorted((a, b) => a.at - b.at);
  const outermost = [places[0], places.at(-1)];
  // On the far face from the bars, in the plane of the cut.
  const isOver = dot(minus(middle, placed(hand.pose(bars[0] ?? id), [0, 0, 0])), out) > 0;
  const level = isOver ? shape.thickness : 0;
  const on = (far: number): Vec3 => plus(plus(plus(middle, times(across, far)), times(out, level)), times(towardsEye, dot(minus(at, middle), towardsEye)));
  return outermost.flatMap((place, index): readonly Mark[] => {
    const side = index === 0 ? -1 : 1;
    if (place === undefined) return [];
    const [inner, outer] = [place.at + side * place.half, side * edge];
    const past = Math.round(Math.abs(outer - inner) * 10) / 10;
    return (outer - inner) * side < LEAST ? [] : [{ mark: 'length', from: on(inner), to: on(outer), away: times(out, (isOver ? 1 : -1) * OFF * 2 * edge), told: tell.mm(past), dots: true }];
  });
}

/** Half of a plate's side across, mm. */
const halfAcross = ({ width, height }: Plate, [x]: Vec3): number => (Math.abs(x) > 0.5 ? width : height) / 2;
