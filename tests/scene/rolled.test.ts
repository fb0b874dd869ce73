import { describe, expect, it } from 'vitest';
import { dot, placed, minus, type Model, type Pose, type Vec3 } from '../../src/model/index.ts';
import type { Plan, Step } from '../../src/plan/index.ts';
import { rolledScenes, rolledSteps, stepScene, unproppedScene, type Scene } from '../../src/scene/index.ts';
import { toldSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { planOnce } from '../support/plans.ts';

const solids = await sharedSolids();

const AXES: readonly Vec3[] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];
const axisOf = (pose: Pose, axis: Vec3): Vec3 => minus(placed(pose, axis), placed(pose, [0, 0, 0]));
/** A tube has no side that is up. */
const liesAlike = (one: Pose, other: Pose): boolean => AXES.every((axis) => dot(axisOf(one, axis), axisOf(other, axis)) > 0.999);

/** The bodies of a scene by their parts; of a turn, as they lie after it. */
function drawnAt(scene: Scene, isAfter: boolean): ReadonlyMap<string, Pose> {
  const ends = scene.bodies.filter(({ id }) => id.includes('#after'));
  const shown = ends.length === 0 ? scene.bodies : isAfter ? ends : scene.bodies.filter(({ id }) => !id.includes('#after'));
  return new Map(shown.flatMap(({ partId, id, pose }) => (partId !== null && id.split('#')[0] === partId && !(id.includes('#') && !id.includes('#after')) ? [[partId, pose] as const] : [])));
}

/** Parts that a picture shows another way round than the last one did, though no turn is drawn before it that leads from that way to this. */
function untold(model: Model, plan: Plan): readonly string[] {
  const last = new Map<string, Last>();
  const rolled = rolledSteps(model, plan);
  return plan.steps.flatMap((step) => {
    const scene = stepScene(model, step, solids);
    if (scene === null) return [];
    const laid = laidDown(model, plan, step, last);
    const signs = rolledScenes(model, step, rolled.get(step.number) ?? [], solids);
    const faults = faultsAt(step, drawnAt(scene, false), signs, last);
    drawnAt(scene, true).forEach((pose, id) => last.set(id, { pose, picture: step.number }));
    return [...laid, ...faults];
  });
}

/** What a step lays down first lies as that picture has it; the faults where it does not begin as the last one showed it. */
function laidDown(model: Model, plan: Plan, step: Step, last: Map<string, Last>): readonly string[] {
  const aside = unproppedScene(model, plan, step, solids);
  if (aside === null || !aside.bodies.some(({ id }) => id.endsWith('#after'))) return [];
  const faults = [...drawnAt(aside, false)].filter(([id, pose]) => !liesAlike(last.get(id)?.pose ?? pose, pose)).map(([id]) => `${step.number} laid down: ${id}`);
  drawnAt(aside, true).forEach((pose, id) => last.set(id, { pose, picture: last.get(id)?.picture ?? step.number }));
  return faults;
}

/** How a part was drawn last, and in which picture. */
interface Last {
  readonly pose: Pose;
  readonly picture: number;
}

/** The picture that has shown most of what a step shows. */
function mainOf(now: ReadonlyMap<string, Pose>, last: ReadonlyMap<string, Last>): number | undefined {
  const pictures = [...now.keys()].flatMap((id) => last.get(id)?.picture ?? []);
  const count = (picture: number): number => pictures.filter((each) => each === picture).length;
  return pictures.toSorted((a, b) => count(b) - count(a))[0];
}

function faultsAt({ number, key }: Step, now: ReadonlyMap<string, Pose>, signs: readonly Scene[], last: ReadonlyMap<string, Last>): readonly string[] {
  const main = mainOf(now, last);
  return [...now].flatMap(([id, pose]) => {
    const before = last.get(id);
    if (before === undefined || liesAlike(before.pose, pose)) return [];
    // What is brought may be laid down any way round; the same side of it is up.
    const upOf = AXES.map((axis) => axisOf(before.pose, axis)[2]);
    if (before.picture !== main && AXES.every((axis, index) => Math.abs(axisOf(pose, axis)[2] - (upOf[index] ?? NaN)) < 1e-3)) return [];
    const own = signs.filter((scene) => scene.bodies.some(({ partId }) => partId === id));
    const [first, end] = [own[0], own.at(-1)];
    const isTold = first !== undefined && end !== undefined
      && liesAlike(drawnAt(first, false).get(id) ?? pose, before.pose) && liesAlike(drawnAt(end, true).get(id) ?? before.pose, pose);
    return isTold || standsForAll(signs, own) ? [] : [`${number} ${key}: ${id}`];
  });
}

/** Of several pieces turned alike one is drawn, with how many there are. */
const standsForAll = (signs: readonly Scene[], own: readonly Scene[]): boolean =>
  own.length === 0 && signs.some(({ marks }) => marks.some(({ mark }) => mark === 'label'));

describe.each(toldSizes.map(({ name, item, size }) => [name, item, size] as const))('%s', (_, item, size) => {
  it('lies in each picture as the last one showed it, but for turns that are drawn', () => {
    const model = modelOf(item, size);
    expect(untold(model, planOnce(model, item.order))).toEqual([]);
  });
});
