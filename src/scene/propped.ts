import type { Model, Solids } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { propBodies, propMarks } from './kit/props.ts';
import { stageHand } from './kit/stage.ts';
import { STANDARD_VIEW } from './kit/views.ts';
import type { Scene } from './types.ts';

/** Before a step: what is propped in it, alone on its blocks, so that each block is seen, how many and how high; null where nothing is propped. */
export function proppedScene(model: Model, step: Step, solids: Solids): Scene | null {
  if (step.props.length === 0) return null;
  const hand = stageHand(model, step, solids);
  const fresh = step.newParts.flatMap(({ ids }) => ids);
  return {
    id: `propped:${step.number}`,
    bodies: [...step.props.flat().map((id) => hand.body(id, fresh.includes(id) ? 'new' : 'present')), ...propBodies(hand, step)],
    marks: propMarks(hand, step),
    view: STANDARD_VIEW,
  };
}
