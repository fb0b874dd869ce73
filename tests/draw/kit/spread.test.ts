import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../src/draw/kit/spread.ts';

const places = fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 12 }).map((values) => [...values].sort((a, b) => a - b));

describe('spread', () => {
  it('leaves places alone that are far enough apart', () => {
    expect(spread([0, 10, 25], [0, 5, 5])).toEqual([0, 10, 25]);
  });

  it('moves a crowd apart about its mean', () => {
    expect(spread([10, 10, 10], [0, 4, 4])).toEqual([6, 10, 14]);
  });

  it('keeps order, gaps and bounds for any places', () => {
    fc.assert(fc.property(places, fc.double({ min: 0.5, max: 6, noNaN: true }), (sorted, pitch) => {
      const room = (sorted.length - 1) * pitch;
      const [least, most] = [-5, 205 + room];
      const spreadOut = spread(sorted, sorted.map(() => pitch), least, most);
      spreadOut.forEach((at, index) => {
        expect(at).toBeGreaterThanOrEqual(least - 1e-9);
        expect(at).toBeLessThanOrEqual(most + 1e-9);
        if (index > 0) expect(at - (spreadOut[index - 1] ?? 0)).toBeGreaterThanOrEqual(pitch - 1e-9);
      });
    }));
  });

  it('does not move the places\' mean when the bounds are far', () => {
    fc.assert(fc.property(places, (sorted) => {
      const moved = spread(sorted, sorted.map(() => 4));
      const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
      expect(sum(moved)).toBeCloseTo(sum(sorted), 6);
    }));
  });
});
