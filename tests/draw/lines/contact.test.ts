import { describe, expect, it } from 'vitest';
import { lineDrawing } from '../../../src/draw/lines/index.ts';
import type { Mesh } from '../../../src/model/index.ts';
import { at, body, cube, tube } from './solids.ts';
import { drawnLength, fromFront, isometric, regionArea, runs, sharesOf, towards } from './views.ts';

/** Two meshes as one body, not joined: both keep their faces where they touch. */
function beside(one: Mesh, other: Mesh, away: number): Mesh {
  const shifted = other.positions.map((value, k) => (k % 3 === 0 ? value + away : value));
  const first = one.positions.length / 3;
  return {
    positions: Float64Array.from([...one.positions, ...shifted]),
    triangles: Uint32Array.from([...one.triangles, ...other.triangles.map((p) => p + first)]),
  };
}

describe('two boxes that touch', () => {
  it('flush, as one body: no seam', () => {
    const pair = beside(cube(100, 100, 100), cube(100, 100, 100), 100);
    const [drawing, whole] = [pair, cube(200, 100, 100)].map((mesh) => lineDrawing([body('box', mesh)], isometric));
    for (const weight of ['outline', 'edge'] as const) {
      expect(drawing && runs(drawing, weight).length).toBe(whole && runs(whole, weight).length);
      expect(drawing && drawnLength(drawing, weight)).toBeCloseTo((whole && drawnLength(whole, weight)) ?? 0, 1);
    }
  });

  it('flush, as two bodies: the one line where the body changes', () => {
    const drawing = lineDrawing([body('left', cube(100, 100, 100)), body('right', cube(100, 100, 100), at(100, 0, 0))], fromFront);
    expect(drawnLength(drawing, 'outline')).toBeCloseTo(700, 1);
    expect(drawnLength(drawing, 'edge')).toBe(0);
    expect(sharesOf(drawing, 'left', 'right')).toEqual({ left: 1, right: 1 });
  });

  it.each([0, 0.002, 0.1, 0.25])('flush and %f mm in each other: still one line', (depth) => {
    const drawing = lineDrawing([body('left', cube(100, 100, 100)), body('right', cube(100, 100, 100), at(100 - depth, 0, 0))], isometric);
    const apart = lineDrawing([body('left', cube(100, 100, 100)), body('right', cube(100, 100, 100), at(100, 0, 0))], isometric);
    expect(runs(drawing, 'outline')).toHaveLength(runs(apart, 'outline').length);
    expect(runs(drawing, 'edge')).toHaveLength(runs(apart, 'edge').length);
    expect(drawnLength(drawing, 'outline')).toBeCloseTo(drawnLength(apart, 'outline'), -1);
  });

  it.each([0, 0.002, 0.1, 0.25])('a small one %f mm in a large one: its own edges, nothing more', (depth) => {
    const drawing = lineDrawing([body('floor', cube(300, 300, 20)), body('box', cube(60, 60, 60), at(0, 0, 40 - depth))], isometric);
    const scale = Math.sqrt(2 / 3);
    expect(Math.abs(drawnLength(drawing, 'outline') / scale - (4 * 300 + 2 * 20 + 6 * 60))).toBeLessThan(1);
    expect(Math.abs(drawnLength(drawing, 'edge') / scale - (2 * 300 + 20 + 3 * 60))).toBeLessThan(1);
    expect(drawing.strokes).toHaveLength(6);
  });
});

describe('round bodies in contact', () => {
  it.each([0, 0.05, 0.2, -0.2])('a tube %f mm in a panel gives the same strokes as one that touches', (depth) => {
    const scene = (into: number) => lineDrawing([body('panel', cube(400, 300, 9)), body('tube', tube(500, 28, 24), at(0, 0, 18.5 - into))], towards(1, -1.3, 0.8));
    const [drawing, touching] = [scene(depth), scene(0)];
    expect(drawing.strokes.map(({ weight }) => weight)).toEqual(touching.strokes.map(({ weight }) => weight));
    expect(Math.abs(drawnLength(drawing, 'outline') - drawnLength(touching, 'outline'))).toBeLessThan(2);
  });

  it('a pin that fills its hole and turns in it keeps one rim round it', () => {
    const plate = tube(10, 60, 8, 32);
    const pin = (turn: number) => lineDrawing([body('plate', plate), body('pin', tube(30, 8, 0, 24), at(0, 0, 0, [1, 0, 0], turn))], towards(1, 0.4, 0.3));
    for (const turn of [0, 0.03, 0.1, 0.13]) {
      const drawing = pin(turn);
      expect(drawing.regions.map((region) => region.rings.length)).toEqual([2, 1]);
      expect(Math.abs(drawnLength(drawing, 'outline') - drawnLength(pin(0), 'outline'))).toBeLessThan(1);
    }
  });
});

describe('a gap narrower than the drawing joins its ends over', () => {
  it('is kept: a pin 0.05 mm smaller than its hole, seen along its axis beside a board of 1.5 m', () => {
    const board = tube(10, 1500, 5.1, 16);
    const pin = tube(8, 5, 0, 16);
    const drawing = lineDrawing([body('board', board), body('pin', pin)], towards(1, 0, 0));
    expect(drawing.regions.map((region) => region.rings.length)).toEqual([2, 1]);
    expect(Math.abs(drawing.visibleShare('pin') - 1)).toBeLessThan(0.05);
  });
});

describe('bodies that truly cross', () => {
  it('show the line where one enters the other', () => {
    const drawing = lineDrawing([body('plate', cube(200, 200, 10)), body('post', cube(40, 40, 100))], isometric);
    const scale = Math.sqrt(2 / 3);
    // Above the plate the post is as if it stood on it: height 45 mm over the plate's face; below, what the plate leaves free is none.
    const outline = 4 * 200 + 2 * 10 + 2 * 40 + 2 * 45 + 2 * 40;
    expect(Math.abs(drawnLength(drawing, 'outline') / scale - outline)).toBeLessThan(1);
    expect(regionArea(drawing, 'post') * Math.sqrt(3)).toBeCloseTo(40 * 40 + 2 * 40 * 45, 0);
  });
});
