import { chained, cross, dot, lengthOf, minus, moved, placed, plus, times, unit, type Model, type Part, type Shape, type Vec3 } from '../../model/index.ts';
import {
  movedBy, nearestOf, panelLines, propBodies, sceneName, STANDARD_VIEW, stageHand, tell, turnedBy, type Mark, type Scene, type StageHand, type StepGivens, type WorkScene,
} from '../../scene/kit/index.ts';

/** How far over the tab the punch is held and how long it is, mm. */
const HELD_OVER = 34;
const PUNCH = { length: 60, head: 18, headHeight: 16 } as const;
/** From the holes to the dimension lines of their places, mm. */
const AWAY = 60;

/** The punch over each place of a tab that lies where it is pinned; on a screen it goes down. */
export const scene: WorkScene = {
  scene: punchScene,
  moment: (givens, done) => {
    const held = punchScene(givens);
    const depth = HELD_OVER + givens.model.kit.panelPin.length;
    return { ...held, bodies: held.bodies.map((body) => (body.partId === null ? movedBy(body, turnedBy(body.pose, [0, 0, -depth * done])) : body)) };
  },
};

function punchScene({ model, step, solids }: StepGivens): Scene {
  const hand = stageHand(model, step, solids);
  const pins = model.parts.filter(({ id }) => step.drillsFor.includes(id));
  const { diameter } = model.kit.panelPin;
  const punch: Shape = { form: 'pin', diameter, length: PUNCH.length, headDiameter: PUNCH.head, headHeight: PUNCH.headHeight };
  const top = HELD_OVER + PUNCH.length + PUNCH.headHeight;
  const nearest = nearestOf(hand, pins.map(({ id }) => id));
  return {
    id: sceneName(step),
    bodies: [
      ...step.present.map((id) => hand.body(id, 'present')),
      ...step.present.filter((id) => hand.part(id).kind === 'panel').flatMap((id) => panelLines(hand, id, step.folded)),
      ...propBodies(hand, step),
      ...pins.map(({ id }, index) => hand.prop({ tool: `punch-${index + 1}` }, punch, chained(hand.pose(id), moved([0, 0, HELD_OVER + PUNCH.length])), 'new')),
    ],
    marks: [
      ...pins.map(({ id }): Mark => ({ mark: 'arrow', path: [placed(hand.pose(id), [0, 0, top + 60]), placed(hand.pose(id), [0, 0, top + 6])] })),
      ...(nearest === undefined ? [] : [{ mark: 'label' as const, at: placed(hand.pose(nearest), [0, 0, HELD_OVER + PUNCH.length]), told: tell.times(pins.length) }]),
      ...(step.detail.on === 'side' ? placesAlong(model, hand, pins) : []),
    ],
    view: STANDARD_VIEW,
  };
}

/** Where the holes of a tab are along it: from its end to the first, and from that to the next. */
function placesAlong(model: Model, hand: StageHand, pins: readonly Part[]): readonly Mark[] {
  const [first, ...more] = pins.map(({ id }) => placed(hand.pose(id), [0, 0, 0]));
  const panel = model.connections.find((each) => each.is === 'panel-pin' && each.pin === pins[0]?.id);
  if (first === undefined || more.length === 0 || panel?.is !== 'panel-pin') return [];
  const far = (point: Vec3): number => lengthOf(minus(point, first));
  const next = more.reduce((best, point) => (far(point) < far(best) ? point : best));
  const along = unit(minus(next, first));
  const across = cross(along, turnedBy(hand.pose(panel.pin), [0, 0, 1]));
  const inwards = dot(across, minus(placed(hand.pose(panel.panel), [0, 0, 0]), first)) < 0 ? times(across, -1) : across;
  const { pinEnd } = model.kit.practice;
  return ([[plus(first, times(along, -pinEnd)), first, pinEnd], [first, next, far(next)]] as const)
    .map(([from, to, mm]): Mark => ({ mark: 'length', from, to, away: times(inwards, AWAY), told: tell.mm(Math.round(2 * mm) / 2) }));
}
