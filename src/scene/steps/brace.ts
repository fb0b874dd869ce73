import { placed, type Model, type Solids, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { foldingOf, stageHand } from '../stage.ts';
import type { Mark, Scene } from '../types.ts';
import { STANDARD_VIEW } from '../views.ts';

/** Crossed cables hung on the studs of a face; ringed numerals at the four ends, first cable 1 and 1, second 2 and 2. */
export function braceScene(model: Model, step: Step, solids: Solids): Scene {
  const hand = stageHand(model, step, solids, foldingOf(step.folded));
  const cables = step.newParts.flatMap((group) => group.ids);
  const ends = (id: string): readonly Vec3[] => {
    const { shape } = hand.part(id);
    const length = shape.form === 'cable' ? shape.length : 0;
    return [placed(hand.pose(id), [0, 0, 0]), placed(hand.pose(id), [length, 0, 0])];
  };
  return {
    id: `step:${step.number}`,
    bodies: [...step.present.map((id) => hand.body(id, hand.part(id).kind === 'cable' ? 'pale' : 'present')), ...cables.map((id) => hand.body(id, 'new'))],
    marks: [
      ...cables.flatMap((id, index) => ends(id).map((at): Mark => ({ mark: 'order', at, text: String(index + 1) }))),
      { mark: 'detail', at: ends(cables[0] ?? '')[1] ?? [0, 0, 0], radius: 75 },
    ],
    view: STANDARD_VIEW,
  };
}
