import { placed, type Model } from '../../model/index.ts';

/** Heights of the lower ends of the sleeves on a post, over its foot, mm: as far under the pins as the joint has it. */
export function sleeveEnds(model: Model, postId: string): readonly number[] {
  const { joint } = model.kit;
  const pins = model.joinings.flatMap((each) => (each.by === 'post-pin' && each.post === postId ? [each.pin] : []));
  return model.parts.filter((part) => pins.includes(part.id))
    .map((part) => placed(part.pose, [0, 0, 0])[2] + joint.pinHeight - joint.sleeveBelow)
    .sort((a, b) => a - b);
}
