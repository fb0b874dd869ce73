import { describe, expect, it } from 'vitest';
import { printedLoads } from '../../../src/booklet/index.ts';
import { everySize, modelOf, reportOf } from '../../support/items.ts';

describe('the loads that are printed', () => {
  it.each(everySize)('are as many as there are places, and together what is told beside them, of the $name', ({ item, size }) => {
    const { advice } = reportOf(item, size);
    const printed = printedLoads(advice);
    if (printed === null) return expect(advice.safeLoadPerDeck ?? 0).toBeLessThan(10);
    const each = printed.rows.flatMap(({ kilograms, count }) => Array.from({ length: count }, () => kilograms));
    expect(each).toHaveLength(printed.places);
    expect(printed.together ?? each[0]).toBe(each.reduce((sum, kilograms) => sum + kilograms, 0));
  });

  it('stand in one row for each height of a two-bay shelf, two side by side', () => {
    const item = everySize.find(({ item: { name }, size }) => name === 'two-bay' && size === 'standard')?.item;
    if (item === undefined) throw new Error('no two-bay shelf');
    const { rows = [] } = printedLoads(reportOf(item, 'standard').advice) ?? {};
    expect(rows.map(({ count }) => count)).toEqual(modelOf(item, 'standard').deckTops.map(() => 2));
  });
});
