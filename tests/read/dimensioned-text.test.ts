import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dimensionedText } from '../../src/read/index.ts';
import type { Dimension } from '../../src/read/index.ts';

describe('a quantity as text', () => {
  it.each<[number, Dimension, string]>([
    [1000, 'length', '1000 mm'], [19.4676, 'length', '19.47 mm'], [0.5, 'length', '0.5 mm'], [-0.001, 'length', '0 mm'],
    [Math.PI / 4, 'angle', '45°'], [2000, 'force', '2000 N'], [0.18, 'mass', '0.18 kg'], [4, 'count', '4'], [0.25, 'ratio', '0.25'], [10, 'count', '10'],
  ])('%d of %s is %s', (value, dimension, text) => {
    expect(dimensionedText({ value, dimension })).toBe(text);
  });

  it('keeps as many decimals as asked for', () => {
    expect(dimensionedText({ value: 19.4676, dimension: 'length' }, 0)).toBe('19 mm');
    expect(dimensionedText({ value: 19.4676, dimension: 'length' }, 3)).toBe('19.468 mm');
    expect(dimensionedText({ value: 100, dimension: 'length' }, 0)).toBe('100 mm');
  });

  it('reads back to within half the last decimal', () => {
    fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.nat(6), (value, digits) => {
      const text = dimensionedText({ value, dimension: 'length' }, digits);
      expect(text).toMatch(/^-?\d+(\.\d*[1-9])? mm$/);
      expect(Math.abs(Number.parseFloat(text) - value)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
    }));
  });
});
