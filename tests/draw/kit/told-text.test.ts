import { describe, expect, it } from 'vitest';
import { tell } from '../../../src/scene/index.ts';
import { toldText } from '../../../src/draw/kit/told-text.ts';

describe('what figures tell', () => {
  it('is in whole or half millimetres and Latin numerals', () => {
    expect([26.734, 46.202, 65.67, 104.606, 1386.94, 12, 0.2, 145.618].map((mm) => toldText(tell.mm(mm)))).toEqual(['26.5', '46', '65.5', '104.5', '1387', '12', '0', '145.5']);
  });

  it('has the sign of what it measures or counts', () => {
    expect([tell.diameter(6), tell.radius(11.9), tell.sides(1387.2, 887.2), tell.measure(100), tell.times(4), tell.number(3), tell.outOf(2, 9), tell.letters('B3')].map(toldText))
      .toEqual(['Ø6', 'R12', '1387 × 887', '100 mm', '×4', '3', '2/9', 'B3']);
  });
});
