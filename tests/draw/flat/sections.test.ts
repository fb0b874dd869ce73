import { describe, expect, it } from 'vitest';
import { sectionSeries, stepPaper } from '../../../src/draw/flat/index.ts';
import { foldFrames, seriesMarks } from '../../../src/draw/flat/section-series.ts';
import type { Vec2 } from '../../../src/model/index.ts';
import { flat, linesOf, texts } from './inspect.ts';
import { kitWith, patternFor } from './patterns.ts';

const pattern = patternFor(1000, 500);
const hardware = { tube: { outside: 28, inside: 23 }, pin: { diameter: 5, length: 17, headDiameter: 16, headHeight: 3 } };

/** Area of a closed polygon by the shoelace formula, mm². */
function polygonArea(points: readonly Vec2[]): number {
  return points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [0, 0];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

describe('sections of the fold', () => {
  it('shows flat, every crease, the tab turned back, pressed, pinned: numbered in order', () => {
    const creases = pattern.flaps[0]?.creases.length ?? 0;
    const numbers = texts(sectionSeries(pattern, 'right', hardware));
    expect(numbers).toEqual(Array.from({ length: creases + 3 }, (_, index) => String(index + 1)));
  });

  it('starts flat: a rectangle of the panel\'s thickness', () => {
    const [first] = foldFrames(pattern, 'left');
    const points = first?.outline ?? [];
    const as = points.map(([a]) => a);
    expect(Math.abs(polygonArea(points))).toBeCloseTo((Math.max(...as) - Math.min(...as)) * pattern.thickness, 6);
  });

  it('ends with the tab flat on the inner face and the pin 15 mm in from its edge', () => {
    // Common practice, no source: pins 15 mm from the tab's edge.
    const frames = foldFrames(pattern, 'left');
    const last = frames.at(-1);
    const tabEdge = Math.min(...(last?.outline ?? []).filter(([, b]) => Math.abs(b - pattern.thickness) < 0.5).map(([a]) => a));
    expect((last?.pin?.[0] ?? NaN) - tabEdge).toBeCloseTo(15, 1);
    const flap = pattern.flaps[0];
    const base = pattern.holes.find((hole) => hole.side === 'left' && hole.in === 'base');
    expect(flap).toBeDefined();
    // The pin's place in the section is the place of the hole in the panel's middle part.
    expect((last?.pin?.[0] ?? NaN)).toBeCloseTo(-(pattern.axes[0] + (base?.at[0] ?? NaN)), 6);
  });

  it('keeps the tube clear of the panel in every frame', () => {
    const axis: Vec2 = [0, pattern.wrapRadius];
    for (const frame of foldFrames(pattern, 'right')) {
      const nearest = Math.min(...frame.outline.map((from, index) => distance(axis, from, frame.outline[(index + 1) % frame.outline.length] ?? from)));
      expect(nearest).toBeGreaterThanOrEqual(hardware.tube.outside / 2);
    }
  });

  it('mirrors for the left and front sides', () => {
    const polygons = (side: 'left' | 'right') => linesOf(seriesMarks(pattern, side, hardware, stepPaper)).filter(({ closed }) => closed).map(({ points }) => polygonArea(points));
    const [left, right] = [polygons('left'), polygons('right')];
    expect(left).toHaveLength(right.length);
    left.forEach((area, index) => expect(area).toBeCloseTo(-(right[index] ?? NaN), 6));
  });

  it('draws the tube as a ring in every frame, at any crease count', () => {
    for (const tube of [22, 28, 40]) {
      const marks = flat(seriesMarks(patternFor(1000, 500, kitWith({ tube })), 'right', { ...hardware, tube: { outside: tube, inside: tube - 5 } }, stepPaper));
      const circles = marks.filter((mark) => mark.mark === 'circle');
      const orders = marks.filter((mark) => mark.mark === 'order');
      expect(circles).toHaveLength(2 * orders.length);
    }
  });
});

function distance([x, y]: Vec2, [ax, ay]: Vec2, [bx, by]: Vec2): number {
  const [dx, dy] = [bx - ax, by - ay];
  const size = dx * dx + dy * dy;
  const share = size === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / size));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}
