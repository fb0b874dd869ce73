import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthPlaces, readingDirection, type LengthMark } from '../../../src/draw/picture/lengths.ts';
import { svgOf } from '../../../src/draw/kit/svg.ts';
import { planeOf } from '../../../src/draw/picture/plane.ts';

const fit = { scale: 0.1, origin: [50, 50] as const };
const front = planeOf({ towardsEye: [0, -1, 0], up: [0, 0, 1] });
const mark = (to: LengthMark['to'], away: LengthMark['away'], text = '300 mm'): LengthMark => ({ mark: 'length', from: [0, 0, 0], to, away, text });

describe('dimension lines', () => {
  // ISO 129-1 (M): figures are read from below or from the right.
  it('turn every figure so that it reads from below or from the right', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3599 }), (tenths) => {
        const angle = (tenths * Math.PI) / 1800;
        const [x, y] = readingDirection([Math.cos(angle), Math.sin(angle)]);
        expect(x > 0 || (Math.abs(x) < 1e-9 && y === -1)).toBe(true);
        expect(Math.abs(x * Math.sin(angle) - y * Math.cos(angle))).toBeLessThan(1e-2);
      }),
      { seed: 3 },
    );
  });

  it('stand the figure above a level line, its middle on the middle', () => {
    const [first] = lengthPlaces(mark([300, 0, 0], [0, 0, -100]), front, fit);
    expect(first?.box.x).toBeCloseTo(50 + 15 - (first?.box.width ?? 0) / 2, 9);
    expect((first?.box.y ?? 0) + (first?.box.height ?? 0)).toBeLessThanOrEqual(60);
    expect((first?.box.y ?? 0) + (first?.box.height ?? 0)).toBeGreaterThan(59);
  });

  it('stand the figure left of an upright line, reading upwards', () => {
    const [first] = lengthPlaces(mark([0, 0, 300], [100, 0, 0]), front, fit);
    expect((first?.box.x ?? 0) + (first?.box.width ?? 0)).toBeLessThanOrEqual(60);
    expect(svgOf(first?.draw() ?? [])).toContain('rotate(-90 ');
  });

  it('put heads of 3 mm by 1 mm on the extension lines, inside when there is room', () => {
    const [first] = lengthPlaces(mark([300, 0, 0], [0, 0, -100]), front, fit);
    expect(svgOf(first?.draw() ?? [])).toContain('M50 60l3-.5 0 1z');
    expect(svgOf(first?.draw() ?? [])).toContain('M80 60l-3 .5 0-1z');
  });

  it('put heads outside a short span and the figure over the line beyond', () => {
    const [first] = lengthPlaces(mark([50, 0, 0], [0, 0, -100], '50 mm'), front, fit);
    expect(svgOf(first?.draw() ?? [])).toContain('M50 60l-3 .5 0-1z');
    expect(first?.box.x).toBeGreaterThan(55);
  });

  it('keep the dimension line at least 7 mm off, square to the span when the view hides the way', () => {
    const hidden = lengthPlaces(mark([300, 0, 0], [0, 100, 0]), front, fit);
    const [line] = hidden[0]?.lines ?? [];
    expect(Math.abs((line?.from[1] ?? 0) - 50)).toBeCloseTo(7, 9);
    expect(new Set(hidden.map((place) => Math.sign((place.lines[0]?.from[1] ?? 0) - 50)))).toEqual(new Set([1, -1]));
  });
});
