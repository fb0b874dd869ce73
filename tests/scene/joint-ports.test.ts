import { beforeAll, describe, expect, it } from 'vitest';
import { dot, jointPorts, minus, placed, unit, type Solids } from '../../src/model/index.ts';
import { closeUpScene, finishedScene, newJoints } from '../../src/scene/index.ts';
import { withBlindEnds } from '../../src/scene/kit/blind-ends.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { planOnce } from '../support/plans.ts';

const never = (): never => { throw new Error('not there'); };

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

describe.each(['rack', 'chair', 'bed'])('the sockets of the %s', (name) => {
  const model = modelOf(itemNamed(name));
  const sockets = model.parts.reduce((sum, { shape }) => sum + (jointPorts(shape)?.ports.filter(({ is }) => is === 'socket').length ?? 0), 0);
  const taken = model.connections.filter(({ is }) => is === 'socket').length;

  it('are dark in their mouths as long as no bar stands in them, and no sleeve is', () => {
    const whole = finishedScene(model, solids);
    const bare = { ...whole, bodies: whole.bodies.filter(({ kind }) => kind === 'joint') };
    const dark = (scene: typeof whole) => withBlindEnds(model, solids, scene).bodies.filter(({ closesBlind }) => closesBlind);
    expect(dark(bare)).toHaveLength(sockets);
    expect(dark(whole)).toHaveLength(sockets - taken);
    for (const body of dark(bare)) {
      const joint = bare.bodies.find(({ id }) => id === body.partId);
      const part = model.parts.find(({ id }) => id === body.partId);
      if (joint === undefined || part === undefined) throw new Error('dark without a joint');
      const middle = placed(joint.pose, [0, 0, 0]);
      const out = unit(minus(placed(body.pose, [0, 0, 0]), middle));
      const along = jointPorts(part.shape)?.ports.filter(({ axis }) => dot(unit(minus(placed(joint.pose, [axis[0], axis[1], axis[2]]), middle)), out) > 0.99).map(({ is }) => is);
      expect(along).toEqual(['socket']);
    }
  });

  it('are drilled at the mark that is measured from the rim of the sleeve', () => {
    const plan = planOnce(model, itemNamed(name).order);
    const shown = plan.steps.filter(({ drillsFor }) => drillsFor.length > 0).flatMap((step) => closeUpScene(model, step, solids) ?? []).filter(({ bodies }) => bodies.some(({ id }) => id === 'sleeve-mark'));
    expect(shown.length).toBeGreaterThan(0);
    for (const { bodies, marks } of shown) {
      const [mark, joint] = [bodies.find(({ id }) => id === 'sleeve-mark'), bodies.find(({ kind }) => kind === 'joint')];
      const length = marks.find((each) => each.mark === 'length');
      const sleeve = jointPorts(model.parts.find(({ id }) => id === joint?.partId)?.shape ?? never())?.ports.find(({ is }) => is === 'sleeve');
      if (mark === undefined || joint === undefined || length?.mark !== 'length' || length.told.as !== 'length' || sleeve?.is !== 'sleeve') return never();
      const along = (point: readonly [number, number, number]): number => dot(minus(point, placed(joint.pose, [0, 0, 0])), minus(placed(joint.pose, [sleeve.axis[0], sleeve.axis[1], sleeve.axis[2]]), placed(joint.pose, [0, 0, 0])));
      expect([sleeve.above, -sleeve.below].some((end) => Math.abs(along(length.from) - end) < 1e-6)).toBe(true);
      expect(Math.abs(along(length.from) - along(placed(mark.pose, [0, 0, 0])))).toBeCloseTo(length.told.mm, 6);
      expect(along(length.to)).toBeCloseTo(along(placed(mark.pose, [0, 0, 0])), 6);
      expect(along(placed(mark.pose, [0, 0, 0]))).toBeCloseTo(-sleeve.pin, 6);
    }
  });

  it('are told once for each sort of joint, at the step that first brings it', () => {
    const plan = planOnce(model, itemNamed(name).order);
    const told = plan.steps.flatMap((step) => newJoints(model, plan, step, solids).map((shown) => ({ step, ...shown })));
    const first = plan.steps.find(({ newParts }) => newParts.some(({ kind }) => kind === 'joint'));
    const sorts = new Set(model.parts.flatMap(({ shape }) => (shape.form === 'ported-joint' ? [shape.joint.name] : shape.form === 'joint' ? ['corner'] : [])));
    expect(told).toHaveLength(sorts.size);
    expect(told[0]?.step.number).toBe(first?.number);
    for (const { joint, places, hasCords } of told) expect([new Set(places.map(({ port }) => port.is)), hasCords]).toEqual([new Set(joint.ports.map(({ is }) => is)), model.parts.some(({ kind }) => kind === 'cable')]);
  });
});
