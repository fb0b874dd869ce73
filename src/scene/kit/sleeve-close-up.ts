import { chained, moved, placed, type Model, type Pose, type Shape } from '../../model/index.ts';
import type { Scene, SceneBody, View } from '../types.ts';
import { drilled, fastened, fromSleeveEnd, type Shown } from './round-a-pin.ts';
import { stageHand, type StageHand } from './stage.ts';
import { closeUpName, type StepGivens } from './work-scene.ts';

/** How far a pin and its nut are drawn off the joint, mm. */
const PULLED = { pin: 104, nut: 70 };
/** Length of post shown on either side of the pin, mm: more on the side of the foot. */
const POST_SHOWN = { foot: 90, top: 110 };
/** The drill bit stands over the sleeve by this much, mm. */
const BIT_OVER = 34;
const LOW_VIEW: View = { towardsEye: [0.5, -0.86, 0.25], up: [0, 0, 1] };

/** One joint by itself with a piece of its post. */
interface Corner {
  readonly hand: StageHand;
  readonly pinId: string;
  readonly nutId: string;
  readonly bodies: readonly SceneBody[];
}

/** One joint with a piece of its post while the bit goes through both. */
export const sleeveDrilled = (givens: StepGivens): Scene => atCorner(givens, (corner) => drilling(givens.model, corner));

/** One joint with a piece of its post, the pin and its wing nut drawn off. */
export const sleeveFastened = (givens: StepGivens): Scene => atCorner(givens, (corner) => fastened(givens.model, corner.hand, corner, PULLED));

function atCorner(givens: StepGivens, shownAt: (corner: Corner) => Shown): Scene {
  const corner = cornerOf(givens);
  const { bodies, marks } = shownAt(corner);
  return { id: closeUpName(givens.step), bodies: [...corner.bodies, ...bodies], marks, view: LOW_VIEW };
}

/** The corner whose sockets point away from the eye, so that the sleeve stands free. */
function cornerOf({ model, step, solids }: StepGivens): Corner {
  const corner = step.side === 'back' ? { x: 'left', y: 'back' } : { x: 'right', y: 'front' };
  const hand = stageHand(model, { ...step, drilled: model.parts.map((part) => part.id) }, solids);
  const lowest = model.parts.find(({ kind, place }) =>
    kind === 'joint-pin' && place.at === 'sleeve' && place.index === 1 && place.corner.x === corner.x && place.corner.y === corner.y);
  const joining = model.joinings.find((each) => each.by === 'post-pin' && each.pin === lowest?.id);
  if (joining?.by !== 'post-pin') throw new RangeError(`step ${step.number} (${step.key}) pins no post at its ${corner.x} ${corner.y}`);
  const { pin: pinId, nut: nutId, post, joint } = joining;
  return { hand, pinId, nutId, bodies: [postStub(model, hand, post, pinId), hand.body(joint, 'present')] };
}

function postStub(model: Model, hand: StageHand, postId: string, pinId: string): SceneBody {
  const { shape } = hand.part(postId);
  if (shape.form !== 'tube') throw new RangeError(`${postId} is no tube`);
  const middle = placed(hand.pose(pinId), [0, 0, -model.kit.joint.sleeveDiameter / 2]);
  const shift = (POST_SHOWN.top - POST_SHOWN.foot) / 2;
  const stub: Shape = { ...shape, length: POST_SHOWN.foot + POST_SHOWN.top, holes: [{ at: -shift, diameter: model.kit.jointPin.diameter }] };
  return hand.prop({ tool: 'post-stub' }, stub, chained(moved(middle), turnOnly(hand.pose(postId)), moved([shift, 0, 0])), 'present');
}

/** The bit right through both walls, its diameter, and how far from the sleeve's end. */
function drilling(model: Model, { hand, pinId }: Corner): Shown {
  const { joint } = model.kit;
  const pose = hand.pose(pinId);
  const { bodies, marks } = drilled(model, hand, pose, { through: joint.sleeveDiameter, over: BIT_OVER });
  // A pin's own −y runs up the post.
  const fromEnd = joint.sleeveBelow - joint.pinHeight;
  const sleeveEnd = placed(pose, [0, fromEnd, -joint.sleeveDiameter]);
  const axis = placed(pose, [0, 0, -joint.sleeveDiameter]);
  return {
    bodies,
    marks: [
      ...marks,
      fromSleeveEnd(model, pose, sleeveEnd, axis, fromEnd),
    ],
  };
}

/** A pose without its shift. */
const turnOnly = (pose: Pose): Pose => [...pose.slice(0, 12), 0, 0, 0, 1];
