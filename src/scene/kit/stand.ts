import { chained, dot, lengthOf, outwards, type Model, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { Stand, View } from '../types.ts';
import { turnedBy } from './directions.ts';
import { BEHIND_VIEW, LEFT_VIEW, STANDARD_VIEW } from './views.ts';

const VIEWS: Readonly<Record<Stand, View>> = { front: STANDARD_VIEW, left: LEFT_VIEW, behind: BEHIND_VIEW };

/** What a step does, by the ways out of the work towards who does it; from where all of them are turned away by more than `hidden` (the cosine), nothing is seen of it. */
interface Done {
  readonly ways: readonly Vec3[];
  readonly hidden: number;
}

/** A pin's head stands out beside what it goes into. */
const PIN_HIDDEN = -0.6;
/** A tab lies flat on the side that it is turned round. */
const SIDE_HIDDEN = -0.3;

/**
 * Where the worker stands for a step: before the work, but where all that the step drills, pins or turns round would be hidden
 * from there, and then at its left or behind it. The step is seen from there.
 */
export function standOf(model: Model, step: Step): Stand {
  const { ways, hidden } = doneBy(model, step);
  const isSeen = ({ towardsEye }: View): boolean => ways.some((way) => dot(way, towardsEye) / lengthOf(towardsEye) >= hidden);
  if (ways.length === 0 || isSeen(STANDARD_VIEW)) return 'front';
  return isSeen(LEFT_VIEW) ? 'left' : 'behind';
}

function doneBy(model: Model, step: Step): Done {
  const fresh = [...step.drillsFor, ...step.newParts.flatMap(({ ids }) => ids)];
  const outOf = (ids: readonly string[]): readonly Vec3[] => model.parts.filter(({ id }) => ids.includes(id)).map(({ pose }) => turnedBy(chained(step.standing.pose, pose), [0, 0, 1]));
  const pins = model.connections.flatMap((each) => (each.is === 'pin' && fresh.includes(each.pin) ? [each.pin] : []));
  if (pins.length > 0) return { ways: outOf(pins), hidden: PIN_HIDDEN };
  const panelPins = model.parts.flatMap(({ id, kind }) => (kind === 'panel-pin' && fresh.includes(id) ? [id] : []));
  return { ways: step.detail.on === 'side' ? [...outOf(panelPins), ...foldedUpright(model, step)] : [], hidden: SIDE_HIDDEN };
}

/** The sides of standing panels that flaps are turned round; on a panel that lies one looks down from anywhere. */
const foldedUpright = (model: Model, step: Step): readonly Vec3[] => step.motions.flatMap((motion): readonly Vec3[] => {
  const panel = motion.kind === 'fold' ? model.parts.find(({ id }) => id === motion.panel) : undefined;
  if (motion.kind !== 'fold' || panel === undefined) return [];
  const pose = chained(step.standing.pose, panel.pose);
  return Math.abs(turnedBy(pose, [0, 0, 1])[2]) > 0.5 ? [] : [turnedBy(pose, outwards(motion.side))];
});

/** From where a step is seen. */
export const viewOf = (model: Model, step: Step): View => VIEWS[standOf(model, step)];
