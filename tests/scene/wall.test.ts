import { describe, expect, it } from 'vitest';
import { placed, wallPlaces, type Model } from '../../src/model/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';

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
