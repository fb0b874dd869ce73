import { chained, moved, placed, type Shape } from '../../model/index.ts';
import {
  movedBy, nearestOf, openBox, panelLines, sceneName, stageHand, tell, turnedBy, viewOf, type Mark, type Scene, type StepGivens, type WorkScene,
} from '../../scene/kit/index.ts';
import { isBlockHeld } from './block-held.ts';

/** How far over the tab the punch is held; its shaft, the body over that and the cap that is hit, mm. */
const HELD_OVER = 34;
const PUNCH = { length: 44, body: 18, bodyHeight: 32, cap: 28, capHeight: 9 } as const;

/** The punch over each place of a tab that lies where it is pinned; on a screen it goes down. */
export const scene: WorkScene = {
  scene: punchScene,
  moment: (givens, done) => {
    const held = punchScene(givens);
    const depth = HELD_OVER + givens.model.kit.panelPin.length;
    return { ...held, bodies: held.bodies.map((body) => (body.partId === null ? movedBy(body, turnedBy(body.pose, [0, 0, -depth * done])) : body)) };
  },
  // Behind the wall of a box a block is held.
  handElsewhere: ({ model, step }) => isBlockHeld(model, step),
};

function punchScene({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  const view = viewOf(model, step);
  const pins = model.parts.filter(({ id }) => step.drillsFor.includes(id));
  const { diameter } = model.kit.panelPin;
  const punch: Shape = { form: 'pin', diameter, length: PUNCH.length, headDiameter: PUNCH.body, headHeight: PUNCH.bodyHeight };
  const cap: Shape = { form: 'pin', diameter: PUNCH.body, length: 1, headDiameter: PUNCH.cap, headHeight: PUNCH.capHeight };
  const overBody = HELD_OVER + PUNCH.length + PUNCH.bodyHeight;
  const top = overBody + PUNCH.capHeight;
  const nearest = nearestOf(hand, pins.map(({ id }) => id), view);
  return {
    id: sceneName(step),
    bodies: [
      ...step.present.flatMap((id) => (step.detail.on === 'side' ? null : openBox(hand, step, id, view)) ?? [hand.body(id, 'present')]),
      ...step.present.filter((id) => hand.part(id).kind === 'panel').flatMap((id) => panelLines(hand, id, step.folded)),
      ...pins.flatMap(({ id }, index) => [
        hand.prop({ tool: `punch-${index + 1}` }, punch, chained(hand.pose(id), moved([0, 0, HELD_OVER + PUNCH.length])), 'new'),
        hand.prop({ tool: `punch-cap-${index + 1}` }, cap, chained(hand.pose(id), moved([0, 0, overBody])), 'new'),
      ]),
    ],
    marks: [
      ...pins.map(({ id }): Mark => ({ mark: 'arrow', path: [placed(hand.pose(id), [0, 0, top + 60]), placed(hand.pose(id), [0, 0, top + 6])] })),
      ...(nearest === undefined ? [] : [{ mark: 'label' as const, at: placed(hand.pose(nearest), [0, 0, HELD_OVER + PUNCH.length]), told: tell.times(pins.length) }]),
    ],
    view,
  };
}
