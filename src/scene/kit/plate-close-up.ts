import { chained, moved, plus, times, type Model, type Shape, type Vec3 } from '../../model/index.ts';
import type { Scene, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import { drilled, fastened, type Shown } from './round-a-pin.ts';
import { stageHand, type StageHand } from './stage.ts';
import { closeUpName, type StepGivens } from './work-scene.ts';

/** A piece of plate and tube round one pin, mm. */
const PIECE = { along: 84, high: 40 };
const PULLED = { pin: 85, nut: 55 };
/** The drill bit stands over the panel by this much, mm. */
const BIT_OVER = 30;

/** The hole for one pin of a plate, through plate and tube. Null where no pin is drilled for. */
export const plateDrilled = (givens: StepGivens): Scene | null =>
  atPin(givens, givens.step.drillsFor[0], (hand, pinId) => drilling(givens.model, hand, pinId));

/** One pin of a plate with its nut. Null where no pin is new. */
export function plateFastened(givens: StepGivens): Scene | null {
  const { model, step } = givens;
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  const pin = model.parts.find(({ id, kind }) => kind === 'joint-pin' && fresh.includes(id));
  return atPin(givens, pin?.id, (hand, pinId) => fastened(model, hand, { pinId, nutId: nutOf(model, pinId) }, PULLED));
}

function atPin({ model, step, solids }: StepGivens, pinId: string | undefined, shownAt: (hand: StageHand, pinId: string) => Shown): Scene | null {
  if (pinId === undefined) return null;
  const hand = stageHand(model, { ...step, drilled: model.parts.map((part) => part.id) }, solids);
  const shown = shownAt(hand, pinId);
  // From beside the plate, so that both its sides are seen.
  const across = turnedBy(hand.pose(pinId), [1, 0, 0]);
  const out = turnedBy(hand.pose(pinId), [0, 0, 1]);
  const towardsEye = plus(plus(times(across, 0.8), times(out, 0.55)), [0, 0, 0.35]);
  return { id: closeUpName(step), bodies: [...pieces(model, hand, pinId), ...shown.bodies], marks: shown.marks, view: { towardsEye, up: [0, 0, 1] } };
}

/** The wing nut on a pin. */
function nutOf({ joinings }: Model, pinId: string): string {
  const joining = joinings.find((each) => each.by === 'plate-pin' && each.pin === pinId);
  if (joining?.by !== 'plate-pin') throw new RangeError(`${pinId} holds no flat panel`);
  return joining.nut;
}

/** In the pin's own coordinates: the plate under its head, the tube under the plate. */
function pieces(model: Model, hand: StageHand, pinId: string): readonly SceneBody[] {
  const { kit } = model;
  const hole = kit.jointPin.diameter;
  const pose = hand.pose(pinId);
  const plate: Shape = { form: 'plate', width: PIECE.along, height: PIECE.high, thickness: kit.panel.thickness, holes: [{ at: [0, 0], diameter: hole }] };
  const tube: Shape = { form: 'tube', length: PIECE.along * 2.4, outside: kit.tube.outsideDiameter, inside: kit.tube.outsideDiameter - 2 * kit.tube.wall, holes: [{ at: 0, diameter: hole }] };
  const tubeMiddle: Vec3 = [0, 0, -kit.panel.thickness - kit.tube.outsideDiameter / 2 - 0.1];
  return [
    hand.prop({ tool: 'plate-piece' }, plate, chained(pose, moved([0, 0, -kit.panel.thickness])), 'present'),
    hand.prop({ tool: 'tube-piece' }, tube, chained(pose, moved(tubeMiddle), QUARTER_ABOUT_X), 'present'),
  ];
}

/** Turns a tube's own holes, along y, to the pin's z. */
const QUARTER_ABOUT_X = [1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1];

const drilling = (model: Model, hand: StageHand, pinId: string): Shown =>
  drilled(model, hand, hand.pose(pinId), { through: model.kit.panel.thickness + model.kit.tube.outsideDiameter, over: BIT_OVER });
