import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markingPicture, patternPaper, patternPicture, stepPaper } from '../../../src/draw/flat/index.ts';
import { tell } from '../../../src/scene/index.ts';
import { toldText } from '../../../src/draw/kit/told-text.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { stageMarks } from '../../../src/draw/flat/marking-picture.ts';
import { patternMarks } from '../../../src/draw/flat/pattern-picture.ts';
import type { FlatPattern } from '../../../src/model/index.ts';
import { linesOf, texts, viewOf, widthAndHeight } from './inspect.ts';
import { kitWith, patternFor } from './patterns.ts';

const standard = patternFor(1000, 500);

function flap(pattern: FlatPattern, side: string) {
  const found = pattern.flaps.find((one) => one.side === side);
  if (!found) throw new Error(`no flap on ${side}`);
  return found;
}

const lengthText = (mm: number): string => toldText(tell.mm(mm));

/** Figures of a running dimension in a strip, from the lowest to the highest on the paper. */
function numbersUp(marks: readonly Mark[]): readonly number[] {
  return marks
    .flatMap((mark) => (mark.mark === 'figure' && mark.weight === 400 ? [mark] : []))
    .sort((a, b) => b.centre[1] - a.centre[1])
    .map((mark) => Number(toldText(mark.told)));
}

describe('figures on the flat pictures', () => {
  // Outside: facets tangent to a circle have the pitch 2 R tan(θ/2) (CHECKS, C). Tube 28, clearance 0.5, panel 9
  // on its outer skin: R = 23.5, θ = 45°, pitch 19.468; first crease half a pitch past the axis line, which lies
  // 14 + 3 mm outside the inside line.
  it('counts the creases of a 28 mm tube from the inside line as worked by hand', () => {
    const pitch = 2 * 23.5 * Math.tan(Math.PI / 8);
    const byHand = [0, 1, 2, 3, 4].map((index) => lengthText(17 + pitch / 2 + index * pitch));
    expect(byHand).toEqual(['26.5', '46', '65.5', '85', '104.5']);
    const drawn = texts(markingPicture(standard, { stage: 'creases' }));
    for (const text of byHand) expect(drawn).toContain(text);
  });

  it('shows on the pattern page the blank, the notch, its radius, the snip, the lines of a flap, the holes', () => {
    const drawn = texts(patternPicture(standard));
    const { edge, halfCut, creases, corner, pinLine } = flap(standard, 'front');
    const expected = [
      ...standard.blank, ...standard.notch, ...creases, halfCut, edge, corner, edge - pinLine,
    ].map(lengthText);
    for (const text of expected) expect(drawn).toContain(text);
    expect(drawn).toContain(`R${standard.notchRadius}`);
    expect(drawn).toContain('Ø5');
    // Half of them right through the tabs, half blind under them: 17 − 9 mm deep.
    expect(drawn.filter((each) => each === `×${standard.holes.length / 2}`)).toHaveLength(2);
    expect(drawn).toContain('8');
  });

  it('dimensions at each stage what is new there', () => {
    const at = (stage: 'inside' | 'notches' | 'holes' | 'half-cut') => texts(markingPicture(standard, { stage }));
    const { edge, pinLine, corner, pins } = flap(standard, 'back');
    expect(texts(markingPicture(standard, { stage: 'blank', stock: [1500, 1000] })))
      .toEqual(['1', '2', '0', lengthText(standard.blank[0]), '1500', '1000', lengthText(standard.blank[1]), '0']);
    expect(new Set(at('inside'))).toEqual(new Set(['0', edge, standard.blank[0] - edge, standard.blank[1] - edge, ...standard.blank].map((one) => (one === '0' ? one : lengthText(Number(one))))));
    expect(new Set(at('notches'))).toEqual(new Set([lengthText(standard.notch[0]), lengthText(corner), '×8']));
    for (const pin of pins) expect(at('holes')).toContain(lengthText(pin + standard.blank[0] / 2));
    expect(at('holes')).toContain(lengthText(edge - pinLine));
    expect(at('holes')).toContain(lengthText(standard.notch[0] - standard.notchRadius));
    expect(at('half-cut')).toContain(lengthText(standard.thickness - standard.skin));
  });

  it('numbers the creases from the inside line outwards and the shorter sides first', () => {
    const drawn = stageMarks(standard, { stage: 'crease' }, stepPaper);
    const numbers = drawn.flatMap((mark) => (mark.mark === 'figure' && mark.told.as === 'number' ? [mark] : []));
    expect(numbers.map(({ told }) => toldText(told))).toEqual(['1', '2', '3', '4', '5']);
    numbers.slice(1).forEach(({ centre }, index) => expect(centre[1]).toBeLessThan(numbers[index]?.centre[1] ?? 0));
    const sides = drawn.flatMap((mark) => (mark.mark === 'order' ? [mark.centre] : []));
    const [left, right, front, back] = sides;
    expect(left?.[0]).toBeLessThan(right?.[0] ?? 0);
    expect(front?.[1]).toBeGreaterThan(back?.[1] ?? 0);
    expect(left?.[1]).toBeCloseTo(right?.[1] ?? 0, 6);
  });

  it('lets running dimensions rise from their datum, for any panel', () => {
    const any = fc.record({ width: fc.integer({ min: 500, max: 1100 }), depth: fc.integer({ min: 300, max: 600 }), tube: fc.integer({ min: 22, max: 40 }) });
    fc.assert(fc.property(any, ({ width, depth, tube }) => {
      const pattern = patternFor(width, depth, kitWith({ tube }));
      const numbers = numbersUp(stageMarks(pattern, { stage: 'creases' }, stepPaper));
      expect(numbers[0]).toBe(0);
      numbers.slice(1).forEach((number, index) => expect(number).toBeGreaterThan(numbers[index] ?? Infinity));
      const { creases, halfCut } = flap(pattern, 'back');
      expect(numbers.slice(1)).toEqual([...creases, halfCut].map((one) => Number(lengthText(one))));
      // Rounding one by one from the datum: no figure is more than a quarter of a millimetre off.
      [...creases, halfCut].forEach((one, index) => expect(Math.abs(one - (numbers[index + 1] ?? 0))).toBeLessThanOrEqual(0.25));
    }), { numRuns: 60 });
  });

  it('refuses a stock panel that is too small and turns the blank when only that fits', () => {
    expect(() => markingPicture(standard, { stage: 'blank', stock: [1300, 900] })).toThrow(/1387\.2 × 887\.2 mm does not fit on the stock panel of 1300 × 900 mm/);
    expect(texts(markingPicture(standard, { stage: 'blank', stock: [900, 1400] }))).toContain('887');
  });
});

describe('scale', () => {
  it('draws the panel to the scale it names, a plain one in n', () => {
    for (const [width, depth] of [[500, 300], [800, 400], [1000, 500], [1100, 600]] as const) {
      const pattern = patternFor(width, depth);
      const views = [viewOf(patternMarks(pattern, patternPaper), 'whole'), viewOf(stageMarks(pattern, { stage: 'creases' }, stepPaper), 'whole')];
      for (const view of views) {
        expect(Math.abs(2 / view.scale - Math.round(2 / view.scale))).toBeLessThan(1e-9);
        const [wide, high] = widthAndHeight(linesOf(view.marks).flatMap(({ points }) => points));
        expect(wide).toBeCloseTo(pattern.blank[0] * view.scale, 6);
        expect(high).toBeCloseTo(pattern.blank[1] * view.scale, 6);
      }
    }
  });

  it('draws the strip to its own scale: neighbouring creases stand their spacing apart', () => {
    const strip = viewOf(stageMarks(standard, { stage: 'creases' }, stepPaper), 'strip');
    const heights = linesOf(strip.marks).filter(({ pen }) => pen.name === 'crease').map(({ points }) => points[0]?.[1] ?? NaN);
    const { creases } = flap(standard, 'back');
    expect(heights).toHaveLength(creases.length);
    heights.slice(1).forEach((y, index) => {
      const spacing = (creases[index + 1] ?? 0) - (creases[index] ?? 0);
      expect((heights[index] ?? 0) - y).toBeCloseTo(spacing * strip.scale, 6);
      expect(spacing * strip.scale).toBeGreaterThan(4);
    });
  });

  it('writes the scale into the file', () => {
    expect(markingPicture(standard, { stage: 'creases' }).svg).toMatch(/<g data-view="whole" data-scale="0\.\d+">/);
  });
});
