import { endsOfTube, placed, type Model } from '../../model/index.ts';
import { FrameError, postMomentUnder, standOf, type Stand, type SwayInput, type SwayLoad } from '../frame/index.ts';
import type { Limits } from '../limits.ts';
import { isBed } from '../parts.ts';
import { backrestsOf, planMiddle } from './backrest.ts';
import { pinnedPlates, standInputOf } from './stand-input.ts';

/**
 * How the frame stands under a push of 1 N on its top level; everything in it grows in proportion to the push,
 * for crossed cables too, as they are not stretched beforehand. Null for a mechanism, or posts that end under a joint.
 */
export interface Stance {
  readonly braced: Stand | null;
  /** Height of the top level's tubes, mm. */
  readonly height: number;
  /** Greatest moment in a post, N·mm, from 1 N on each backrest; null without a backrest. */
  readonly backrestMoment: number | null;
  /** The same from 1 N outwards on the upper tube of a bed's worst guard; null without guards. */
  readonly guardMoment: number | null;
}

export function stanceOf(model: Model, limits: Limits): Stance {
  const input = standInputOf(model, limits);
  const loads = backrestLoads(model, input);
  return {
    braced: unlessUnsound(() => standOf(input)),
    height: Math.max(0, ...input.levels.map((level) => level.height)),
    backrestMoment: loads.length === 0 ? null : unlessUnsound(() => postMomentUnder(input, loads)),
    guardMoment: guardMoment(model, input),
  };
}

/** Half of 1 N on each of the two tubes of a backrest, half of that on each of their posts. */
const backrestLoads = (model: Model, input: SwayInput): readonly SwayLoad[] => backrestsOf(model).flatMap(({ tubes, outwards: [x, y] }) =>
  tubes.flatMap(({ ends, height }) => ends.map((end) => ({ post: nearest(input, end), height, force: [x / 4, y / 4] as const }))));

/** Half of 1 N on each post of a guard's upper tube, each guard by itself. */
function guardMoment(model: Model, input: SwayInput): number | null {
  const [middleX, middleY] = planMiddle(model);
  const moments = pinnedPlates(model).flatMap(({ tubes }) => {
    const upper = tubes.at(-1)?.tube;
    const ends = upper && endsOfTube(upper);
    if (!isBed(model) || !ends) return [];
    const [x, y, height] = placed(upper.pose, [0, 0, 0]);
    const across = Math.abs(x - middleX) > Math.abs(y - middleY);
    const force = across ? [Math.sign(x - middleX) / 2, 0] as const : [0, Math.sign(y - middleY) / 2] as const;
    const loads = ends.map((end) => ({ post: nearest(input, end), height, force }));
    return unlessUnsound(() => postMomentUnder(input, loads)) ?? [];
  });
  return moments.length === 0 ? null : Math.max(...moments);
}

function nearest({ posts }: SwayInput, [x, y]: readonly [number, number, number]): number {
  const far = posts.map((post) => Math.hypot(post.x - x, post.y - y));
  return far.indexOf(Math.min(...far));
}

/** A part that is off its post is another finding's matter (`post-reach`). */
function unlessUnsound<Answer>(solve: () => Answer): Answer | null {
  try {
    return solve();
  } catch (error) {
    if (error instanceof FrameError) return null;
    throw error;
  }
}
