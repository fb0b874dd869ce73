// Section values of tubes against worked figures of handbook formulas: hollow square (a⁴ − b⁴)/12, hollow circle π(D⁴ − d⁴)/64 (from memory, as in any handbook of beams).
import { describe, expect, it } from 'vitest';
import { PROFILES } from '../../src/model/profiles/profiles.ts';

describe('a square tube', () => {
  // 25 × 25 × 2.5 mm: 225 mm², (390 625 − 160 000)/12 = 19 218.75 mm⁴, over 12.5 mm 1537.5 mm³.
  const section = PROFILES.square.section({ outside: 25, inside: 20 });

  it('has the values of a hollow square', () => {
    expect(section.area).toBe(225);
    expect(section.secondMoment).toBeCloseTo(19_218.75, 9);
    expect(section.sectionModulus).toBeCloseTo(1537.5, 9);
  });

  it('loses two strips of wall to a hole: 2 · 6 · 2.5 · 11.25² = 3796.875 mm⁴', () => {
    expect(section.drilledModulus(6)).toBeCloseTo((19_218.75 - 3796.875) / 12.5, 9);
  });
});

describe('a round tube', () => {
  // 25 × 2.5 mm: π/64 · (390 625 − 160 000) = 11 320.78 mm⁴.
  const section = PROFILES.round.section({ outside: 25, inside: 20 });

  it('has the values of a hollow circle, π/4 of the square one\'s area and 3π/16 of its second moment', () => {
    const square = PROFILES.square.section({ outside: 25, inside: 20 });
    expect(section.secondMoment).toBeCloseTo(11_320.78, 2);
    expect(section.area / square.area).toBeCloseTo(Math.PI / 4, 12);
    expect(section.secondMoment / square.secondMoment).toBeCloseTo((3 * Math.PI) / 16, 12);
  });

  it('bears on a pin over the pin\'s width', () => {
    expect(section.bearingWidth(6)).toBe(6);
  });
});

describe('circular hollow sections', () => {
  it('have the values of the table of EN 10219-2 (from memory)', () => {
    // 48.3 × 3.2: A 4.53 cm², I 11.6 cm⁴, W 4.80 cm³; 60.3 × 4: A 7.07 cm², I 28.2 cm⁴, W 9.34 cm³.
    const small = PROFILES.round.section({ outside: 48.3, inside: 41.9 });
    expect([small.area / 1e2, small.secondMoment / 1e4, small.sectionModulus / 1e3]).toEqual([expect.closeTo(4.53, 2), expect.closeTo(11.6, 1), expect.closeTo(4.8, 2)]);
    const wide = PROFILES.round.section({ outside: 60.3, inside: 52.3 });
    expect([wide.area / 1e2, wide.secondMoment / 1e4, wide.sectionModulus / 1e3]).toEqual([expect.closeTo(7.07, 2), expect.closeTo(28.2, 1), expect.closeTo(9.34, 2)]);
  });
});
