import { chained, placed, type Model, type Solids, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { foldingOf, stageHand } from '../stage.ts';
import type { Mark, Scene } from '../types.ts';
import { STANDARD_VIEW } from '../views.ts';

/** The finished decks stood on their long edges, as far apart as they will hang; each is new here. */
export function standDecksScene(model: Model, step: Step, solids: Solids): Scene {
  const hand = stageHand(model, step, solids, foldingOf(step.folded));
  return {
    id: `step:${step.number}`,
    bodies: model.groups.flatMap((group) => group.partIds.map((id) => hand.body(id, 'new'))),
    marks: [...spacings(model, step), countOf(model, step)],
    view: STANDARD_VIEW,
  };
}

/** Distances between neighbouring decks' faces, along their lower front edges. */
function spacings(model: Model, step: Step): Mark[] {
  const y = model.pattern.axes[1] + model.kit.joint.studReach;
  const x = model.pattern.axes[0];
  const at = (top: number): Vec3 => placed(step.standing.pose, [x, y, top]);
  return model.deckTops.slice(1).map((top, index): Mark => ({
    mark: 'length',
    from: at(model.deckTops[index] ?? 0),
    to: at(top),
    away: placed(chained(step.standing.pose), [140, 0, 0]),
    text: String(Math.round(top - (model.deckTops[index] ?? 0))),
  }));
}

function countOf(model: Model, step: Step): Mark {
  const top = model.deckTops[model.deckTops.length - 1] ?? 0;
  return { mark: 'label', at: placed(step.standing.pose, [0, 0, top]), text: `×${model.groups.length}` };
}
