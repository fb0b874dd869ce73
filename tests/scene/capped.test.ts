import { beforeAll, describe, expect, it } from 'vitest';
import { openEnds, openPlaces, placed, type Solids } from '../../src/model/index.ts';
import { finishedScene } from '../../src/scene/index.ts';
import { withCaps } from '../../src/scene/kit/capped.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { sharedSolids } from '../support/kernel.ts';

let solids: Solids;
beforeAll(async () => { solids = await sharedSolids(); });

describe.each([['rack', 'standard'], ['bed', 'toddler'], ['chest', 'standard']] as const)('caps of the %s %s', (item, size) => {
  const model = modelOf(itemNamed(item), size);

  it('are as many as ends stay open', () => {
    expect(openPlaces(model)).toHaveLength(openEnds(model).reduce((sum, { count }) => sum + count, 0));
  });

  it('sit on the ends of their tubes, plug inwards', () => {
    const whole = finishedScene(model, solids);
    const caps = withCaps(model, solids, whole).bodies.filter((body) => !whole.bodies.some(({ id }) => id === body.id));
    expect(caps).toHaveLength(openPlaces(model).length);
    for (const cap of caps) {
      const tube = whole.bodies.find(({ id }) => id === cap.partId);
      const shape = model.parts.find(({ id }) => id === cap.partId)?.shape;
      if (tube === undefined || shape?.form !== 'tube') throw new Error('a cap on no tube');
      const apart = (a: readonly number[], b: readonly number[]): number => Math.hypot(...a.map((value, axis) => value - (b[axis] ?? 0)));
      const middle = placed(tube.pose, [0, 0, 0]);
      expect(apart(placed(cap.pose, [0, 0, 0]), middle)).toBeCloseTo(shape.length / 2, 3);
      expect(apart(placed(cap.pose, [0, 0, 10]), middle)).toBeCloseTo(shape.length / 2 - 10, 3);
    }
  });
});
