import { dot, lengthOf, minus, placed, unit, type Vec3 } from '../../model/index.ts';
import {
  atMost, barMarks, footMark, halfOf, nearestOf, sleeveEnds, slideWork, throughBars, turnedBy, type Mark, type SceneBody, type Sliding, type WorkScene,
} from '../../scene/kit/index.ts';

/** So far off that the bars' ends are seen, and the pencil marks to which each is pushed. */
export const scene: WorkScene = slideWork({
  drawnOff: atMost(600),
  bodies: (sliding) => [...throughBars(sliding).flatMap((id) => barMarks(sliding, id)), ...firstHome(sliding)],
  marks: (sliding) => [...footMark(sliding, throughBars(sliding)), ...stop(sliding)],
});

/** The joints that go farthest, pale where they end up: each stands with its near edge on a mark. */
function firstHome(sliding: Sliding): readonly SceneBody[] {
  const { hand } = sliding;
  return farthestJoints(sliding).map((id) => ({ ...hand.body(id, 'pale'), id: `${id}#home`, kind: 'tool' }));
}

/** The joints over the bars of the slide that goes farthest, where no other one comes. */
function farthestJoints({ step, hand, moving }: Sliding): readonly string[] {
  const slides = step.motions.flatMap((motion) => (motion.kind === 'slide' ? [motion] : []));
  const joints = slides.map(({ by, closes }) => closes.flatMap((each) => {
    const way = unit(turnedBy(step.standing.pose, by));
    return each.is === 'sleeve' && !moving.includes(each.bar) ? [{ id: each.joint, at: dot(placed(hand.pose(each.joint), [0, 0, 0]), way) }] : [];
  }));
  const most = Math.max(...joints.flat().map(({ at }) => at));
  return joints.flat().filter(({ at }) => most - at < 1).map(({ id }) => id);
}

/** How much round a mark is enlarged, mm. */
const STOP_RADIUS = 75;

/** The mark that the leading joint nearest to the eye is pushed to, enlarged. */
function stop(sliding: Sliding): readonly Mark[] {
  const { model, hand } = sliding;
  const joint = nearestOf(hand, farthestJoints(sliding));
  if (joint === undefined) return [];
  const middle = placed(hand.pose(joint), [0, 0, 0]);
  const places = throughBars(sliding).flatMap((bar) => sleeveEnds(model, bar).map((end): Vec3 => placed(hand.pose(bar), [end - halfOf(hand.part(bar)), 0, 0])));
  const [nearest] = places.toSorted((a, b) => lengthOf(minus(a, middle)) - lengthOf(minus(b, middle)));
  return nearest === undefined ? [] : [{ mark: 'detail', at: nearest, radius: STOP_RADIUS }];
}
