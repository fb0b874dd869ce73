import { chained, cross, lengthOf, plus, times, turned, undone, unit, type Model, type Pose, type Solids, type Vec3 } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import { turnedBy } from '../kit/directions.ts';
import { boxRound } from '../kit/extent.ts';
import { handsAlong } from '../kit/held.ts';
import { stageHand } from '../kit/stage.ts';
import { tapesOn } from '../kit/taped.ts';
import { tapedBodies, tapesCounted, turnedBodies, turnOf } from '../kit/turn.ts';
import { STANDARD_VIEW } from '../kit/views.ts';
import { tell } from '../told.ts';
import type { Mark, Scene, SceneBody } from '../types.ts';
import type { Rolled } from './history.ts';

/** A turn about an axis through the origin. */
interface Stage {
  readonly axis: Vec3;
  readonly angle: number;
}

/** No more turns than these are told of one step: of those that are alike the first stands for all. */
const MOST = 3;

/**
 * Before a step: the work as it was shown last, an arrow, and as the step shows it; one scene for each turn by hand, in
 * their order. What is turned alike is shown once, with how many there are. Several turns of one piece are numbered in
 * their order; where pieces are turned in ways of their own, each scene has the number of its piece.
 */
export function rolledScenes(model: Model, step: Step, rolled: readonly Rolled[], solids: Solids): readonly Scene[] {
  const kinds = kindsOf(rolled);
  return kinds.flatMap((each, place) => {
    const alike = rolled.filter((other) => isAlike(other.turn, each.turn)).length;
    return scenesOf(model, step, each, solids).map((scene, stage, all): Scene => ({
      ...scene,
      id: `${scene.id}:${place}:${stage}`,
      ...(kinds.length > 1 ? { number: place + 1 } : all.length > 1 ? { number: stage + 1 } : {}),
      marks: stage === all.length - 1 && alike > 1 ? [...scene.marks, countOf(scene, alike)] : scene.marks,
    }));
  });
}

/** Where several pieces are turned in ways of their own: which of the step's picture each is, by the number it has in its own. */
export function rolledNumbers({ bodies }: Scene, rolled: readonly Rolled[]): readonly Mark[] {
  const kinds = kindsOf(rolled);
  return kinds.length < 2 ? [] : kinds.map(({ parts }, place) => numberAt(bodies.filter(({ partId, kind }) => partId !== null && kind !== 'tool' && parts.includes(partId)), place));
}

/** Those of one step that are turned alike are one kind. */
export const kindsOf = (rolled: readonly Rolled[]): readonly Rolled[] =>
  rolled.filter(({ turn }, index) => rolled.findIndex((other) => isAlike(other.turn, turn)) === index).slice(0, MOST);

/** A number in the middle of a piece of work. */
function numberAt(bodies: readonly SceneBody[], place: number): Mark {
  const { min, max } = boxRound(bodies);
  return { mark: 'order', at: times(plus(min, max), 0.5), told: tell.number(place + 1) };
}

const isAlike = (one: Pose, other: Pose): boolean => one.every((value, index) => Math.abs(value - (other[index] ?? NaN)) < 1e-6);

const countOf = ({ bodies }: Scene, count: number): Scene['marks'][number] =>
  ({ mark: 'label', at: turnedTo(bodies.at(-1)), told: tell.times(count) });

const turnedTo = (body: SceneBody | undefined): Vec3 => [body?.pose[12] ?? 0, body?.pose[13] ?? 0, body?.pose[14] ?? 0];

function scenesOf(model: Model, step: Step, { parts, turn: rolled }: Rolled, solids: Solids): readonly Scene[] {
  // A flap that the step folds is as it was when the work comes to hand.
  const folded = step.folded.map((one) => {
    const fold = step.motions.find((motion) => motion.kind === 'fold' && motion.panel === one.panel && motion.flap === one.flap);
    return fold?.kind === 'fold' ? { ...one, stage: fold.from } : one;
  });
  const hand = stageHand(model, { ...step, folded }, solids);
  const asBefore = (body: SceneBody): SceneBody => ({ ...body, pose: chained(undone(rolled), body.pose) });
  let bodies = parts.map((id) => asBefore(hand.body(id, 'present')));
  const stages = stagesOf(rolled);
  let tapes = (stages.some(isOver) ? tapesOn(model, hand, parts) : []).map(asBefore);
  return stages.map(({ axis, angle }, index): Scene => {
    const turn = turnOf(axis, angle, bodies);
    const after = `#after${index}`;
    const shown = [...tapedBodies(tapes, turn, after), ...turnedBodies(bodies, turn, after)];
    const counted = index === 0 ? tapesCounted(tapes, turn) : [];
    bodies = bodies.map((body) => ({ ...body, pose: chained(turn.pose(1), body.pose) }));
    tapes = tapes.map((body) => ({ ...body, pose: chained(turn.pose(1), body.pose) }));
    return { id: `rolled:${step.number}`, bodies: shown, marks: [...turn.marks, ...counted, ...handsOn(step, bodies)], view: STANDARD_VIEW };
  });
}

/** Whether the work goes over an edge, so that what is loose in it would come out; on the spot it lies as it lay. */
const isOver = ({ axis: [, , z] }: Stage): boolean => Math.abs(z) < 0.5;

/** The hands of the second person, who holds work while it is turned as well. */
const handsOn = ({ held }: Step, turned: readonly SceneBody[]): readonly Mark[] =>
  held.flatMap((ids) => handsAlong(turned.filter(({ partId }) => partId !== null && ids.includes(partId))));

/** Any way round as at most two turns by hand: over a level edge until the right side is up, then on the spot. */
function stagesOf(turn: Pose): readonly Stage[] {
  const over = overTo(turnedBy(undone(turn), [0, 0, 1]), turn);
  const spin = chained(turn, undone(over === null ? turned([0, 0, 1], 0) : turned(over.axis, over.angle)));
  const [x, y] = turnedBy(spin, [1, 0, 0]);
  const angle = Math.atan2(y, x);
  return [...(over === null ? [] : [over]), ...(Math.abs(angle) < 1e-3 ? [] : [{ axis: [0, 0, Math.sign(angle)] as const, angle: Math.abs(angle) }])];
}

/** The turn over a level edge that brings up what will be up; none when it is. */
function overTo(up: Vec3, turn: Pose): Stage | null {
  if (up[2] > 1 - 1e-6) return null;
  if (up[2] < -1 + 1e-6) return { axis: turnedBy(turn, [1, 0, 0])[0] < -0.5 ? [0, 1, 0] : [1, 0, 0], angle: Math.PI };
  const axis = cross(up, [0, 0, 1]);
  return { axis: unit([axis[0], axis[1], 0]), angle: Math.atan2(lengthOf(axis), up[2]) };
}
