import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../../src/draw/lines/index.ts';
import { Solid, at, body, cube, meshOf, tube } from './solids.ts';
import { drawnLength, fromAbove, fromFront, isometric, regionArea, runLength, runs, sharesOf, towards } from './views.ts';

describe('a cube in true isometric', () => {
  const drawing = lineDrawing([body('cube', cube(100, 100, 100))], isometric);
  const [outline, edges] = [runs(drawing, 'outline'), runs(drawing, 'edge')];

  it('shows nine edges, six of them outline in one closed stroke', () => {
    expect([outline.length, edges.length]).toEqual([6, 3]);
    expect(drawing.strokes.filter(({ weight }) => weight === 'outline')).toMatchObject([{ closed: true }]);
  });

  // ISO 5456-3, isometric projection: axes are shortened to 0.8165 (C).
  it('shortens each of them to 0.8165', () => {
    for (const run of [...outline, ...edges]) expect(runLength(run) / 100).toBeCloseTo(0.8165, 4);
  });

  it('covers √3 a², all of its own outline', () => {
    expect(regionArea(drawing, 'cube')).toBeCloseTo(Math.sqrt(3) * 1e4, 0);
    expect(sharesOf(drawing, 'cube')).toEqual({ cube: 1 });
  });

  it('stands within ± √(2/3) a and ± a/√2', () => {
    const [x, y] = drawing.bounds.max;
    expect(x).toBeCloseTo(100 / Math.SQRT2, 2);
    expect(y).toBeCloseTo(100 * Math.sqrt(2 / 3), 2);
  });
});

describe('a round rod', () => {
  // ISO 5456-3: a circle in a plane of the isometric axes is an ellipse of ratio 0.57735 (C).
  it('shows its end as an ellipse of 0.57735 in isometric and has no lines along its smooth side', () => {
    const drawing = lineDrawing([body('rod', meshOf(Solid.cylinder(300, 20, 20, 96)))], isometric);
    const end = drawing.strokes.find(({ weight }) => weight === 'edge');
    expect(drawing.strokes.map(({ weight }) => weight).sort()).toEqual(['edge', 'outline']);
    const outlineTop = drawing.bounds.max[1];
    const lowest = Math.min(...(end?.points ?? []).map(([, y]) => y));
    expect((outlineTop - lowest) / 40).toBeCloseTo(0.57735, 3);
  });

  it.each([16, 24, 32])('of %i sides draws two outline runs and its ends alone', (sides) => {
    const drawing = lineDrawing([body('rod', tube(200, 30, 0, sides))], fromFront);
    expect(runs(drawing, 'outline')).toHaveLength(4);
    expect(runs(drawing, 'edge')).toHaveLength(0);
  });
});

describe('a tube through a sleeve', () => {
  const drawing = lineDrawing([body('tube', tube(200, 28, 24)), body('sleeve', tube(60, 40, 28.5))], fromFront);

  it('is seen on both sides of it', () => {
    expect(drawing.regions.find((region) => region.body === 'tube')?.rings).toHaveLength(2);
    expect(sharesOf(drawing, 'tube', 'sleeve')).toEqual({ tube: 0.7, sleeve: 1 });
  });

  it('leaves no line of the tube on the sleeve', () => {
    const crossing = [...runs(drawing, 'outline'), ...runs(drawing, 'edge')]
      .filter(([[ax, ay], [bx, by]]) => Math.abs(ax + bx) / 2 < 29.9 && Math.abs(ay + by) / 2 < 19);
    expect(crossing).toEqual([]);
  });

  it('shows the bore round the tube from aslant, with the rim between', () => {
    const aslant = lineDrawing([body('tube', tube(200, 28, 24)), body('sleeve', tube(60, 40, 28.5))], towards(1, -1, 0.5));
    expect(aslant.visibleShare('sleeve')).toBeGreaterThan(0.5);
    expect(aslant.regions.map((region) => region.body)).toEqual(['tube', 'sleeve']);
  });
});

describe('areas against closed forms', () => {
  // A box seen along the unit vector u covers |ux| b c + |uy| a c + |uz| a b (C).
  it.each([[1, -2, 0.5], [0.3, -0.2, 1], [-1, 0.1, -0.4], [0, -1, 0]])('box from (%f, %f, %f)', (x, y, z) => {
    const [a, b, c] = [120, 70, 45];
    const length = Math.hypot(x, y, z);
    const drawing = lineDrawing([body('box', cube(a, b, c))], towards(x, y, z));
    const exact = (Math.abs(x) * b * c + Math.abs(y) * a * c + Math.abs(z) * a * b) / length;
    expect(Math.abs(regionArea(drawing, 'box') / exact - 1)).toBeLessThan(1e-4);
    expect(sharesOf(drawing, 'box')).toEqual({ box: 1 });
  });

  // A regular n-gon of circumradius r has the area n r² sin(2π/n) / 2 (C).
  it('a tube from its end is a ring', () => {
    const drawing = lineDrawing([body('tube', tube(80, 30, 20, 24))], towards(1, 0, 0));
    const ring = 12 * (15 ** 2 - 10 ** 2) * Math.sin(Math.PI / 12);
    expect(Math.abs(regionArea(drawing, 'tube') / ring - 1)).toBeLessThan(1e-3);
    expect(sharesOf(drawing, 'tube')).toEqual({ tube: 1 });
  });

  it('a box half under another shows half', () => {
    const drawing = lineDrawing([body('low', cube(100, 100, 10)), body('high', cube(100, 100, 10), at(50, 0, 30))], fromAbove);
    expect(sharesOf(drawing, 'low', 'high')).toEqual({ low: 0.5, high: 1 });
    expect(regionArea(drawing, 'low')).toBeCloseTo(5000, 0);
  });

  it('a frame shows what stands behind it through its window', () => {
    const frame = meshOf(Solid.cube([100, 10, 100], true).subtract(Solid.cube([60, 20, 60], true)));
    const drawing = lineDrawing([body('frame', frame), body('wall', cube(80, 10, 80), at(0, 50, 0))], fromFront);
    expect(sharesOf(drawing, 'frame', 'wall')).toEqual({ frame: 1, wall: 0.5625 });
    expect(regionArea(drawing, 'frame')).toBeCloseTo(6400, 0);
    expect(drawnLength(drawing, 'outline')).toBeCloseTo(640, 1);
  });
});

describe('nothing to draw', () => {
  it('gives an empty drawing', () => {
    expect(lineDrawing([], isometric)).toMatchObject({ strokes: [], regions: [], bounds: { min: [0, 0], max: [0, 0] } });
  });

  it('refuses a view without a direction', () => {
    expect(() => lineDrawing([], { towardsEye: [0, 0, 0], up: [0, 0, 1] })).toThrow('towardsEye is (0, 0, 0), expected a direction');
  });

  it('names a body that is wholly hidden without a region', () => {
    const drawing = lineDrawing([body('wall', cube(100, 10, 100)), body('behind', cube(20, 20, 20), at(0, 50, 0))], fromFront);
    expect(drawing.regions.map((region) => region.body)).toEqual(['wall']);
    expect(sharesOf(drawing, 'wall', 'behind')).toEqual({ wall: 1, behind: 0 });
  });
});
