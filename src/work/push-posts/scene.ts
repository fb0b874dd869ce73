import { chained, moved, placed, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import { nearestOf, sleeveEnds, slideWork, type Mark, type SceneBody, type Sliding, type WorkScene, tell } from '../../scene/kit/index.ts';

/** Share of the way that posts are drawn off. */
const OFF_SHARE = 0.34;
/** The count stands on the upper half, at this share of it. */
const COUNT_SHARE = 0.4;

const halfOf = ({ shape }: Part): number => (shape.form === 'tube' ? shape.length / 2 : 0);

/** Posts with their pencil marks, and pale where their feet will stand out of the lowest sleeves. */
export const scene: WorkScene = slideWork({
  drawnOff: (way) => way * OFF_SHARE,
  countPlace: (part) => [halfOf(part) * COUNT_SHARE, 0, 0],
  bodies: (sliding) => [...sliding.fresh.flatMap((id) => postMarks(sliding, id)), ...sliding.fresh.flatMap((id) => footStub(sliding, id))],
  marks: footMark,
});

/** A pencil mark on a post is a band of this width and thickness, mm. */
const MARK = { width: 4, thickness: 0.4 };

/** Two rings near the foot tell it from the other end, mm over the foot. */
const FOOT_RINGS = [12, 24];

/** The pencil marks of a post: its foot, and the lower ends of the sleeves, moved with the post. */
function postMarks({ model, hand, offsets }: Sliding, postId: string): readonly SceneBody[] {
  const { shape } = hand.part(postId);
  if (shape.form !== 'tube') return [];
  const band: Shape = { form: 'tube', length: MARK.width, outside: shape.outside + 2 * MARK.thickness, inside: shape.outside, holes: [] };
  return [...FOOT_RINGS, ...sleeveEnds(model, postId)].map((height, index) =>
    hand.prop({ partId: postId, id: `mark-${index + 1}` }, band, chained(moved(offsets.get(postId) ?? [0, 0, 0]), hand.pose(postId), moved([height - shape.length / 2, 0, 0])), 'present'));
}

/** The foot of a post where it will stand out of the lowest sleeve, as a pale reminder of where to stop. */
function footStub({ model, hand }: Sliding, postId: string): readonly SceneBody[] {
  const { shape } = hand.part(postId);
  const [first = 0] = sleeveEnds(model, postId);
  if (shape.form !== 'tube' || first <= 0) return [];
  return [hand.prop({ partId: postId, id: 'foot' }, { ...shape, length: first, holes: [] }, chained(hand.pose(postId), moved([(first - shape.length) / 2, 0, 0])), 'pale')];
}

/** How far a post will stand out at its foot, told beside the nearer one. */
function footMark({ model, hand, fresh }: Sliding): readonly Mark[] {
  const post = nearestOf(hand, fresh);
  const shape = post === undefined ? undefined : hand.part(post).shape;
  if (post === undefined || shape?.form !== 'tube') return [];
  const at = (height: number): Vec3 => placed(hand.pose(post), [height - shape.length / 2, 0, 0]);
  const [first = 0] = sleeveEnds(model, post);
  if (first <= 0) return [];
  return [{ mark: 'length', from: at(0), to: at(first), away: [0, 0, 110], told: tell.mm(first) }];
}
