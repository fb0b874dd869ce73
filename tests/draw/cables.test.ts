import { describe, expect, it } from 'vitest';
import { FRAMES } from '../../src/draw/flat/cable/frames.ts';
import { FORMATS } from '../../src/draw/formats.ts';
import { cableSheets } from '../../src/draw/work-kit/index.ts';
import { itemNamed, modelOf } from '../support/items.ts';
import { cutsOnce, planOnce } from '../support/plans.ts';
import { texts } from './flat/inspect.ts';

describe.each(['rack', 'bench'])('the knots of the %s', (name) => {
  it('stand at the step that ties first, once; every later one names that step and tells its own lengths', async () => {
    const item = itemNamed(name);
    const model = modelOf(item);
    const plan = planOnce(model, item.order);
    const cuts = await cutsOnce(model);
    const told = plan.steps.filter(({ action }) => action === 'brace').map((step) => ({ step, shown: cableSheets({ model, plan, cuts, papers: FORMATS.page }, step).map(texts) }));
    const tying = told.filter(({ shown }) => shown.some((figures) => [FRAMES.hitched, FRAMES.last].every((number) => figures.includes(String(number)))));
    expect(told.length).toBeGreaterThan(1);
    expect(tying.map(({ step }) => step.number)).toEqual([told[0]?.step.number]);
    for (const { shown } of told.slice(1)) expect([shown[1], shown[3]?.slice(0, 3)]).toEqual([[FRAMES.first, FRAMES.looped], [FRAMES.second, FRAMES.last]].map((range) => [told[0]?.step.number, ...range].map(String)));
    for (const { shown } of told) expect(shown.flat()).toContain(String(FRAMES.marked));
  });
});
