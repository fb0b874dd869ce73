import { chained, dot, lengthOf, times, turned, unit, type Pose, type Vec3 } from '../../model/index.ts';
import type { Standing } from '../types.ts';
import { poseFor } from './poses.ts';
import type { FoundStep } from './types.ts';
import { turnedBy } from './vectors.ts';

export const UPRIGHT = 0.999;

/** A line of steps as it may be told: how the work lies at each, and what a reader has to follow by it. */
interface Told {
  readonly poses: readonly Pose[];
  readonly cost: number;
}

/** What a reader has to follow, by how hard it is: work that lies another way without a turn, or only another way round, something that comes from aside or from behind. */
const HARD = { jump: 1, spun: 0.3, aside: 0.3, unseen: 2.4, end: 0.9 } as const;

/**
 * How the work lies at each step. It lies as the step before has left it, and is turned only where a step turns it,
 * where the plan needs another side up, or where what comes to the upright item would not be seen coming. Which of four
 * ways round a line of work begins is open: that which asks the reader to follow least is taken.
 */
export function standingsOf(found: readonly FoundStep[]): readonly Standing[] {
  const steps = laidAsUsed(found);
  const shown = new Map<string, Pose>();
  const standings = new Map<number, Standing>();
  for (const line of linesOf(steps)) {
    const ways = [0, 1, 2, 3].map((quarter) => toldFrom(line, quarter, shown));
    const { poses } = ways.reduce((best, way) => (way.cost < best.cost - 1e-9 ? way : best));
    line.forEach((step, index) => {
      const pose = poses[index] ?? step.pose;
      standings.set(step.number, { name: nameOf(step), pose });
      partsOf(step).forEach((id) => shown.set(id, afterTurn(step.turns, pose)));
    });
  }
  return steps.map((step) => standings.get(step.number) ?? BENCH);
}

/** Work on the bench has no pose of its own. */
export const BENCH: Standing = { name: 'bench', pose: poseFor([0, 0, 1]) };

const nameOf = ({ batch, up }: FoundStep): Standing['name'] => (batch !== null || up[2] < UPRIGHT ? 'lying' : 'upright');

/**
 * What is pushed together level on the bench may lie any side up: it lies as the step that uses it next shows it, so that
 * nobody has to turn it over.
 */
function laidAsUsed(steps: readonly FoundStep[]): readonly FoundStep[] {
  return steps.reduceRight<readonly FoundStep[]>((later, step) => {
    const own = new Set(partsOf(step));
    const next = later.find((each) => !each.onBench && partsOf(each).some((id) => own.has(id)));
    return [next !== undefined && isLoose(step) && isLevel(step, next.up) ? { ...step, up: next.up } : step, ...later];
  }, []);
}

const isLoose = ({ does, held, props, turns }: FoundStep): boolean => (does === 'push' || does === 'close') && turns === null && held.length + props.length === 0;

const isLevel = ({ moves }: FoundStep, up: Vec3): boolean => moves.every(({ by }) => Math.abs(dot(by, up)) < 0.1 * lengthOf(by));

/** What is put together in one go: a sub-assembly, or the item as a whole. */
function linesOf(steps: readonly FoundStep[]): readonly (readonly FoundStep[])[] {
  const lines: FoundStep[][] = [];
  for (const step of steps.filter(({ onBench }) => !onBench)) {
    const last = lines.at(-1);
    if (last?.[0] !== undefined && last[0].batch === step.batch) last.push(step);
    else lines.push([step]);
  }
  return lines;
}

function toldFrom(line: readonly FoundStep[], quarter: number, shown: ReadonlyMap<string, Pose>): Told {
  const poses: Pose[] = [];
  let cost = 0;
  line.forEach((step, index) => {
    const before = line[index - 1];
    const last = before === undefined ? null : afterTurn(before.turns, poses[index - 1] ?? before.pose);
    const pose = last === null ? quarters(poseFor(step.up))[quarter] ?? step.pose : keptOrTurned(step, last);
    poses.push(pose);
    if (last !== null && !samePose(pose, last)) cost += HARD.jump;
    cost += toSee(step, pose);
    const there = new Set(before === undefined ? [] : partsOf(before));
    cost += toFollow(partsOf(step).filter((id) => !there.has(id)), pose, shown);
  });
  const end = line.at(-1);
  const isTurnedAway = end !== undefined && end.batch === null && !samePose(afterTurn(end.turns, poses.at(-1) ?? end.pose), poseFor([0, 0, 1]));
  return { poses, cost: cost + (isTurnedAway ? HARD.end : 0) };
}

/** How hard to follow is what lies differently from how it was shown before, of these parts. */
function toFollow(parts: readonly string[], pose: Pose, shown: ReadonlyMap<string, Pose>): number {
  const others = parts.map((id) => shown.get(id) ?? pose).filter((other) => !samePose(pose, other));
  const ways = new Map(others.map((other) => [other.map((value) => Math.round(value)).join(), other]));
  return [...ways.values()].reduce((sum, other) => {
    return sum + (isSameUp(pose, other) ? 0 : HARD.jump) + (samePose(nearest(quarters(pose), other), pose) ? 0 : HARD.spun);
  }, 0);
}

/** Whether the same side is up: what one pose has up, the other has as well. */
const isSameUp = (one: Pose, other: Pose): boolean => AXES.every((axis) => Math.abs(turnedBy(one, axis)[2] - turnedBy(other, axis)[2]) < 1 - UPRIGHT);

const partsOf = ({ present, newParts, moves }: FoundStep): readonly string[] => [...present, ...newParts, ...moves.flatMap(({ parts }) => parts)];

/** As the work lies: where the plan wants this side up, and what comes is seen coming. */
function keptOrTurned(step: FoundStep, last: Pose): Pose {
  if (turnedBy(last, step.up)[2] < UPRIGHT) return nearest(quarters(poseFor(step.up)), last);
  return nameOf(step) === 'lying' || isSeenFrom(last, step) ? last : bestOf(step, last);
}

const quarters = (pose: Pose): readonly Pose[] => [0, 1, 2, 3].map((quarter) => chained(turned([0, 0, 1], (quarter * Math.PI) / 2), pose));

/** The least turn from another pose: the greatest trace of what leads from one to the other. */
function nearest(poses: readonly Pose[], to: Pose): Pose {
  const alike = (pose: Pose): number => AXES.reduce((sum, axis) => sum + dot(turnedBy(pose, axis), turnedBy(to, axis)), 0);
  return poses.reduce((best, pose) => (alike(pose) > alike(best) + 1e-9 ? pose : best));
}

const AXES: readonly Vec3[] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

const samePose = (one: Pose, other: Pose): boolean => AXES.every((axis) => dot(turnedBy(one, axis), turnedBy(other, axis)) > UPRIGHT);

/** How the work lies when a step is done that turns it, if it does: the plan tells what comes up, so the work goes the other way. */
export function afterTurn(turn: { readonly axis: Vec3; readonly angle: number } | null, pose: Pose): Pose {
  return turn === null ? pose : chained(turned(times(turnedBy(pose, turn.axis), -1), turn.angle), pose);
}

/** Towards the eye in all pictures, on the level. */
const EYE: Vec3 = unit([0.5, -0.86, 0]);
/** What comes from a direction is seen well from one that is off it by no more than 70°. */
const SEEN = 0.34;
/** What is further round than 130° comes from behind the work. */
const BEHIND = -0.64;

/** The level direction that what moves comes from, as it is seen; null where it comes from above or below. */
function comesFrom({ moves }: FoundStep, pose: Pose): Vec3 | null {
  const [x, y] = moves.reduce<Vec3>((sum, { by }) => {
    const way = turnedBy(pose, times(by, -1 / lengthOf(by)));
    return [sum[0] + way[0], sum[1] + way[1], 0];
  }, [0, 0, 0]);
  return Math.hypot(x, y) < 0.5 ? null : unit([x, y, 0]);
}

/** How hard it is to see what comes: from aside its mouth is turned away, from behind the work hides it. */
function toSee(step: FoundStep, pose: Pose): number {
  if (isSeenFrom(pose, step)) return 0;
  return dot(comesFrom(step, pose) ?? EYE, EYE) > BEHIND ? HARD.aside : HARD.unseen;
}

function isSeenFrom(pose: Pose, step: FoundStep): boolean {
  const from = comesFrom(step, pose);
  return from === null || dot(from, EYE) > SEEN;
}

function bestOf(step: FoundStep, last: Pose): Pose {
  const seen = (pose: Pose): number => dot(comesFrom(step, pose) ?? EYE, EYE);
  return quarters(last).reduce((best, pose) => (seen(pose) > seen(best) + 1e-9 ? pose : best));
}
