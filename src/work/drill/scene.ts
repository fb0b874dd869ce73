import { chained, moved, placed, type Pose, type Shape } from '../../model/index.ts';
import {
  firstHolePinned, movedBy, pinDrilled, sceneName, seenThrough, stageHand, turnedBy, tell, viewOf, type Mark, type Scene, type StepGivens, type WorkScene,
} from '../../scene/kit/index.ts';

/** How far over the sleeve the bit is held, mm. */
const HELD_OVER = 70;
const BIT_LENGTH = 80;

/** How far the drill goes down from where its picture holds it, mm. */
const DRILLED = 90;

/** The bit over each place; on a screen it goes down. */
export const scene: WorkScene = {
  scene: drillScene,
  moment: (givens, done) => {
    const held = drillScene(givens);
    return { ...held, bodies: held.bodies.map((body) => (body.partId === null ? movedBy(body, turnedBy(body.pose, [0, 0, -DRILLED * done])) : body)) };
  },
  closeUp: pinDrilled,
  series: firstHolePinned,
  fixesSquare: true,
};

/** A drill bit held over each place to drill: through sleeve and post, or through plate and tube. */
function drillScene({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  const bits = model.parts.filter((part) => step.drillsFor.includes(part.id));
  const shape: Shape = { form: 'pin', diameter: model.kit.jointPin.diameter, length: BIT_LENGTH, headDiameter: 16, headHeight: 26 };
  const places = bits.map((part): Pose => chained(step.standing.pose, part.pose));
  const view = viewOf(model, step);
  const drilled = places.map((pose) => placed(pose, [0, 0, 0]));
  const worked = new Set(model.connections.flatMap((each) => (each.is === 'pin' && step.drillsFor.includes(each.pin) ? each.holds : [])));
  return {
    id: sceneName(step),
    bodies: [
      ...step.present.flatMap((id) => (worked.has(id) ? null : seenThrough(hand, id, drilled, view)) ?? [hand.body(id, 'present')]),
      ...places.map((pose, index) => hand.prop({ tool: `bit-${index + 1}` }, shape, chained(pose, moved([0, 0, HELD_OVER + BIT_LENGTH * 0.4])), 'new')),
    ],
    marks: [
      ...places.map((pose): Mark => ({ mark: 'arrow', path: [placed(pose, [0, 0, HELD_OVER + BIT_LENGTH + 70]), placed(pose, [0, 0, HELD_OVER + 45])] })),
      { mark: 'label', at: placed(places[places.length - 1] ?? step.standing.pose, [0, 0, 0]), told: tell.times(places.length) },
    ],
    view,
  };
}
