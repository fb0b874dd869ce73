import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutBarsPaper, cutBarsPicture, spacingPicture, stepPaper } from '../../../src/draw/flat/index.ts';
import { cutBarsMarks } from '../../../src/draw/flat/cut-bars.ts';
import { plainShare } from '../../../src/draw/flat/fractions.ts';
import { spacingMarks } from '../../../src/draw/flat/spacing-picture.ts';
import { linesOf, outside, overlaps, pointsOutside, struckFigures, texts, viewOf } from './inspect.ts';

const pieces = (...lengths: readonly number[]) => lengths.map((length) => ({ kind: 'post', length }));

describe('plain shares of a tube', () => {
  // Common practice, no source: tubes cut in halves and quarters leave nothing over.
  it('knows halves and quarters with and without the saw kerf', () => {
    expect(plainShare(1000, 2000, 0)).toEqual({ numerator: 1, denominator: 2 });
    expect(plainShare(999.5, 2000, 1)).toEqual({ numerator: 1, denominator: 2 });
    expect(plainShare(499.25, 2000, 1)).toEqual({ numerator: 1, denominator: 4 });
    expect(plainShare(1500, 2000, 1)).toEqual({ numerator: 3, denominator: 4 });
    expect(plainShare(2000, 2000, 1)).toEqual({ numerator: 1, denominator: 1 });
  });

  it('finds none in other lengths', () => {
    expect(plainShare(450, 2000, 1)).toBeNull();
    expect(plainShare(998, 2000, 1)).toBeNull();
    expect(plainShare(1003, 2000, 1)).toBeNull();
  });

  it('fills the stock exactly with the parts it names, kerfs counted', () => {
    for (const parts of [2, 3, 4]) {
      for (const kerf of [0, 1, 2.5]) {
        const length = (2000 - (parts - 1) * kerf) / parts;
        expect(plainShare(length, 2000, kerf)).toEqual({ numerator: 1, denominator: parts });
        expect(parts * length + (parts - 1) * kerf).toBeCloseTo(2000, 9);
      }
    }
  });
});

describe('tubes to cut', () => {
  it('counts the saw cuts from one end, a kerf lost at each', () => {
    const drawn = texts(cutBarsPicture({ stock: 2000, kerf: 1, patterns: [{ count: 3, pieces: pieces(500, 500, 900) }] }));
    for (const text of ['0', '500', '1001', '1902', '900', '×3']) expect(drawn).toContain(text);
  });

  it('stacks plain fractions over their pieces', () => {
    const marks = cutBarsMarks({ stock: 2000, kerf: 1, patterns: [{ count: 1, pieces: pieces(1500, 450) }] }, { width: 170, height: 60 });
    const fractions = marks.flatMap((mark) => (mark.mark === 'fraction' ? [`${mark.numerator}/${mark.denominator}`] : []));
    expect(fractions).toEqual(['3/4']);
  });

  it('draws pieces to scale', () => {
    const view = viewOf(cutBarsMarks({ stock: 2000, kerf: 1, patterns: [{ count: 1, pieces: pieces(1500) }] }, stepPaper), 'bar');
    const xs = linesOf(view.marks).filter(({ pen }) => pen.name === 'cut').map(({ points }) => points[0]?.[0] ?? NaN);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(1500 * view.scale, 6);
  });

  it('keeps figures apart and on the paper for any cutting pattern', () => {
    const length = fc.integer({ min: 120, max: 1200 });
    const pattern = fc.record({ count: fc.integer({ min: 1, max: 24 }), lengths: fc.array(length, { minLength: 1, maxLength: 8 }) });
    fc.assert(fc.property(fc.array(pattern, { minLength: 1, maxLength: 4 }), (patterns) => {
      const cuts = { stock: 2000, kerf: 1, patterns: patterns.map(({ count, lengths }) => ({ count, pieces: pieces(...within(lengths, 2000)) })) };
      const picture = cutBarsPicture(cuts);
      expect(overlaps(picture.labels)).toEqual([]);
      expect(outside(picture)).toEqual([]);
      expect(pointsOutside(picture)).toEqual([]);
      expect(struckFigures(cutBarsMarks(cuts, cutBarsPaper(cuts)))).toEqual([]);
    }), { numRuns: 150 });
  });

  it('refuses pieces longer than the stock, and paper too low for the bars', () => {
    expect(() => cutBarsPicture({ stock: 2000, kerf: 1, patterns: [{ count: 1, pieces: pieces(1000, 1000) }] })).toThrow(/2001\.0 mm long, the stock tube only 2000 mm/);
    expect(() => cutBarsPicture({ stock: 2000, kerf: 1, patterns: [{ count: 1, pieces: pieces(900) }] }, { width: 170, height: 20 })).toThrow(/need .* mm of paper, found 20 mm/);
  });
});

/** The first pieces that fit on the stock with a kerf of 1 mm each. */
function within(lengths: readonly number[], stock: number): readonly number[] {
  const fitting = lengths.filter((_, index) => lengths.slice(0, index + 1).reduce((sum, length) => sum + length + 1, 0) <= stock);
  return fitting.length > 0 ? fitting : [stock / 2];
}

describe('marks on a post', () => {
  const post = { length: 1500, diameter: 28, edge: 'lower', sleeve: { length: 74, diameter: 38 }, count: 4 } as const;

  it('counts them from the floor end', () => {
    const drawn = texts(spacingPicture({ ...post, marks: [969, 89, 529, 1409] }));
    expect(drawn).toEqual(['0', '89', '529', '969', '1409', '×4', '0', '6', '12']);
  });

  it('draws the mark at the sleeve edge it is for', () => {
    for (const edge of ['lower', 'upper'] as const) {
      const marks = spacingMarks({ ...post, edge, marks: [600] }, stepPaper);
      const view = viewOf(marks, 'post');
      const lines = linesOf(view.marks);
      const mark = lines.find(({ pen }) => pen.name === 'cut')?.points[0]?.[0] ?? NaN;
      const sleeve = lines.filter(({ pen, closed }) => closed && pen.colour !== 'ink').flatMap(({ points }) => points.map(([x]) => x));
      expect(edge === 'lower' ? Math.min(...sleeve) : Math.max(...sleeve)).toBeCloseTo(mark, 6);
    }
  });

  it('keeps figures apart for any marks, and refuses one that is off the post', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 60, max: 1990 }), { minLength: 1, maxLength: 6 }), fc.constantFrom('lower' as const, 'upper' as const), (marks, edge) => {
      const tall = { ...post, edge, length: 2000, marks: [...new Set(marks)] };
      const picture = spacingPicture(tall);
      expect(overlaps(picture.labels)).toEqual([]);
      expect(outside(picture)).toEqual([]);
      expect(struckFigures(spacingMarks(tall, { width: 170, height: 90 }))).toEqual([]);
    }), { numRuns: 150 });
    expect(() => spacingPicture({ ...post, marks: [1600] })).toThrow(/1600 mm from the floor end of a post that is 1500 mm long/);
  });
});
