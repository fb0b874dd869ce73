import type { LineDrawing, Stroke } from '../../../src/draw/types.ts';
import type { Vec2, Vec3 } from '../../../src/model/index.ts';
import type { View } from '../../../src/scene/index.ts';

export const towards = (...towardsEye: Vec3): View => ({ towardsEye, up: [0, 0, 1] });

export const isometric = towards(1, -1, 1);
export const fromFront = towards(0, -1, 0);
export const fromAbove: View = { towardsEye: [0, 0, 1], up: [0, 1, 0] };

/** Views by a fixed rule that favours no direction (multiples of irrational steps). */
export const scatteredViews = (count: number): readonly View[] => Array.from({ length: count }, (_, k) => {
  const z = 1 - 2 * ((0.5 + k * 0.6180339887) % 1);
  const turn = 2 * Math.PI * ((0.25 + k * 0.7548776662) % 1);
  const r = Math.sqrt(1 - z * z);
  return towards(r * Math.cos(turn), r * Math.sin(turn), z);
});

/** Straight runs of the strokes of one weight, each as two points. */
export function runs(drawing: LineDrawing, weight: Stroke['weight']): readonly (readonly [Vec2, Vec2])[] {
  return drawing.strokes.filter((stroke) => stroke.weight === weight).flatMap(({ points, closed }) =>
    points.flatMap((point, p) => {
      const next = points[p + 1] ?? (closed ? points[0] : undefined);
      return next ? [[point, next] as const] : [];
    }));
}

export const runLength = ([a, b]: readonly [Vec2, Vec2]): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Length of all strokes of one weight, in mm. */
export const drawnLength = (drawing: LineDrawing, weight: Stroke['weight']): number =>
  runs(drawing, weight).reduce((sum, run) => sum + runLength(run), 0);

/** Area of the rings of a body (the body lies on the left, so holes count against it), in mm². */
export function ringsArea(rings: readonly (readonly Vec2[])[]): number {
  return Math.abs(rings.reduce((sum, ring) => sum + ring.reduce((own, [x, y], p) => {
    const [nextX, nextY] = ring[(p + 1) % ring.length] ?? [x, y];
    return own + (x * nextY - nextX * y) / 2;
  }, 0), 0));
}

export const regionArea = (drawing: LineDrawing, body: string): number =>
  ringsArea(drawing.regions.find((region) => region.body === body)?.rings ?? []);

/** The visible shares of some bodies, by their ids. */
export const sharesOf = (drawing: LineDrawing, ...bodies: readonly string[]): Readonly<Record<string, number>> =>
  Object.fromEntries(bodies.map((body) => [body, drawing.visibleShare(body)]));

/** Whether a place lies inside rings by the even-odd rule of SVG fills. */
export function isInside(rings: readonly (readonly Vec2[])[], [x, y]: Vec2): boolean {
  return rings.flat().length > 0 && rings.reduce((inside, ring) => ring.reduce((now, [ax, ay], p) => {
    const [bx, by] = ring[(p + 1) % ring.length] ?? [ax, ay];
    return (ay > y) !== (by > y) && x < ax + ((y - ay) / (by - ay)) * (bx - ax) ? !now : now;
  }, inside), false);
}
