import { placed, type Group, type Model, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { onTheWay, sceneName, STANDARD_VIEW, stageHand, type Mark, type Scene, type StepGivens, type WorkScene, tell } from '../../scene/kit/index.ts';

/** All that the posts will go through. */
export const scene: WorkScene = { scene: standDecksScene, moment: (givens, done) => onTheWay(standDecksScene(givens), givens.step, done) };

/** The decks and frames stood on their long edges, as far apart as they will hang; each is new here. */
function standDecksScene({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  return {
    id: sceneName(step),
    bodies: joined(model, step).flatMap((group) => group.partIds.map((id) => hand.body(id, 'new'))),
    marks: [...spacings(model, step), ...countOf(model, step)],
    view: STANDARD_VIEW,
  };
}

/** The groups that the step brings, from the foot up. */
const joined = (model: Model, step: Step): readonly Group[] => {
  const moved = step.motions.flatMap((motion) => (motion.kind === 'slide' ? motion.parts : []));
  return model.groups.filter((group) => group.partIds.some((id) => moved.includes(id))).sort((a, b) => a.level - b.level);
};

/** Distances between neighbouring groups, from tube to tube, along their lower front edges. */
function spacings(model: Model, step: Step): Mark[] {
  const y = model.pattern.axes[1] + model.kit.joint.studReach;
  const x = model.pattern.axes[0];
  const levels = joined(model, step).map((group) => group.level);
  const at = (level: number): Vec3 => placed(step.standing.pose, [x, y, level]);
  return levels.slice(1).map((level, index): Mark => ({
    mark: 'length',
    from: at(levels[index] ?? 0),
    to: at(level),
    away: placed(step.standing.pose, [140, 0, 0]),
    told: tell.mm(level - (levels[index] ?? 0)),
  }));
}

/** The count of decks that are all alike. */
function countOf(model: Model, step: Step): Mark[] {
  const groups = joined(model, step);
  if (groups.length < 2 || groups.some((group) => group.piece !== groups[0]?.piece)) return [];
  const top = groups[groups.length - 1]?.level ?? 0;
  const x = groups[groups.length - 1]?.kind === 'deck' ? 0 : model.pattern.axes[0];
  return [{ mark: 'label', at: placed(step.standing.pose, [x, 0, top]), told: tell.times(groups.length) }];
}
