import { describe, expect, it } from 'vitest';
import { greatestFirst } from '../../../src/draw/lines/nearestOrder.ts';
import { randomOf } from '../../campaigns/random.ts';

/** The same by the sort that the language has (ECMAScript 2023, Array.prototype.sort: stable). */
const byComparing = (values: readonly number[]): readonly number[] =>
  [...values.keys()].sort((one, other) => (values[other] ?? 0) - (values[one] ?? 0));

describe('places of numbers, the greatest first', () => {
  it('are those of a sort that compares, equal ones in their order', () => {
    const random = randomOf(5);
    const values = Array.from({ length: 3000 }, (_, i) => (i % 3 === 0 ? Math.round(10 * random()) - 5 : (random() - 0.5) * 10 ** Math.round(12 * random() - 6)));
    expect([...greatestFirst(Float64Array.from(values))]).toEqual(byComparing(values));
  });

  it('keep nought and its negative as equals', () => {
    expect([...greatestFirst(Float64Array.of(-0, 0, -1, 1, 0, -0))]).toEqual([3, 0, 1, 4, 5, 2]);
  });

  it('are none of none', () => {
    expect([...greatestFirst(new Float64Array())]).toEqual([]);
  });
});
