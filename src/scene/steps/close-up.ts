import { chained, moved, placed, type Model, type Pose, type Shape, type Solids } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { times, turnedBy } from '../directions.ts';
import { plateCloseUp } from './plate-close-up.ts';
import { drilled, fastened, type Shown } from './round-a-pin.ts';
import { foldingOf, stageHand, type StageHand } from '../stage.ts';
import type { Scene, SceneBody, View } from '../types.ts';

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

/** What the whole view of a step hides or shows too small: drilling through, pin and wing nut. Null for other steps. */
export function closeUpScene(model: Model, step: Step, solids: Solids): Scene | null {
  if (step.side === null || step.standing.name === 'upright') return plateCloseUp(model, step, solids);
  if (step.action !== 'pin-posts' && step.action !== 'drill') return null;
  const corner = cornerOf(model, step, solids);
  const { bodies, marks } = step.action === 'drill' ? drilling(model, corner) : fastened(model, corner.hand, corner, PULLED);
  return { id: `step:${step.number}:a`, bodies: [...corner.bodies, ...bodies], marks, view: LOW_VIEW };
}

/** The corner whose sockets point away from the eye, so that the sleeve stands free. */
function cornerOf(model: Model, step: Step, solids: Solids): Corner {
  const corner = step.side === 'back' ? { x: 'left', y: 'back' } : { x: 'right', y: 'front' };
  const hand = stageHand(model, { ...step, drilled: model.parts.map((part) => part.id) }, solids, foldingOf(step.folded));
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
      { mark: 'length', from: sleeveEnd, to: axis, away: times(turnedBy(pose, [0, 0, -1]), joint.sleeveDiameter * 1.1), text: String(Math.round(fromEnd * 2) / 2) },
    ],
  };
}

/** A pose without its shift. */
const turnOnly = (pose: Pose): Pose => [...pose.slice(0, 12), 0, 0, 0, 1];
