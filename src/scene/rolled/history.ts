import { chained, dot, standstill, turned, undone, type Model, type Pose, type Vec3 } from '../../model/index.ts';
import { afterTurn, type Plan, type Step } from '../../plan/index.ts';
import { turnedBy } from '../kit/directions.ts';
import { laidAside } from '../laid-aside.ts';
import { motionsOnto } from './copies.ts';
import { partsShown } from '../kit/parts-shown.ts';

/** Work that a step shows another way round than it was shown last. */
export interface Rolled {
  readonly parts: readonly string[];
  /** How it leads from the pose it was shown in last to the one it is shown in now, a turn about the origin. */
  readonly turn: Pose;
}

/** How a part was shown last: the ways that look the same, and the picture of the work that it belonged to. */
interface Shown {
  readonly poses: readonly Pose[];
  /** Tells works apart. */
  readonly work: string;
}

/**
 * For every step by its number, the work that lies another way round in its picture than in the last one that showed
 * it, so far as no step has turned it. Work on the bench shows none.
 */
export function rolledSteps(model: Model, plan: Plan): ReadonlyMap<number, readonly Rolled[]> {
  const shown = new Map<string, Shown>();
  const rolled = new Map<number, readonly Rolled[]>();
  const steps = plan.steps.filter(({ standing }) => standing.name !== 'bench');
  steps.forEach((step, index) => {
    rolled.set(step.number, rolledIn(step, shown));
    const tip = laidAside(model, step, plan.steps.find(({ number }) => number > step.number));
    const pose = tip === null ? turnedBySteps(step) : chained(turned(tip.axis, tip.angle), step.standing.pose);
    partsShown(step).forEach((id) => shown.set(id, { poses: [pose], work: `${step.number}` }));
    if (step.run !== null && steps[index + 1]?.run !== step.run) copiesShown(model, plan, step.run, pose).forEach((each, id) => shown.set(id, each));
  });
  return rolled;
}

/** How the work lies when a step is done. */
function turnedBySteps({ standing, motions }: Step): Pose {
  const turn = motions.find((motion) => motion.kind === 'turn');
  return afterTurn(turn?.kind === 'turn' ? turn : null, standing.pose);
}

/** What has been made several times was shown once: the first as it was, each other in all ways that look like that one. */
function copiesShown(model: Model, plan: Plan, run: string, pose: Pose): ReadonlyMap<string, Shown> {
  const [first, ...others] = plan.batches.find(({ name }) => name === run)?.copies ?? [];
  if (first === undefined) return new Map();
  return new Map([first, ...others].flatMap((copy, index) => {
    const poses = index === 0 ? [pose] : motionsOnto(model, first, copy).map((motion) => chained(pose, undone(motion)));
    return poses.length === 0 ? [] : copy.map((id): [string, Shown] => [id, { poses, work: `${run} ${index}` }]);
  }));
}

function rolledIn(step: Step, shown: ReadonlyMap<string, Shown>): readonly Rolled[] {
  const groups = new Map<string, { readonly parts: string[]; readonly poses: readonly Pose[] }>();
  for (const id of partsShown(step)) {
    const last = shown.get(id);
    if (last === undefined) continue;
    const group = groups.get(last.work) ?? { parts: [], poses: last.poses };
    group.parts.push(id);
    groups.set(last.work, group);
  }
  const works = [...groups.values()].filter(({ parts }) => parts.length > 1).toSorted((a, b) => b.parts.length - a.parts.length);
  return works.flatMap(({ parts, poses }, place): readonly Rolled[] => {
    const turn = least(poses.map((pose) => chained(step.standing.pose, undone(pose))));
    return turn === null || isNone(turn) || (place > 0 && isSameUp(turn)) ? [] : [{ parts, turn: withoutShift(turn) }];
  });
}

/** How the work of a batch lies when it is made; with null, the item when it is finished. As it is used where nothing is put together. */
export function poseAfter({ steps }: Plan, run: string | null): Pose {
  const last = steps.filter((step) => step.run === run && step.standing.name !== 'bench').at(-1);
  return last === undefined ? standstill : turnedBySteps(last);
}

/** Whether the finished item stands as it is used, its front in front. */
export const isAsUsed = (pose: Pose): boolean => isNone(pose);

/** What comes to the greatest piece of work is laid beside it as its picture shows it: only another side up has to be told. */
const isSameUp = (turn: Pose): boolean => turnedBy(turn, [0, 0, 1])[2] > 1 - 1e-4;

/** Sum of the diagonal: 3 for no turn, −1 for half a turn. */
const trace = (turn: Pose): number => AXES.reduce((sum, axis) => sum + dot(turnedBy(turn, axis), axis), 0);
const AXES: readonly Vec3[] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

const least = (turns: readonly Pose[]): Pose | null => turns.reduce<Pose | null>((best, turn) => (best === null || trace(turn) > trace(best) + 1e-9 ? turn : best), null);

/** Whether a turn leads half round about the upright. */
export const isHalfRound = (turn: Pose): boolean => isSameUp(turn) && trace(turn) < -1 + 1e-4;

const isNone = (turn: Pose): boolean => trace(turn) > 3 - 1e-4;

function withoutShift(turn: Pose): Pose {
  const [x, y, z] = AXES.map((axis) => turnedBy(turn, axis).map((value) => Math.round(value * 1e9) / 1e9)) as unknown as readonly [Vec3, Vec3, Vec3];
  return [...x, 0, ...y, 0, ...z, 0, 0, 0, 0, 1] as unknown as Pose;
}
