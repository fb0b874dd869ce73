import { chained, dot, lengthOf, minus, moved, placed, plus, times, turned, type Connection, type Pose, type Vec3 } from '../../model/index.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody } from '../types.ts';
import { turnedBy } from './directions.ts';
import { boxRound, middleOf } from './extent.ts';
import { stageHand } from './stage.ts';
import { STANDARD_VIEW } from './views.ts';
import { seriesName, type StepGivens } from './work-scene.ts';

/** How far a lid is opened in the pictures, rad: half way, where it stays when it is let go, and upright. */
const OPENED: readonly number[] = [Math.PI / 4, Math.PI / 2];
const BENDS = 12;

type Hinged = Extract<Connection, { is: 'hinge' }>;

/** A panel that a step lays on its hinges, opened with them about their bar, from how it was before: it is no fixed top. None where it lies on no hinge. */
export function lidOpened(givens: StepGivens): readonly Scene[] {
  const { model, step, solids } = givens;
  const fresh = new Set(step.newParts.flatMap(({ ids }) => ids));
  const hinged = model.connections.filter((each): each is Hinged => each.is === 'hinge' && fresh.has(each.leaves[0]));
  const [first] = hinged;
  if (first === undefined) return [];
  const hand = stageHand(model, step, solids);
  const lid = hinged.flatMap(({ leaves: [panel] }) => panel).filter((id, index, all) => all.indexOf(id) === index);
  const turning = new Set([...lid, ...hinged.map(({ hinge }) => hinge)]);
  const at = placed(step.standing.pose, first.at);
  const along = turnedBy(step.standing.pose, first.axis);
  const middle = middleOf(boxRound(lid.map((id) => hand.body(id, 'new'))));
  const axis = rises(along, minus(middle, at)) ? along : times(along, -1);
  const opened = (angle: number): Pose => chained(moved(at), turned(axis, angle), moved(times(at, -1)));
  const rest = step.present.filter((id) => !turning.has(id)).map((id) => hand.body(id, 'present'));
  const turnedOpen = (angle: number): readonly SceneBody[] => [...turning].map((id): SceneBody => {
    const body = hand.body(id, lid.includes(id) ? 'new' : 'present');
    return { ...body, pose: chained(opened(angle), body.pose) };
  });
  const edge = plus(at, times(minus(middle, at), 2));
  return OPENED.map((angle, index): Scene => {
    const from = OPENED[index - 1] ?? 0;
    const path = Array.from({ length: BENDS + 1 }, (_, bend) => placed(opened(from + ((angle - from) * bend) / BENDS), edge));
    const marks: readonly Mark[] = [{ mark: 'arrow', path }, { mark: 'label', at: path[Math.floor(BENDS / 2)] ?? edge, told: tell.angle(angle) }];
    return { id: seriesName(step, index + 1), number: index + 1, view: STANDARD_VIEW, bodies: [...rest, ...turnedOpen(angle)], marks };
  });
}

/** Whether what is so far from an axis goes up when it is turned about it. */
const rises = (axis: Vec3, arm: Vec3): boolean => {
  const up: Vec3 = [0, 0, 1];
  const start = placed(turned(axis, 0.01), arm);
  return lengthOf(arm) > 0 && dot(minus(start, arm), up) > 0;
};
