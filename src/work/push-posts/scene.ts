import { chained, lengthOf, moved } from '../../model/index.ts';
import { barMarks, homeOnBars, footMark, footRingsHome, halfOf, markReached, slideWork, type SceneBody, type Sliding, type WorkScene } from '../../scene/kit/index.ts';

/** Share of the way that posts are drawn off. */
const OFF_SHARE = 0.34;
const drawnOff = (way: number): number => way * OFF_SHARE;
/** The count stands on the upper half, at this share of it. */
const COUNT_SHARE = 0.4;

/** Posts with their pencil marks, and pale, with their rings, how far their feet will stand out of the joint that the mark of this step is for. */
export const scene: WorkScene = slideWork({
  home: homeOnBars,
  drawnOff,
  countPlace: (part) => [halfOf(part) * COUNT_SHARE, 0, 0],
  bodies: (sliding) => [...sliding.fresh.flatMap((id) => barMarks(sliding, id)), ...sliding.fresh.flatMap((id) => footStub(sliding, id))],
  marks: (sliding) => footMark(sliding, sliding.fresh),
});

/** White between a post and its pale foot, mm. */
const WHITE = 2;

/** The foot of a post where it will stand out of the joint at its mark, as a pale reminder of where to stop. */
function footStub(sliding: Sliding, postId: string): readonly SceneBody[] {
  const { hand, step } = sliding;
  const { shape } = hand.part(postId);
  const mark = markReached(sliding, postId);
  if (shape.form !== 'tube' || mark === null) return [];
  // Only as far as the post does not lie there, drawn off its place as the picture has it.
  const off = drawnOff(Math.max(0, ...step.motions.flatMap((motion) => (motion.kind === 'slide' && motion.parts.includes(postId) ? [lengthOf(motion.by)] : []))));
  const first = Math.min(mark, off - WHITE);
  if (first <= 0) return [];
  return [
    hand.prop({ partId: postId, id: 'foot' }, { ...shape, length: first, holes: [] }, chained(hand.pose(postId), moved([(first - shape.length) / 2, 0, 0])), 'pale'),
    ...footRingsHome(sliding, postId, first),
  ];
}
