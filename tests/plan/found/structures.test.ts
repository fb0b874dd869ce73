import { describe, expect, it } from 'vitest';
import { buildModel, loadSolids } from '../../../src/model/index.ts';
import { faultsOf, findPlan } from '../../../src/plan/index.ts';
import { structureItem } from '../../support/structures.ts';

const solids = await loadSolids();

describe.each(['screen', 'trolley', 'leaning-chair'] as const)('the order found for a draft: %s', (name) => {
  const item = structureItem(name);
  const model = buildModel(item, item.sizes[0]?.name ?? '');
  const plan = findPlan(model, item.order, solids);

  it('leaves every motion free and brings every part once', () => {
    expect(plan.steps.length).toBeGreaterThan(15);
    expect(faultsOf(model, plan, solids)).toEqual([]);
    const brought = plan.steps.flatMap(({ newParts }) => newParts);
    expect(new Set(brought).size).toBe(brought.length);
  });
});
