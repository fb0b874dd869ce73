import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec2, Vec3 } from '../../../src/model/index.ts';
import type { Mark, View } from '../../../src/scene/index.ts';
import { arrowHead, arrowsOnPaper, drawArrow, type Arrow } from '../../../src/draw/picture/arrows.ts';
import { apart, pathLength } from '../../../src/draw/kit/geometry.ts';
import { planeOf, project } from '../../../src/draw/picture/plane.ts';

const isometric: View = { towardsEye: [1, -1, 1], up: [0, 0, 1] };
const fit = { scale: 0.1, origin: [50, 50] as const };
const slide = (by: Vec3): Mark => ({ mark: 'arrow', path: [[0, 0, 0], by] });

function only(marks: readonly Mark[], view = isometric): Arrow {
  const [arrow] = arrowsOnPaper(marks, planeOf(view), fit);
  if (!arrow) throw new Error('no arrow');
  return arrow;
}

/** Direction of the head on paper in degrees, anticlockwise from the right as the reader sees it. */
function headAngle(arrow: Arrow): number {
  const head = arrowHead(arrow);
  if (!head) throw new Error('no head');
  const [tip] = head.corners;
  return (Math.atan2(head.base[1] - tip[1], tip[0] - head.base[0]) * 180) / Math.PI;
}

describe('arrows', () => {
  // ISO 5456-3 (C): in the isometric view the axes stand at 30°, 30° and 90° and are all shortened to √(2/3) = 0.8165.
  it.each([
    [[200, 0, 0], -30],
    [[0, 200, 0], 30],
    [[0, 0, 200], 90],
    [[-200, 0, 0], 150],
    [[0, 0, -200], -90],
  ] as const)('point along the motion %j, at %d° on paper', (by, angle) => {
    const arrow = only([slide(by)]);
    expect(headAngle(arrow)).toBeCloseTo(angle, 6);
    expect(pathLength(arrow.path)).toBeCloseTo(200 * fit.scale * Math.sqrt(2 / 3), 6);
  });

  it('point along any motion in any view', () => {
    const number = fc.integer({ min: -300, max: 300 });
    fc.assert(
      fc.property(fc.tuple(number, number, number), fc.tuple(number, number, number), (by, eye) => {
        fc.pre(Math.hypot(...eye) > 0);
        const plane = planeOf({ towardsEye: eye, up: [0, 0, 1] });
        const [x, y] = project(plane, by);
        fc.pre(Math.hypot(x, y) * fit.scale > 0.5);
        const arrow = only([slide(by)], { towardsEye: eye, up: [0, 0, 1] });
        const off = headAngle(arrow) - (Math.atan2(y, x) * 180) / Math.PI;
        expect(Math.abs(((off + 540) % 360) - 180)).toBeLessThan(1e-6);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('are at least 7 mm long, lengthened backwards, with the tip kept', () => {
    const arrow = only([slide([20, 0, 0])]);
    expect(pathLength(arrow.path)).toBeCloseTo(7, 9);
    const tip = arrow.path[arrow.path.length - 1] as Vec2;
    expect(tip[0]).toBeCloseTo(50 + 2 * Math.sqrt(2 / 3) * Math.cos(Math.PI / 6), 9);
    expect(arrow.form).toBe('thin');
  });

  it('follow a turn, the head along the tangent at its own middle', () => {
    const radius = 300;
    const path = Array.from({ length: 91 }, (_, i): Vec3 => [radius * Math.cos((i * Math.PI) / 180), 0, radius * Math.sin((i * Math.PI) / 180)]);
    const arrow = only([{ mark: 'arrow', path }], { towardsEye: [0, -1, 0], up: [0, 0, 1] });
    const half = Math.asin(6 / 2 / (radius * fit.scale)); // half the angle that the 6 mm head spans on the circle
    expect(arrow.form).toBe('broad');
    expect(headAngle(arrow)).toBeCloseTo(180 - (half * 180) / Math.PI, 0);
    arrow.path.forEach((p) => expect(apart(p, [50, 50])).toBeCloseTo(radius * fit.scale, 9));
  });

  it('become a point or feathers in a ring along the line of sight', () => {
    expect(only([slide([100, -100, 100])]).form).toBe('towards');
    expect(only([slide([-100, 100, -100])]).form).toBe('away');
    expect(drawArrow(only([slide([100, -100, 100])])).map(({ mark }) => mark)).toEqual(['circle', 'circle']);
  });

  it('are broad when long and alone, thin when close together or many', () => {
    const beside = (y: number): Mark => ({ mark: 'arrow', path: [[0, y, 0], [300, y, 0]] });
    expect(only([beside(0)]).form).toBe('broad');
    expect(only([beside(0), beside(30)]).form).toBe('thin');
    expect(only([0, 200, 400, 600, 800].map(beside)).form).toBe('thin');
    expect(only([0, 200].map(beside)).form).toBe('broad');
  });
});

