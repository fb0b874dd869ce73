import { beforeAll, describe, expect, it } from 'vitest';
import { stepScene } from '../../src/scene/index.ts';
import { placed, wallPlaces, type Model, type Solids, type Vec3 } from '../../src/model/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';
import { planOnce } from '../support/plans.ts';

const joints = ({ parts }: Model) => parts.filter(({ kind }) => kind === 'joint').map(({ pose }) => placed(pose, [0, 0, 0]));

describe('the places where an item is fixed to a wall', () => {
  it.each(['low', 'standard', 'tall'])('of the rack, %s: on the two rear posts, near their tops, on no joint', (size) => {
    const model = modelOf(itemNamed('rack'), size);
    const places = wallPlaces(model);
    const rear = Math.max(...joints(model).map(([, y]) => y));
    const top = Math.max(...joints(model).map(([, , z]) => z));
    expect(places.map(({ at: [x] }) => Math.sign(x))).toEqual([-1, 1]);
    for (const { at } of places) {
      expect(at[1]).toBeCloseTo(rear, 6);
      expect(at[2]).toBeGreaterThan(top - 200);
      const near = joints(model).filter(([x, y]) => Math.hypot(x - at[0], y - at[1]) < 1).map(([, , z]) => Math.abs(z - at[2]));
      expect(Math.min(...near)).toBeGreaterThan(model.kit.joint.sleeveBelow + 15);
    }
  });
});

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

describe.each([['rack', 'standard'], ['chest', 'standard']] as const)('how the %s is pushed to its wall', (name, size) => {
  it('is told by an arrow on the floor beside it, towards the wall, and by one onto a bracket', () => {
    const model = modelOf(itemNamed(name), size);
    const step = planOnce(model, itemNamed(name).order, 'masonry').steps.find(({ action }) => action === 'fix-to-wall');
    if (step === undefined) throw new Error('no step at the wall');
    const right = wallPlaces(model).toSorted((one, other) => other.at[0] - one.at[0])[0]?.at ?? [NaN, NaN, NaN];
    const [origin, ...axes] = ([[0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 1]] as const).map((at) => placed(step.standing.pose, at));
    /** From the rightmost bracket, in the item's own axes. */
    const own = (point: Vec3): readonly number[] => axes.map((axis) => axis.reduce((sum, value, each) => sum + (value - (origin?.[each] ?? NaN)) * ((point[each] ?? NaN) - (placed(step.standing.pose, right)[each] ?? NaN)), 0));
    const arrows = (stepScene(model, step, solids)?.marks ?? []).flatMap((mark) => (mark.mark === 'arrow' ? [mark.path.map(own)] : []));
    expect(arrows).toHaveLength(2);
    const [[from, to] = [], onto] = arrows;
    expect([from?.[2], to?.[2]]).toEqual([expect.closeTo(-right[2], 6), expect.closeTo(-right[2], 6)]);
    expect(Math.min(from?.[0] ?? NaN, to?.[0] ?? NaN)).toBeGreaterThan(50);
    expect(from?.[1]).toBeLessThan(to?.[1] ?? NaN);
    expect(to?.[1]).toBeLessThan(0);
    expect(Math.hypot(...(onto?.at(-1) ?? [NaN]))).toBeLessThan(60);
  });
});
