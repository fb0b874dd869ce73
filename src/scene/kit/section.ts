import type { Scene, View } from '../types.ts';
import { boxRound } from './extent.ts';
import { partsShown } from './parts-shown.ts';
import { stageHand } from './stage.ts';
import { homeName, type StepGivens } from './work-scene.ts';

/** Level, from the right. */
const FROM_RIGHT: View = { towardsEye: [1, 0, 0], up: [0, 0, 1] };

/** How far what has come reaches into what stands there: both cut through the middle, seen level from the right. */
export function homeInSection({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  const moving = new Set(step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : [])));
  const { min, max } = boxRound([...moving].map((id) => hand.body(id, 'new')));
  const plane = { at: [(min[0] + max[0]) / 2, min[1], min[2]] as const, towardsEye: FROM_RIGHT.towardsEye };
  return { id: homeName(step), view: FROM_RIGHT, marks: [], bodies: partsShown(step).flatMap((id) => hand.bodyBehind(id, moving.has(id) ? 'new' : 'present', plane) ?? []) };
}
