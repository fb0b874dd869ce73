import { describe, expect, it } from 'vitest';
import { buildModel } from '../../../src/model/index.ts';
import { groundOf } from '../../../src/plan/found/ground.ts';
import { solve, startSearch } from '../../../src/plan/found/search.ts';
import type { Quantity } from '../../../src/read/index.ts';
import { itemNamed, modelOf } from '../../support/items.ts';
import { sharedSolids } from '../../support/kernel.ts';

const solids = await sharedSolids();

const mm = (value: number): Quantity => ({ value, dimension: 'length' });

/** A wish that nothing goes against: with it every cut is tried, also those that are left for sets which come apart in no other way. */
const NO_WISH = { first: new Set<never>(), then: new Set<never>() };

describe('the cuts that are tried first', () => {
  const rack = itemNamed('rack');
  const narrow = { ...rack, sizes: rack.sizes.map((size) => ({ ...size, values: { ...size.values, width: mm(500), depth: mm(300) } })) };
  it.each([
    ['rack low', modelOf(rack, 'low')], ['rack standard, 500 by 300 mm', buildModel(narrow, 'standard')], ['chair mark-2', modelOf(itemNamed('chair'), 'mark-2')],
    ['stool low', modelOf(itemNamed('stool'), 'low')], ['trolley small', modelOf(itemNamed('trolley'), 'small')],
  ])('lead to a plan that costs no more than with all cuts: %s', (_, model) => {
    const ground = groundOf(model, model.connections, solids);
    const cost = (wanted: Parameters<typeof startSearch>[1]): number => Math.min(...solve(startSearch(ground, wanted), ground.finished, 1).best);
    expect(cost([])).toBeCloseTo(cost([NO_WISH]), 9);
  });
});
