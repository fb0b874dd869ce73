import { describe, expect, it } from 'vitest';
import { dashLengths, dashStart, pens, thick, thin } from '../../../src/draw/kit/pens.ts';
import { markingPicture, patternPicture } from '../../../src/draw/flat/index.ts';
import { patternFor } from './patterns.ts';

// ISO 128-20 (R): element lengths in line widths d: dash 12, gap 3, long dash 24, dot at most 0.5; thick : thin 2 : 1.
const iso = { dash: 12, gap: 3, longDash: 24, dot: 0.5 };

describe('line types', () => {
  it('keep the widths of the 0.5 group, thick to thin as 2 to 1', () => {
    expect(thick).toBe(0.5);
    expect(thick / thin).toBe(2);
  });

  it('have the standard element lengths at any width', () => {
    for (const width of [0.25, 0.35, 0.5]) {
      expect(dashLengths('continuous', width)).toEqual([]);
      expect(dashLengths('dashed', width)).toEqual([iso.dash * width, iso.gap * width]);
      const [longDash = 0, gap = 0, dot = 0, ...rest] = dashLengths('long-dash-double-dot', width);
      expect(longDash / width).toBeCloseTo(iso.longDash, 9);
      expect(gap / width).toBeCloseTo(iso.gap, 9);
      expect(dot / width).toBeLessThanOrEqual(iso.dot);
      expect(rest).toEqual([gap, dot, gap]);
      expect(dashLengths('long-dash-dot', width)).toEqual([longDash, gap, dot, gap]);
    }
  });

  it('write creases as thin long-dash-double-dot and half-cuts as thick dashes, everywhere the same', () => {
    const pattern = patternFor(1000, 500);
    for (const { svg } of [patternPicture(pattern), markingPicture(pattern, { stage: 'creases' })]) {
      const drawn = (name: string) => [...svg.matchAll(new RegExp(`data-line="${name}" stroke="#000" stroke-width="([\\d.]+)"(?: stroke-dasharray="([\\d. ]+)")?`, 'g'))];
      const creases = drawn('crease');
      expect(creases.length).toBeGreaterThanOrEqual(20);
      for (const [, width, dashes] of creases) {
        expect(Number(width)).toBe(0.25);
        expect(dashes).toBe('6 0.75 0.125 0.75 0.125 0.75');
      }
      const halfCuts = drawn('half-cut');
      expect(halfCuts.length).toBeGreaterThanOrEqual(4);
      for (const [, width, dashes] of halfCuts) {
        expect(Number(width)).toBe(0.5);
        expect(dashes).toBe('6 1.5');
      }
    }
  });

  it('start so that both ends of a line are alike', () => {
    for (const length of [7.3, 20, 41.7, 86.4, 133.33]) {
      const lengths = dashLengths(pens.crease.type, pens.crease.width);
      const period = lengths.reduce((sum, one) => sum + one, 0);
      const start = dashStart(pens.crease.type, pens.crease.width, length);
      // The pattern is a mirror image about the middle of its long dash, so about the line's middle too.
      const middle = (start + length / 2) % period;
      const first = lengths[0] ?? 0;
      const mirrors = [first / 2, (first + period) / 2];
      expect(Math.min(...mirrors.map((mirror) => Math.abs(middle - mirror)))).toBeLessThan(1e-9);
    }
  });
});
