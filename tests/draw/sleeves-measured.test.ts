import { describe, expect, it } from 'vitest';
import type { Model } from '../../src/model/index.ts';
import { FORMATS } from '../../src/draw/formats.ts';
import { sleevesMeasured } from '../../src/draw/work-kit/index.ts';
import { planTubes } from '../../src/cut/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { planOnce } from '../support/plans.ts';
import { texts } from './flat/inspect.ts';

const rack = modelOf(itemNamed('rack'), 'low');
const plan = planOnce(rack, [], null);
const step = plan.steps.find(({ action }) => action === 'drill');

/** The same with every corner's sleeve told upside down: the hole is nearer to its upper end. */
const upsideDown: Model = {
  ...rack,
  parts: rack.parts.map((part): Model['parts'][number] => (part.shape.form !== 'joint' ? part : {
    ...part, shape: { ...part.shape, joint: { ...part.shape.joint, sleeveAbove: part.shape.joint.sleeveBelow, sleeveBelow: part.shape.joint.sleeveAbove, pinHeight: -part.shape.joint.pinHeight } },
  })),
};

describe('the measured place of a hole through a sleeve', () => {
  it('is told from the end that is nearer, whichever that is, as it lies in the step', async () => {
    if (step === undefined) throw new Error('nothing is drilled');
    const cuts = await planTubes(rack);
    const [usual, turned] = [rack, upsideDown].map((model) => sleevesMeasured({ model, plan, cuts, papers: FORMATS.page }, step));
    expect([usual, turned].map((pictures) => pictures?.map(texts))).toEqual([[['16']], [['16']]]);
    const rims = [usual, turned].map((pictures) => pictures?.[0]?.labels[0]?.x ?? NaN);
    expect(rims.every(Number.isFinite)).toBe(true);
    expect(rims[0]).not.toBeCloseTo(rims[1] ?? NaN, 1);
  });
});
