import { placed, plus, times } from '../../model/index.ts';
import { PEGS_CLEAR } from '../../plan/index.ts';
import { turnedBy } from './directions.ts';
import { boxRound } from './extent.ts';
import { stageHand } from './stage.ts';
import type { StepGivens } from './work-scene.ts';

/** A flat panel on a tube that is drilled from above close over what the work lies on, mm: the bit, the panel, the tube, and how far the floor is under that. */
export interface RoomUnder {
  readonly bit: number;
  readonly panel: number;
  readonly tube: { readonly outside: number; readonly inside: number };
  readonly room: number;
}

/** The floor is told where a bit might come to it, mm. */
const NEAR = 60;
/** The cosine from which a bit is upright. */
const UPRIGHT = 0.99;

/** How far the floor is under a tube that a step drills through its panel: so deep one drills and no deeper. Null where the step drills none, where the bit is level, where something is propped or there is room. */
export function roomUnder({ model, step, solids }: StepGivens): RoomUnder | null {
  if (step.props.length > 0 || step.drillsFor.length === 0) return null;
  const hand = stageHand(model, step, solids);
  const pinned = model.connections.flatMap((each) => (each.is === 'pin' && step.drillsFor.includes(each.pin) ? [{ pose: hand.pose(each.pin), shapes: each.holds.map((id) => hand.part(id).shape) }] : []));
  const floor = boxRound(step.present.map((id) => hand.body(id, 'present'))).min[2] - (step.footing.before.length === 0 ? 0 : PEGS_CLEAR);
  const rooms = pinned.flatMap(({ pose, shapes }): RoomUnder[] => {
    const [panel, tube] = [shapes.find((shape) => shape.form === 'plate'), shapes.find((shape) => shape.form === 'tube')];
    const out = turnedBy(pose, [0, 0, 1]);
    if (panel?.form !== 'plate' || tube?.form !== 'tube' || out[2] < UPRIGHT) return [];
    const exit = plus(placed(pose, [0, 0, 0]), times(out, -(panel.thickness + tube.outside)));
    return [{ bit: model.kit.jointPin.diameter, panel: panel.thickness, tube: { outside: tube.outside, inside: tube.inside }, room: exit[2] - floor }];
  });
  return rooms.filter(({ room }) => room >= 1 && room <= NEAR).toSorted((one, other) => one.room - other.room)[0] ?? null;
}
