import { placed, type Vec3 } from '../../model/index.ts';
import {
  atMost, barMarks, carryingHands, fromFoot, halfOf, homeOnBars, nearestOf, sleeveEnds, slideWork, throughBars, type Mark, type SceneBody, type Sliding, type WorkScene,
} from '../../scene/kit/index.ts';

/** So far off that the bars' ends are seen, and the pencil marks to which each is pushed. */
export const scene: WorkScene = slideWork({
  home: homeOnBars,
  drawnOff: atMost(600),
  // Bars that come with it are counted in the margin: over them lie the ways of the joints.
  counts: () => [],
  bodies: (sliding) => [...throughBars(sliding).flatMap((id) => barMarks(sliding, id)), ...firstHome(sliding)],
  marks: (sliding) => {
    const lengths = stopLengths(sliding);
    return [...carryingHands(sliding), ...lengths, ...(lengths.length > 1 ? [] : stopEnlarged(sliding))];
  },
});

/** Where a joint that moves comes to stand on a bar: with its near edge so far from the bar's foot, mm. */
interface Stop {
  readonly joint: string;
  readonly bar: string;
  readonly fromFoot: number;
  readonly place: Vec3;
}

/** The stops of all that moves, those farthest along the way first. */
function stops({ model, hand, step, moving }: Sliding): readonly Stop[] {
  const found = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.closes : [])).flatMap((each): readonly Stop[] => {
    if (each.is !== 'sleeve' || moving.includes(each.bar)) return [];
    const [fromFoot] = sleeveEnds(model, each.bar, [each.joint]);
    return fromFoot === undefined ? [] : [{ joint: each.joint, bar: each.bar, fromFoot, place: placed(hand.pose(each.bar), [fromFoot - halfOf(hand.part(each.bar)), 0, 0]) }];
  });
  return found.toSorted((a, b) => a.fromFoot - b.fromFoot);
}

/** The stops at which what leads arrives. */
const leading = (all: readonly Stop[]): readonly Stop[] => all.filter(({ fromFoot: far }) => far - (all[0]?.fromFoot ?? 0) < 1);

/** The joints that lead, pale where they end up: each stands with its near edge on a mark. */
function firstHome(sliding: Sliding): readonly SceneBody[] {
  return leading(stops(sliding)).map(({ joint }) => ({ ...sliding.hand.body(joint, 'pale'), id: `${joint}#home`, kind: 'tool' }));
}

/** More stops than these are told by the marks on the bars alone, but for the first. */
const MOST_TOLD = 2;

/** How far from the foot of the nearest bar what moves stops. */
function stopLengths(sliding: Sliding): readonly Mark[] {
  const all = stops(sliding);
  const bar = nearestOf(sliding.hand, all.map((stop) => stop.bar));
  if (bar === undefined) return [];
  const own = all.filter((stop) => stop.bar === bar).map((stop) => stop.fromFoot);
  return fromFoot(sliding.hand, bar, own.length > MOST_TOLD ? own.slice(0, 1) : own);
}

/** How much round a mark is enlarged, mm. */
const STOP_RADIUS = 75;

/** The mark that the leading joint nearest to the eye is pushed to, enlarged. */
function stopEnlarged(sliding: Sliding): readonly Mark[] {
  const leads = leading(stops(sliding));
  const joint = nearestOf(sliding.hand, leads.map((stop) => stop.joint));
  return leads.filter((stop) => stop.joint === joint).slice(0, 1).map(({ place }): Mark => ({ mark: 'detail', at: place, radius: STOP_RADIUS }));
}
