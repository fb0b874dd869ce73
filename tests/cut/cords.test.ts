import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cordPatterns, cordsFor } from '../../src/cut/index.ts';

const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);

/** The fewest bins, by trying every place of every piece. */
function fewest(pieces: readonly number[], length: number, bins: readonly number[] = []): number {
  const [first, ...rest] = pieces;
  if (first === undefined) return bins.length;
  const into = bins.flatMap((used, index) => (used + first <= length ? [fewest(rest, length, bins.map((each, place) => (place === index ? each + first : each)))] : []));
  return Math.min(...into, fewest(rest, length, [...bins, first]));
}

describe('whole cords for pieces', () => {
  it('are so many that two short ones come from one', () => {
    expect(cordsFor([1260, 1260, 1260, 1260], 3000)).toBe(2);
    expect(cordsFor([2530, 2280, 2280], 3000)).toBe(3);
    // The rest of a long one gives a short one.
    expect(cordsFor([1560, 1430, 1560, 1430, 1430, 1430], 3000)).toBe(3);
    expect(cordsFor([], 3000)).toBe(0);
  });

  it('are told alike ones together, each with its pieces', () => {
    expect(cordPatterns([2280, 2530, 2280, 420, 2530], 3000)).toEqual([{ count: 1, pieces: [2530, 420] }, { count: 1, pieces: [2530] }, { count: 2, pieces: [2280] }]);
  });

  it('are the fewest for pieces as long as those of furniture, and never fewer than their length asks for', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1200, max: 2900 }), { maxLength: 7 }), (pieces) => {
      expect(cordsFor(pieces, 3000)).toBe(fewest(pieces, 3000));
      expect(cordsFor(pieces, 3000) * 3000).toBeGreaterThanOrEqual(sum(pieces));
    }), { numRuns: 60 });
  });
});
