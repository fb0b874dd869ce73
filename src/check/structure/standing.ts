import { eulerLoad } from '../formulas/column.ts';
import { judge } from '../judge.ts';
import { pinBearingUnder, pinShearUnder } from '../load/joint-pin.ts';
import { jointTestAgainst } from '../load/joint-test.ts';
import { sideForce } from '../load/push.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import { tubeOf } from './bars.ts';
import { cornersUnder, middleOf, type Bearing } from './bearings.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { postsIn, standingIds, type BarLine } from './skeleton.ts';
import { ownWeight, pushSources, strongPush } from './weights.ts';

const SOLVED = 'frame in space by the direct stiffness method (C)';

/** Bears nothing but itself: a partition. */
export const isScreen = ({ model: { places } }: Pick<StructureCase, 'model'>): boolean => places.every(({ use }) => use === 'screen');

/**
 * 2 where it stands with every socket counted as a hinge, 1 where it needs its sockets stiff, which nobody tested: a
 * caution while nothing is borne high up; 0 where it gives way all the same.
 */
export const bracings: StructureCheck = (given) => {
  const { model, standing, limits, skeleton, bearings } = given;
  const isLow = bearings.every((bearing) => middleOf(bearing)[2] <= limits.wallHeight.value);
  const held = standing === null ? 0 : standing.sockets === 'stiff' ? 1 : 2;
  const holding = idsOf(model, 'cable', 'flat-panel');
  return [judge({
    name: 'bracing', figure: held, limit: limits.bracedBy.value, bound: 'least', unit: '1', source: `${standing?.sockets === 'stiff' ? `needs its sockets stiff, the weaker way ${standing.weaker}; ` : ''}the whole frame solved with hinged sockets (C); ${limits.bracedBy.source}`,
    parts: holding.length > 0 ? holding : standingIds(skeleton), otherwise: held === 1 && isLow ? 'caution' : 'fail',
  })];
};

/** Drift of the highest joints under the push and the loads, each on one half, and what the weight adds once it leans, mm, in the worst of the cases of `ladens` (see `sway`). */
export const sways: StructureCheck = (given) => {
  const { standing, ladens, bearings, limits: { driftRatio, screenDriftRatio, sideForceShare, sideForceLeast, tubeShear }, model } = given;
  if (standing === null) return [];
  const ratio = isScreen(given) ? screenDriftRatio : driftRatio;
  const parts = idsOf(model, 'cable', 'flat-panel');
  return worst(ladens.map(({ stands, panels, load: whole, lean, drift }) => {
    const load = bearings.filter(({ panel }) => panels.includes(panel.id)).reduce((sum, each) => sum + each.load, 0);
    const weight = ownWeight(given) + load;
    const push = sideForce(given.limits, weight);
    const first = drift * push + (whole === 0 ? 0 : (lean * load) / whole);
    const share = (weight * first) / (push * standing.height);
    return judge({
      name: 'sway', figure: share < 1 ? first / (1 - share) : standing.height, limit: standing.height / ratio.value, bound: 'most', unit: 'mm',
      source: `${standing.weaker}, the weaker way; load on ${stands}, on the half it leans to; sockets ${standing.sockets}, weight leaning with it; ${SOLVED}, ${tubeShear.source}; push ${sideForceShare.source}, ${sideForceLeast.source}; ${ratio.source}`,
      parts: parts.length > 0 ? parts : standingIds(given.skeleton),
    });
  }));
};

/** Pull in the hardest worked cable under the strong push, N. */
export const cablePulls: StructureCheck = (given) => {
  const { standing, model, limits: { knot } } = given;
  if (standing?.pull == null) return [];
  const { factor } = rulesOf(given);
  return [judge({
    name: 'cable-pull', figure: standing.pull.force * strongPush(given), limit: (knot.value * model.kit.cable.strength) / factor.value, bound: 'most', unit: 'N',
    source: `${SOLVED}; ${pushSources(given)}; strength of the kit / ${factor.value}, ${factor.source}; ${knot.source}`, parts: [standing.pull.cable],
  })];
};

/** Bending stress of the bar that bends most under the strong push, or under the push on the backrest, N/mm²: M / W of a drilled tube. */
export const frameBending: StructureCheck = (given) => {
  const { standing, skeleton } = given;
  if (standing === null) return [];
  const factor = isScreen(given) ? given.limits.screenFactor : rulesOf(given).factor;
  const pushes = [{ bent: standing.bent, push: strongPush(given), by: pushSources(given) }, ...(standing.backrest === null ? [] : [{ bent: standing.backrest, push: backPush(given), by: `${given.limits.backrestShare.source}; ${given.limits.seatTest.source}` }])];
  return worst(pushes.flatMap(({ bent, push, by }) => {
    const bar = skeleton.bars.find(({ id }) => id === bent.bar);
    if (bar === undefined) return [];
    const { drilledModulus, kind } = tubeOf(given, bar);
    return [judge({
      name: 'post-bending', figure: (bent.moment * push) / drilledModulus, limit: (kind.bendingStrength * kind.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
      source: `moment of the frame solved in space over the drilled section (C), sockets ${standing.sockets}; ${by}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`, parts: [bar.id],
    })];
  }));
};

/** A back pushes with a share of the seat's test load, N, as much of it as is laid on the seat. */
export function backPush({ limits, bearings }: Pick<StructureCase, 'limits' | 'bearings'>): number {
  const seats = bearings.filter(({ place: { use } }) => use === 'seat');
  return Math.max(...(seats.length === 0 ? [1] : seats.map(({ share }) => share))) * limits.backrestShare.value * limits.seatTest.value;
}

/** N at one corner of a panel: on one half of it, or all of one load near the corner. */
export function cornerLoad(given: StructureCase, bearing: Bearing): number {
  const { load, placed, rules, pairs, overhang } = bearing;
  const share = pairs.length < 2 ? 1 : pairs.reduce((product, { strip }) => product * Math.min(1, 1 - (rules.padInset - overhang) / strip.span), 1);
  return Math.max(given.limits.cornerShare.value * load, share * placed) + given.limits.cornerShare.value * bearing.panel.mass * given.limits.gravity.value;
}

/** N that come to a joint from the panels round it: neighbours may be laden at once. */
function jointLoad(given: StructureCase, joint: string): number {
  const loads = given.bearings.filter((bearing) => cornersUnder(given.skeleton, bearing).includes(joint)).map((bearing) => ({ most: cornerLoad(given, bearing), even: given.limits.cornerShare.value * bearing.load }));
  const most = Math.max(0, ...loads.map((each) => each.most));
  const first = loads.findIndex((each) => each.most === most);
  return most + loads.filter((_, index) => index !== first).reduce((sum, { even }) => sum + even, 0);
}

/** Most laden joint that a pin holds, N. */
const pinned = (given: StructureCase): number => Math.max(0, ...[...given.skeleton.joints.keys()].map((joint) => jointLoad(given, joint)));

/** Load of a post's stretch, N, against Euler's load; free lengths as in `post-buckling`, all free where only sockets hold it; and all posts together between levels that cables hold. */
export const buckling: StructureCheck = (given) => {
  const { factor } = rulesOf(given);
  const posts = postsIn(given.skeleton);
  const alone = posts.flatMap((post) => stretchesOf(given, post).map((stretch) => ({ ...stretch, post, parts: [post.id] })));
  const together = posts.slice(0, 1).flatMap((post) => heldStretches(given, posts.length).map((stretch) => ({ ...stretch, post, parts: posts.map(({ id }) => id) })));
  return worst([...alone, ...together].map(({ length, lengthFactor, force, post, parts }) => {
    const { modulus, second } = tubeOf(given, post);
    return judge({
      name: 'post-buckling', figure: force, limit: eulerLoad(modulus, second, length, lengthFactor) / factor.value, bound: 'most', unit: 'N',
      source: `π² E I / (K L)² (C) / ${factor.value}, ${factor.source}; ${given.limits.cornerShare.source}`, parts,
    });
  }));
};

/** A free length of posts, mm, Euler's factor K for its ends, and what counts there on one post, N. */
interface Stretch { readonly length: number; readonly lengthFactor: number; readonly force: number }

/** Two joints' heights as near as this are one level, mm. */
const LEVEL = 5;

/** Between levels that cables hold the posts, which panels tie, give way together: each bears its share of all that is above, on one half (see `sharedByPosts`). */
function heldStretches(given: StructureCase, posts: number): readonly Stretch[] {
  const { model, skeleton, standing, bearings, limits: { cornerShare } } = given;
  if (standing?.sockets !== 'hinged') return [];
  const ends = model.joinings.flatMap((joining) => (joining.by === 'cable' ? joining.joints.flatMap((joint) => skeleton.joints.get(joint)?.[2] ?? []) : []));
  const held = ends.toSorted((a, b) => a - b).filter((height, index, all) => index === 0 || height - (all[index - 1] ?? 0) > LEVEL);
  return held.slice(1).map((to, index): Stretch => {
    const from = held[index] ?? 0;
    const above = bearings.filter((bearing) => middleOf(bearing)[2] > from + 2 * bearing.kind.thickness + bearing.overhang).reduce((sum, { load }) => sum + load, 0);
    return { length: to - from, lengthFactor: 1, force: (4 * cornerShare.value * (above + ownWeight(given))) / posts };
  });
}

/** Upright stretches between a post's joints and down to the floor, each with what it carries. */
function stretchesOf(given: StructureCase, post: BarLine): readonly Stretch[] {
  const up = post.along[2];
  if (Math.abs(up) < 0.5) return [];
  const holds = up > 0 ? post.holds : post.holds.toReversed();
  const foot = up > 0 ? 0 : Math.hypot(post.to[0] - post.from[0], post.to[1] - post.from[1], post.to[2] - post.from[2]);
  return holds.map(({ at }, index) => {
    const below = holds[index - 1]?.at ?? foot;
    const above = holds.slice(index).reduce((sum, { joint }) => sum + jointLoad(given, joint), 0);
    const leg = index === 0 && !holds.slice(0, 1).some(({ by }) => by === 'socket');
    return { length: Math.abs(at - below), lengthFactor: leg || given.standing?.sockets !== 'hinged' ? 2 : 1, force: above + ownWeight(given) * given.limits.cornerShare.value };
  }).filter(({ length }) => length > 1);
}

/** Shear of the joint pin that bears most (see `pin-shear`). */
export const pinShears: StructureCheck = (given) => pinShearUnder(given, pinned(given));

/** That joint pin presses on both walls of its post (see `pin-bearing`). */
export const pinBearings: StructureCheck = (given) => pinBearingUnder(given, pinned(given), postsIn(given.skeleton).map(({ id }) => id));

/** The maker's own test of a joint against what the most laden one is asked (see `joint-test`). */
export const jointTests: StructureCheck = (given) => jointTestAgainst(given, pinned(given));
