import { describe, expect, it } from 'vitest';
import { buildModel, loadSolids } from '../../../src/model/index.ts';
import { faultsOf, findPlan } from '../../../src/plan/index.ts';
import { structureItem, structureNames } from '../../support/structures.ts';

const solids = await loadSolids();

describe.each(structureNames)('the order found for %s', (name) => {
  const item = structureItem(name);
  const model = buildModel(item, item.sizes[0]?.name ?? '');
  const plan = findPlan(model, item.order, solids);

  it('leaves every motion free and brings every part once', () => {
    expect(plan.steps.length).toBeGreaterThan(15);
    expect(faultsOf(model, plan, solids)).toEqual([]);
    const brought = plan.steps.flatMap(({ newParts }) => newParts);
    expect(new Set(brought).size).toBe(brought.length);
  });

  it('holds or props whatever would fall, with two people', () => {
    for (const { key, held, moves } of plan.steps) expect([key, held.length + Math.min(1, moves.length) <= 2]).toEqual([key, true]);
  });

  it('stands upright at the end', () => {
    const last = plan.steps.at(-1);
    expect((last?.turns?.to ?? last?.up)?.[2]).toBeGreaterThan(0.99);
  });
});
