import { chained, moved } from '../../model/index.ts';
import { barMarks, footMark, halfOf, sleeveEnds, slideWork, type SceneBody, type Sliding, type WorkScene } from '../../scene/kit/index.ts';

/** Share of the way that posts are drawn off. */
const OFF_SHARE = 0.34;
/** The count stands on the upper half, at this share of it. */
const COUNT_SHARE = 0.4;

/** Posts with their pencil marks, and pale where their feet will stand out of the lowest sleeves. */
export const scene: WorkScene = slideWork({
  drawnOff: (way) => way * OFF_SHARE,
  countPlace: (part) => [halfOf(part) * COUNT_SHARE, 0, 0],
  bodies: (sliding) => [...sliding.fresh.flatMap((id) => barMarks(sliding, id)), ...sliding.fresh.flatMap((id) => footStub(sliding, id))],
  marks: (sliding) => footMark(sliding, sliding.fresh),
});

/** The foot of a post where it will stand out of the lowest sleeve, as a pale reminder of where to stop. */
function footStub({ model, hand }: Sliding, postId: string): readonly SceneBody[] {
  const { shape } = hand.part(postId);
  const [first = 0] = sleeveEnds(model, postId);
  if (shape.form !== 'tube' || first <= 0) return [];
  return [hand.prop({ partId: postId, id: 'foot' }, { ...shape, length: first, holes: [] }, chained(hand.pose(postId), moved([(first - shape.length) / 2, 0, 0])), 'pale')];
}
