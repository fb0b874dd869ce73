import { chained, lengthOf, moved, placed, plus, times, undone, type Model, type Part, type Pose, type Shape, type Vec3 } from '../../model/index.ts';
import type { Scene, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import { standOf, viewOf } from './stand.ts';
import { nearestOf } from './nearest.ts';
import { drilled, fastened, type Shown } from './round-a-pin.ts';
import { fromSleeveEnd, type InSleeve } from './sleeve-measured.ts';
import { sleeveReach } from './sleeve-ends.ts';
import { stageHand, type StageHand } from './stage.ts';
import { closeUpName, type StepGivens } from './work-scene.ts';

/** Length of bar, and sides of a panel's piece, that are shown round a pin, mm. */
const BAR_SHOWN = 200;
const PIECE = { along: 84, high: 40 };
/** How far a pin and its nut are drawn off, and how far the bit stands over what it drills, mm. */
const PULLED = { pin: 104, nut: 70 };
const BIT_OVER = 34;

/** One pin with what it holds, by itself. */
interface Pinned {
  readonly hand: StageHand;
  readonly pinId: string;
  readonly nutId: string;
  readonly held: readonly Part[];
}

/** The hole for one of the pins that a step drills for, right through what the pin will hold, measured from the end of its sleeve. Null where it drills for none. */
export const pinDrilled = (givens: StepGivens): Scene | null => atPin(givens, givens.step.drillsFor, (pinned) => {
  const shown = drilled(givens.model, pinned.hand, pinned.hand.pose(pinned.pinId), { through: thicknessOf(pinned), over: BIT_OVER });
  const place = placeInSleeve(givens.model, pinned);
  const measured = place === null ? { bodies: [], marks: [] } : fromSleeveEnd(givens.model, pinned.hand, place, besidePin(pinned, readerOf(givens)).towardsEye);
  return { bodies: [...shown.bodies, ...measured.bodies], marks: [...shown.marks, ...measured.marks] };
});

/** Where a pin goes through a sleeve, and the end of that which it is nearer to; null where there is no sleeve, or it goes through its end. */
function placeInSleeve(model: Model, pinned: Pinned): InSleeve | null {
  const { hand, pinId, held } = pinned;
  const sleeve = model.connections.find((each) => each.is === 'sleeve' && [each.bar, each.joint].every((id) => held.some((part) => part.id === id)));
  if (sleeve?.is !== 'sleeve') return null;
  const [bar, pin, joint] = [hand.pose(sleeve.bar), hand.pose(pinId), { shape: hand.part(sleeve.joint).shape, pose: hand.pose(sleeve.joint) }];
  const along = (point: Vec3): number => placed(undone(bar), point)[0];
  const [middle, hole] = [along(placed(joint.pose, [0, 0, 0])), along(placed(pin, [0, 0, 0]))];
  const way = turnedBy(bar, [1, 0, 0]);
  const ends = [middle - sleeveReach(joint, way), middle + sleeveReach(joint, times(way, -1))];
  const far = Math.round(Math.min(...ends.map((end) => Math.abs(end - hole))) * 10) / 10;
  const end = ends.find((each) => Math.abs(Math.abs(each - hole) - far) < 0.06) ?? hole;
  if (far === 0) return null;
  const axis = placed(bar, [hole, 0, 0]);
  return { pin, joint: joint.shape, far, axis, inwards: times(way, Math.sign(hole - end)) };
}

/** One of the pins that a step puts in, with its nut. Null where none is new. */
export const pinFastened = (givens: StepGivens): Scene | null =>
  atPin(givens, givens.step.newParts.flatMap(({ ids }) => ids), (pinned) => fastened(givens.model, pinned.hand, pinned, PULLED, besidePin(pinned, readerOf(givens)).towardsEye));

function atPin(givens: StepGivens, ids: readonly string[], shownAt: (pinned: Pinned) => Shown): Scene | null {
  const { model, step, solids } = givens;
  const hand = stageHand(model, { ...step, drilled: model.parts.map((part) => part.id) }, solids);
  const pins = model.connections.flatMap((each) => (each.is === 'pin' && ids.includes(each.pin) ? [each] : []));
  const nearest = nearestOf(hand, pins.map(({ pin }) => pin), viewOf(model, step));
  const connection = pins.find(({ pin }) => pin === nearest);
  if (connection === undefined) return null;
  const pinned: Pinned = { hand, pinId: connection.pin, nutId: connection.nut, held: connection.holds.map((id) => hand.part(id)) };
  const shown = shownAt(pinned);
  return { id: closeUpName(step), bodies: [...pinned.held.map((part) => pieceOf(pinned, part)), ...endsNear(givens, pinned), ...shown.bodies], marks: shown.marks, view: besidePin(pinned, readerOf(givens)) };
}

/** Feet and caps that are in the end of a bar shown round a pin, where that much of it is shown. */
function endsNear({ model, step }: StepGivens, { hand, pinId, held }: Pinned): readonly SceneBody[] {
  const pin = placed(hand.pose(pinId), [0, 0, 0]);
  return model.connections.flatMap((each): SceneBody[] => {
    if ((each.is !== 'foot' && each.is !== 'cap') || !held.some(({ id }) => id === each.bar)) return [];
    const id = each.is === 'foot' ? each.foot : each.cap;
    const isNear = lengthOf(plus(placed(hand.pose(id), [0, 0, 0]), times(pin, -1))) < BAR_SHOWN / 2;
    return step.present.includes(id) && isNear ? [hand.body(id, 'present')] : [];
  });
}

/** On which side of a pin the worker stands: the reader's (1), or the other one where he has walked round (−1). */
const readerOf = ({ model, step }: StepGivens): 1 | -1 => (standOf(model, step) === 'behind' ? -1 : 1);

/** From beside the pin, so that both its ends are seen, on the reader's side (1) or that of one who has walked round (−1); an upright one from beside the bar as well, which would hide its nut. */
function besidePin({ hand, pinId, held }: Pinned, reader: 1 | -1): Scene['view'] {
  const out = turnedBy(hand.pose(pinId), [0, 0, 1]);
  const isUpright = Math.abs(out[2]) > 0.7;
  const bar = held.find(({ shape }) => shape.form === 'tube');
  const across: Vec3 = isUpright ? besideBar(bar === undefined ? [1, 0, 0] : turnedBy(hand.pose(bar.id), [1, 0, 0])) : times(sideways(out), reader);
  return { towardsEye: plus(plus(times(across, 0.9), times(out, isUpright ? 0.1 * Math.sign(out[2]) : 0.45)), [0, 0, 0.3]), up: [0, 0, 1] };
}

/** From beside a level bar, a little along it; from the reader's side of one that stands. */
function besideBar(bar: Vec3): Vec3 {
  if (Math.abs(bar[2]) > 0.7) return [0.5, -0.86, 0];
  const square = sideways(bar);
  const along = bar[0] * 0.5 - bar[1] * 0.86 > 0 ? bar : times(bar, -1);
  return plus(times(square, 0.9), times(along, 0.44));
}

/** Level and square to a direction, on the reader's side. */
function sideways([x, y]: Vec3): Vec3 {
  const length = Math.hypot(x, y);
  const square: Vec3 = [y / length, -x / length, 0];
  return square[0] * 0.5 - square[1] * 0.86 > 0 ? square : times(square, -1);
}

/** A part as far as it is shown round a pin: a joint whole, a bar's length, a piece of a panel. */
function pieceOf({ hand, pinId }: Pinned, { id, shape }: Part): SceneBody {
  const pin = hand.pose(pinId);
  switch (shape.form) {
    case 'tube': return hand.prop({ tool: `piece-of-${id}` }, ...stubOf(shape, hand.pose(id), pin), 'present');
    case 'plate': return hand.prop({ tool: `piece-of-${id}` }, platePiece(shape.thickness, shape.holes[0]?.diameter ?? 0), chained(pin, moved([0, 0, -shape.thickness])), 'present');
    case 'folded': return hand.prop({ tool: `piece-of-${id}` }, platePiece(shape.pattern.thickness, shape.pattern.holes[0]?.diameter ?? 0), chained(pin, moved([0, 0, -shape.pattern.thickness])), 'present');
    default: return hand.body(id, 'present');
  }
}

const platePiece = (thickness: number, diameter: number): Shape =>
  ({ form: 'plate', width: PIECE.along, height: PIECE.high, thickness, holes: [{ at: [0, 0], diameter }] });

/** The length of a bar round its hole for a pin: no further than its end. */
function stubOf(shape: Extract<Shape, { form: 'tube' }>, bar: Pose, pin: Pose): [Shape, Pose] {
  const along = placed(undone(bar), placed(pin, [0, 0, 0]))[0];
  const hole = shape.holes.reduce((best, each) => (Math.abs(each.at - along) < Math.abs(best.at - along) ? each : best), shape.holes[0] ?? { at: along, diameter: 0 });
  const from = Math.max(-shape.length / 2, hole.at - BAR_SHOWN / 2);
  const to = Math.min(shape.length / 2, hole.at + BAR_SHOWN / 2);
  const middle = (from + to) / 2;
  return [{ ...shape, length: to - from, holes: shape.holes.length === 0 ? [] : [{ ...hole, at: hole.at - middle }] }, chained(bar, moved([middle, 0, 0]))];
}

/** Of all that a pin goes through, mm: a joint's sleeve round a bar, or a panel and a bar. */
function thicknessOf({ held }: Pinned): number {
  const sleeves = held.flatMap(({ shape }) => (shape.form === 'joint' ? [shape.joint.sleeveDiameter] : shape.form === 'ported-joint' ? [shape.joint.sleeveDiameter] : []));
  if (sleeves.length > 0) return Math.max(...sleeves);
  return held.reduce((sum, { shape }) => sum + ownThickness(shape), 0);
}

function ownThickness(shape: Shape): number {
  switch (shape.form) {
    case 'tube': return shape.outside;
    case 'plate': return shape.thickness;
    case 'folded': return shape.pattern.thickness;
    default: return 0;
  }
}
