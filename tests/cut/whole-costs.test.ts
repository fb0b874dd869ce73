import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeCosts } from '../../src/cut/cover/whole-costs.ts';

interface Stock { readonly cost: number; readonly count: number | null }

/** Every sum of the costs up to `most`, tried one by one. */
function sums(stocks: readonly Stock[], most: number): readonly number[] {
  return stocks.reduce<readonly number[]>((all, { cost, count }) => all.flatMap((sum) => {
    const times = cost === 0 ? 0 : Math.min(count ?? Infinity, Math.floor((most - sum) / cost + 1e-9));
    return Array.from({ length: times + 1 }, (_, index) => sum + index * cost);
  }), [0]);
}

describe('what whole covers can cost', () => {
  const stock = fc.record({ cost: fc.integer({ min: 0, max: 40 }), count: fc.option(fc.integer({ min: 0, max: 4 })) });

  it('is the least sum of stocks not below the bound', () => {
    fc.assert(fc.property(fc.array(stock, { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 150 }), fc.double({ min: 0, max: 150, noNaN: true }), (stocks, most, bound) => {
      const above = sums(stocks, most).filter((sum) => sum >= bound - 1e-6);
      expect(wholeCosts(stocks, most)(bound)).toBeCloseTo(above.length > 0 ? Math.max(bound, Math.min(...above)) : Math.max(bound, most), 5);
    }), { numRuns: 500 });
  });

  it('takes sound lengths of counted tubes: no three of 1480 and 1820 mm make 4500 mm', () => {
    const up = wholeCosts([{ cost: 1480, count: 2 }, { cost: 1820, count: null }], 9000);
    expect(up(4500)).toBe(4780);
    expect(up(2 * 1480 + 1)).toBe(1480 + 1820);
    expect(up(4 * 1480)).toBe(1480 * 2 + 1820 * 2);
  });

  it('forgives an error of reckoning and no more, however large the costs', () => {
    const up = wholeCosts([{ cost: 1500000, count: null }], 9000000);
    expect(up(3000000 + 1e-7)).toBeCloseTo(3000000, 6);
    expect(up(3000000.1)).toBe(4500000);
    expect(wholeCosts([{ cost: 2, count: null }], 1)(0.0000010000000000000002)).toBe(1);
  });

  it('leaves a bound alone where costs are finer than it reckons', () => {
    expect(wholeCosts([{ cost: Math.PI, count: null }], 100)(7)).toBe(7);
  });
});
