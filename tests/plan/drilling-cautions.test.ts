import { describe, expect, it } from 'vitest';
import { workSizes } from '../support/chosen.ts';
import { modelOf } from '../support/items.ts';
import { planOf, planOnce } from '../support/plans.ts';

describe('whoever drills', () => {
  it.each(workSizes)('is kept from holding a hand where the bit comes out, at each step of the $name', ({ item, size }) => {
    const drilled = planOf(item, size).steps.filter(({ drillsFor, tools }) => drillsFor.length > 0 && tools.includes('drill'));
    expect(drilled.length).toBeGreaterThan(0);
    for (const { key, cautions } of drilled) expect([key, cautions.includes('bit')]).toEqual([key, true]);
  });

  it.each(['masonry', 'timber', 'board'] as const)('is kept from wires and pipes in a wall of %s', (wall) => {
    const { item, size } = workSizes.find((each) => each.item.name === 'rack') ?? workSizes[0] ?? { item: null, size: '' };
    if (item === null) throw new Error('no size');
    const [step, ...others] = planOnce(modelOf(item, size), item.order, wall).steps.filter(({ detail }) => detail.on === 'wall');
    expect(others).toEqual([]);
    expect(step?.cautions).toContain('lines');
  });
});
