import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec2 } from '../../../src/model/index.ts';
import type { LineDrawing, Stroke } from '../../../src/draw/index.ts';
import { clipDrawing } from '../../../src/draw/picture/clip.ts';
import { discWindow, halfPlaneWindow } from '../../../src/draw/kit/clip.ts';

const square: readonly Vec2[] = [[-10, -10], [10, -10], [10, 10], [-10, 10]];

function drawing(points: readonly Vec2[], closed: boolean): LineDrawing {
  const stroke: Stroke = { weight: 'outline', points, closed };
  return { strokes: [stroke], regions: [{ body: 'a', rings: [points] }], visibleShare: () => 1, bounds: { min: [-10, -10], max: [10, 10] } };
}

describe('clipping', () => {
  // The chord of a circle at distance d from its middle is 2 √(r² − d²) long.
  it('leaves the chord of a line through a disc', () => {
    fc.assert(
      fc.property(fc.double({ min: -4.9, max: 4.9, noNaN: true }), fc.double({ min: 0, max: Math.PI, noNaN: true }), (d, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const line: Vec2[] = [-20, -3, 1, 20].map((t) => [t * c - d * s, t * s + d * c]);
        const { strokes } = clipDrawing(drawing(line, false), discWindow([0, 0], 5));
        expect(lengthOf(strokes)).toBeCloseTo(2 * Math.sqrt(25 - d * d), 6);
      }),
      { seed: 11 },
    );
  });

  it('leaves the disc of a region round it: a 96-sided figure, 0.04 % larger than the circle', () => {
    const [region] = clipDrawing(drawing(square, true), discWindow([0, 0], 5)).regions;
    const area = 96 * 25 * Math.tan(Math.PI / 96);
    expect(areaOf(region?.rings[0] ?? [])).toBeCloseTo(area, 9);
    expect(area / (Math.PI * 25)).toBeLessThan(1.0005);
  });

  it('leaves nothing outside and all inside', () => {
    expect(clipDrawing(drawing(square, true), discWindow([100, 0], 5))).toMatchObject({ strokes: [], regions: [] });
    const whole = clipDrawing(drawing(square, true), discWindow([0, 0], 50));
    expect(whole.strokes).toEqual(drawing(square, true).strokes);
    expect(whole.regions).toEqual(drawing(square, true).regions);
  });

  it('cuts a closed line and its region at a half plane', () => {
    const half = clipDrawing(drawing(square, true), halfPlaneWindow({ normal: [1, 0], offset: 4 }));
    expect(lengthOf(half.strokes)).toBeCloseTo(14 + 20 + 14, 9);
    expect(areaOf(half.regions[0]?.rings[0] ?? [])).toBeCloseTo(14 * 20, 9);
  });
});

function lengthOf(strokes: readonly Stroke[]): number {
  let sum = 0;
  for (const { points, closed } of strokes) {
    const all = closed ? [...points, ...points.slice(0, 1)] : points;
    all.slice(1).forEach((to, i) => (sum += Math.hypot(to[0] - (all[i]?.[0] ?? 0), to[1] - (all[i]?.[1] ?? 0))));
  }
  return sum;
}

function areaOf(ring: readonly Vec2[]): number {
  return Math.abs(ring.reduce((sum, p, i) => {
    const next = ring[(i + 1) % ring.length] ?? p;
    return sum + (p[0] * next[1] - next[0] * p[1]) / 2;
  }, 0));
}
