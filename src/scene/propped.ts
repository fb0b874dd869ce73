import type { Model, Solids } from '../model/index.ts';
import type { Plan, Step } from '../plan/index.ts';
import { propBodies, propCounts, propMarks, propsLeaving, type PropCount } from './kit/props.ts';
import { stageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { Scene } from './types.ts';

/** Before a step: what is propped in it, alone on its blocks, so that each block is seen, how many and how high; null where nothing is propped, or the same as in the step before. */
export function proppedScene(model: Model, plan: Plan, step: Step, solids: Solids): Scene | null {
  if (!doBlocksCome(plan, step)) return null;
  const hand = stageHand(model, step, solids);
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  return {
    id: `propped:${step.number}`,
    bodies: [...step.props.flat().map((id) => hand.body(id, fresh.includes(id) ? 'new' : 'present')), ...propBodies(hand, step)],
    marks: propMarks(hand, step),
    view: STANDARD_VIEW,
  };
}

/** Before a step: what the step before had propped, its blocks on their way out; null where that stood on none, or stands on them still. */
export function unproppedScene(model: Model, plan: Plan, step: Step, solids: Solids): Scene | null {
  const before = stepBefore(plan, step);
  if (before === undefined || before.props.length === 0 || isPropped(before, step)) return null;
  const hand = stageHand(model, before, solids);
  const { bodies, marks } = propsLeaving(hand, before);
  return { id: `unpropped:${step.number}`, bodies: [...before.props.flat().map((id) => hand.body(id, 'present')), ...bodies], marks, view: STANDARD_VIEW };
}

/** How many blocks to fetch for a step, of each height, mm; none where it needs none or they are there. */
export const blocksFetched = (model: Model, plan: Plan, step: Step, solids: Solids): readonly PropCount[] =>
  (doBlocksCome(plan, step) ? propCounts(stageHand(model, step, solids), step) : []);

function doBlocksCome(plan: Plan, step: Step): boolean {
  const before = stepBefore(plan, step);
  return step.props.length > 0 && !(before !== undefined && isPropped(step, before));
}

const stepBefore = ({ steps }: Plan, { number }: Step): Step | undefined => steps.filter((each) => each.number < number).at(-1);

/** Whether all that one step has propped lies the same way on its blocks in the other. */
const isPropped = (one: Step, other: Step): boolean => one.standing.name === other.standing.name
  && one.props.every((parts) => other.props.some((others) => parts.some((id) => others.includes(id))));
