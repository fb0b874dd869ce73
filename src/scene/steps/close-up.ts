import { chained, moved, placed, type Model, type Solids, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { plus, times, turnedBy } from '../directions.ts';
import { foldingOf, stageHand } from '../stage.ts';
import type { Mark, Scene } from '../types.ts';

/** How far a pin and its nut are drawn off the joint, mm. */
const PULLED = { pin: 104, nut: 70 };
/** Length of post shown with the joint, mm. */
const POST_SHOWN = 190;

/** One joint by itself with its pin and wing nut, seen so that both show; null for steps that need no closer look. */
export function closeUpScene(model: Model, step: Step, solids: Solids): Scene | null {
  if (step.action !== 'pin-posts' || step.side === null) return null;
  // The corner whose sockets point away from the eye, so that the sleeve stands free.
  const corner = `${step.side === 'front' ? 'right' : 'left'}-${step.side}`;
  const hand = stageHand(model, step, solids, foldingOf(step.folded));
  const pin = hand.part(`joint-pin-${corner}-1`);
  const joining = model.joinings.find((each) => each.by === pin.id);
  const joint = joining?.parts.find((id) => id.includes('/joint-'));
  const post = hand.part(`post-${corner}`);
  if (joint === undefined || post.shape.form !== 'tube') return null;

  const nutId = `wing-nut-${corner}-1`;
  const way = (id: string): Vec3 => turnedBy(hand.pose(id), [0, 0, 1]);
  const off = (id: string): Vec3 => times(way(id), id === pin.id ? PULLED.pin : PULLED.nut);
  const middle = placed(hand.pose(pin.id), [0, 0, -model.kit.joint.sleeveDiameter / 2]);
  const stub = { ...post.shape, length: POST_SHOWN, holes: [{ at: 0, diameter: model.kit.jointPin.diameter }] };
  const along = turnedBy(hand.pose(post.id), [1, 0, 0]);
  const stubPose = chained(moved(plus(middle, times(along, POST_SHOWN * 0.1))), turnOnly(hand.pose(post.id)));
  const arrow = (id: string, tip: number): Mark => ({
    mark: 'arrow',
    path: [plus(placed(hand.pose(id), [0, 0, tip]), off(id)), placed(hand.pose(id), [0, 0, 0])],
  });
  return {
    id: `step:${step.number}:a`,
    bodies: [
      hand.prop('post-stub', { ...stub, holes: [{ at: -POST_SHOWN * 0.1, diameter: model.kit.jointPin.diameter }] }, stubPose, 'present'),
      hand.body(joint, 'present'),
      hand.body(pin.id, 'new', off(pin.id)),
      hand.body(nutId, 'new', off(nutId)),
    ],
    marks: [
      arrow(pin.id, -model.kit.jointPin.length),
      arrow(nutId, 0),
      { mark: 'order', at: plus(placed(hand.pose(pin.id), [0, 0, 0]), off(pin.id)), text: '1' },
      { mark: 'order', at: plus(placed(hand.pose(nutId), [0, 0, 0]), off(nutId)), text: '2' },
    ],
    view: { towardsEye: [0.5, -0.86, 0.25], up: [0, 0, 1] },
  };
}

/** A pose without its shift. */
const turnOnly = (pose: readonly number[]): readonly number[] => [...pose.slice(0, 12), 0, 0, 0, 1];
