import { expect, it } from 'vitest';
import { chained, placed, type Model, type Pose } from '../../src/model/index.ts';
import { FASTENERS, lowestPeg } from '../../src/plan/index.ts';
import { boxOfBlock, footingBlocks } from '../../src/scene/kit/blocks.ts';
import { turnedBy } from '../../src/scene/kit/index.ts';
import { workSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { planOf } from '../support/plans.ts';
import { solids } from '../support/rack.ts';

/** Whether nothing of what is there lies lower than its pegs. */
function isOnPegs({ parts }: Model, lying: Pose, present: readonly string[]): boolean {
  const there = parts.filter(({ id, kind }) => present.includes(id) && !FASTENERS.has(kind));
  return lowestPeg(there, lying) < Math.min(...there.map(({ shape, pose }) => solids.box({ shape, pose: chained(lying, pose) }).min[2])) + 0.01;
}

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

it.each(workSizes)('what stands on edge on the $name while its holes are drilled stands on blocks, not on pegs', ({ item, size }) => {
  const model = modelOf(item, size);
  const onPegs = planOf(item, size).steps.filter(({ drillsFor, standing, footing, props, present }) => drillsFor.length > 0 && standing.name === 'lying' && footing.before.length === 0 && props.length === 0
    && isOnPegs(model, standing.pose, present));
  expect(onPegs.map(({ key }) => key)).toEqual([]);
});

it.each(workSizes)('feet of the $name are knocked in when all sleeves on their bars are pinned', ({ item, size }) => {
  const { connections } = modelOf(item, size);
  const loose = planOf(item, size).steps.flatMap((step) => {
    const bars = connections.flatMap((each) => (each.is === 'foot' && step.newParts.some(({ ids }) => ids.includes(each.foot)) ? [each.bar] : []));
    const pinned = (bar: string, joint: string): boolean => connections.some((each) => each.is === 'pin' && each.holds.includes(bar) && each.holds.includes(joint) && step.present.includes(each.pin));
    return connections.flatMap((each) => (each.is === 'sleeve' && bars.includes(each.bar) && !pinned(each.bar, each.joint) ? [`${step.key}: ${each.bar} in ${each.joint}`] : []));
  });
  expect(loose).toEqual([]);
});

it.each(workSizes.filter(({ item }) => item.name === 'bench'))('nothing of the $name is knocked down on while it stands on its pegs', ({ item, size }) => {
  const model = modelOf(item, size);
  const knocked = planOf(item, size).steps.filter(({ action, run, standing, motions }) => action === 'push-tubes' && run === null && standing.name === 'lying'
    && motions.some((motion) => motion.kind === 'slide' && turnedBy(standing.pose, motion.by)[2] < -1));
  const onPegs = knocked.filter(({ standing, present }) => isOnPegs(model, standing.pose, present));
  expect(onPegs.length).toBeGreaterThan(0);
  expect(onPegs.map(({ key, footing }) => [key, footing.before.length > 0])).toEqual(onPegs.map(({ key }) => [key, true]));
});
