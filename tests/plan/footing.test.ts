import { expect, it } from 'vitest';
import { chained, placed } from '../../src/model/index.ts';
import { boxOfBlock, footingBlocks } from '../../src/scene/kit/blocks.ts';
import { turnedBy } from '../../src/scene/kit/index.ts';
import { workSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';

/** A wing nut is so far across: it needs as much room under a bar as a hand that turns it, mm. */
const HALF_A_NUT = 16;

it.each(workSizes)('no block of the $name stands under a hole that is drilled or pinned straight down through what lies on it', ({ item, size }) => {
  const model = modelOf(item, size);
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const under = planOf(item, size).steps.flatMap((step) => {
    const fresh = [...step.drillsFor, ...step.newParts.flatMap(({ ids }) => ids)];
    const pins = model.connections.flatMap((each) => (each.is === 'pin' && fresh.includes(each.pin) ? [each] : []));
    const blocks = footingBlocks(step.footing.before, step.standing.pose).map((block) => ({ box: boxOfBlock(block), holds: block.holds }));
    return pins.flatMap(({ pin, holds }) => {
      const pose = chained(step.standing.pose, parts.get(pin)?.pose ?? []);
      const [x, y] = placed(pose, [0, 0, 0]);
      const isUpright = Math.abs(turnedBy(pose, [0, 0, 1])[2]) > 0.9;
      return blocks.filter((block) => isUpright && holds.some((id) => block.holds.includes(id))
        && x > block.box.min[0] - HALF_A_NUT && x < block.box.max[0] + HALF_A_NUT && y > block.box.min[1] - HALF_A_NUT && y < block.box.max[1] + HALF_A_NUT).map(() => `${step.key}: ${pin}`);
    });
  });
  expect(under).toEqual([]);
});
