import type { Model } from '../../model/index.ts';
import { FrameError, postMomentUnder, standOf, type Stand, type SwayInput, type SwayLoad } from '../frame/index.ts';
import type { Limits } from '../limits.ts';
import { backrestsOf } from './backrest.ts';
import { standInputOf } from './stand-input.ts';

/**
 * How the frame stands under a push of 1 N on its top level; everything in it grows in proportion to the push,
 * for crossed cables too, as they are not stretched beforehand. Null for a mechanism, or posts that end under a joint.
 */
export interface Stance {
  readonly braced: Stand | null;
  /** Without the cables, the tubes' ends stiff in their joints; null where there are no cables to leave out. */
  readonly gripped: Stand | null;
  /** Height of the top level's tubes, mm. */
  readonly height: number;
  /** Greatest moment in a post, N·mm, from 1 N on each backrest; null without a backrest. */
  readonly backrestMoment: number | null;
}

export function stanceOf(model: Model, limits: Limits): Stance {
  const input = standInputOf(model, limits);
  const loads = backrestLoads(model, input);
  return {
    braced: unlessUnsound(() => standOf(input)),
    gripped: input.cables.length === 0 ? null : unlessUnsound(() => standOf({ ...input, cables: [], gripped: true })),
    height: Math.max(0, ...input.levels.map((level) => level.height)),
    backrestMoment: loads.length === 0 ? null : unlessUnsound(() => postMomentUnder(input, loads)),
  };
}

/** Half of 1 N on each of the two tubes of a backrest, half of that on each of their posts. */
const backrestLoads = (model: Model, input: SwayInput): readonly SwayLoad[] => backrestsOf(model).flatMap(({ tubes, outwards: [x, y] }) =>
  tubes.flatMap(({ ends, height }) => ends.map((end) => ({ post: nearest(input, end), height, force: [x / 4, y / 4] as const }))));

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
