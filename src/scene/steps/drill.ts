import { chained, moved, placed, type Model, type Pose, type Shape, type Solids } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { foldingOf, stageHand } from '../stage.ts';
import type { Mark, Scene } from '../types.ts';
import { STANDARD_VIEW } from '../views.ts';

/** How far over the sleeve the bit is held, mm. */
const HELD_OVER = 70;
const BIT_LENGTH = 80;

/** A drill bit held over each place to drill: through sleeve and post, or through plate and tube. */
export function drillScene(model: Model, step: Step, solids: Solids): Scene {
  const hand = stageHand(model, step, solids, foldingOf(step.folded));
  const bits = model.parts.filter((part) => step.drillsFor.includes(part.id));
  const shape: Shape = { form: 'pin', diameter: model.kit.jointPin.diameter, length: BIT_LENGTH, headDiameter: 16, headHeight: 26 };
  const places = bits.map((part): Pose => chained(step.standing.pose, part.pose));
  return {
    id: `step:${step.number}`,
    bodies: [
      ...step.present.map((id) => hand.body(id, 'present')),
      ...places.map((pose, index) => hand.prop({ tool: `bit-${index + 1}` }, shape, chained(pose, moved([0, 0, HELD_OVER + BIT_LENGTH * 0.4])), 'new')),
    ],
    marks: [
      ...places.map((pose): Mark => ({ mark: 'arrow', path: [placed(pose, [0, 0, HELD_OVER + BIT_LENGTH + 70]), placed(pose, [0, 0, HELD_OVER + 45])] })),
      { mark: 'label', at: placed(places[places.length - 1] ?? step.standing.pose, [0, 0, 0]), text: `×${places.length}` },
    ],
    view: STANDARD_VIEW,
  };
}

