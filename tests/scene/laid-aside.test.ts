import { expect, it } from 'vitest';
import { lengthOf, minus, placed, type Vec3 } from '../../src/model/index.ts';
import { unproppedScene, type SceneBody } from '../../src/scene/index.ts';
import { everySize, modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

/** How high the places of bodies reach, from the lowest of them, mm. */
function reachOf(bodies: readonly SceneBody[]): number {
  const heights = bodies.flatMap(({ mesh, pose }) => Array.from({ length: mesh.positions.length / 3 }, (_, index) => placed(pose, mesh.positions.slice(3 * index, 3 * index + 3) as unknown as Vec3)[2]));
  return heights.reduce((most, height) => Math.max(most, height), -Infinity) - heights.reduce((least, height) => Math.min(least, height), Infinity);
}

const chests = everySize.filter(({ item }) => item.name === 'chest');

it.each(chests)('$name: the frame that somebody has held is laid down before other work is begun, by one person', ({ item, size }) => {
  const model = modelOf(item, size);
  const plan = planOf(item, size);
  const left = plan.steps.flatMap((step, index) => {
    const before = plan.steps[index - 1];
    const isOther = before !== undefined && before.held.length > 0 && before.run === null && ![...step.present, ...step.newParts.flatMap(({ ids }) => ids)].some((id) => before.present.includes(id));
    return isOther ? [{ step, before }] : [];
  });
  expect(left.length).toBeGreaterThan(0);
  for (const { step, before } of left) {
    const scene = unproppedScene(model, plan, step, solids);
    const bodies = scene?.bodies ?? [];
    const after = bodies.filter(({ id }) => id.endsWith('#after') && !id.startsWith('block'));
    const stood = after.flatMap(({ partId }) => bodies.filter((body) => body.partId === partId && !body.id.endsWith('#after')));
    expect([step.key, after.length]).toEqual([step.key, before.present.length + before.newParts.flatMap(({ ids }) => ids).length]);
    expect([step.key, reachOf(after)]).toEqual([step.key, expect.toSatisfy((high: number) => high < reachOf(stood))]);
    expect(after.every(({ pose }, index) => lengthOf(minus(placed(pose, [0, 0, 0]), placed(stood[index]?.pose ?? pose, [0, 0, 0]))) > 1)).toBe(true);
    expect([step.key, scene?.marks.flatMap((mark) => (mark.mark === 'hand' ? [mark.person] : []))]).toEqual([step.key, [1, 1]]);
  }
});
