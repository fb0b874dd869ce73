import { chained, standstill, turned, undone, type Group, type Model, type Pose, type Side } from '../model/index.ts';
import { WORK } from '../work/facts.ts';
import { sideOf, type Job } from './jobs.ts';
import type { Standing } from './types.ts';

const QUARTER = Math.PI / 2;

/** How the work lies: the pose that takes the finished item's coordinates to what the worker sees (z up, front towards −y). */
export function standingOf({ standing: name, action, detail, run }: Job, model: Model): Standing {
  switch (name) {
    case 'bench': return { name, pose: standstill };
    case 'upright': return { name, pose: turned([0, 0, 1], towardsReader(WORK[action].seenFrom === 'outside', sideOf(detail))) };
    case 'deck-building': return { name, pose: buildingPose(model.groups.find((group) => group.piece === run)) };
    case 'lying':
    case 'deck-in-use': return { name, pose: standstill };
    case 'on-back': return { name, pose: chained(turned([0, 0, 1], -QUARTER), turned([1, 0, 0], -QUARTER)) };
    case 'on-front': return { name, pose: chained(turned([0, 0, 1], QUARTER), turned([1, 0, 0], QUARTER)) };
  }
}

/** A deck is built on its panel; a bare frame the same way up, so that joints look alike in all frames. */
function buildingPose(group: Group | undefined): Pose {
  const back = undone(group?.pose ?? standstill);
  return group?.kind === 'frame' ? chained(turned([1, 0, 0], 2 * QUARTER), back) : back;
}

/**
 * Turn of the upright item that shows the outside of a face in front or on the right, each a quarter turn from the last
 * one; or its inside, which the standard view shows of the back and the left.
 */
function towardsReader(isOutside: boolean, side: Side | null): number {
  if (!isOutside) return side === 'right' ? QUARTER : 0;
  switch (side) {
    case 'back':
    case 'left': return 2 * QUARTER;
    case 'right': return -QUARTER;
    default: return 0;
  }
}
