import type { Mesh, Pose, Vec2, Vec3 } from '../../../src/model/index.ts';
import type { LineDrawing } from '../../../src/draw/index.ts';
import type { LineDrawer } from '../../../src/draw/picture/index.ts';
import { cornersOf } from '../../../src/draw/picture/corners.ts';
import { planeOf, project } from '../../../src/draw/picture/plane.ts';

/** Stands in for the line drawing where only the picture's own work is tested: each body is its convex outline, nothing is hidden. */
export const hullDrawing: LineDrawer = (bodies, view): LineDrawing => {
  const plane = planeOf(view);
  const hulls = bodies.map((body) => hull(cornersOf(body.mesh, body.pose).map((corner) => project(plane, corner))));
  const all = hulls.flat();
  return {
    strokes: hulls.map((points) => ({ weight: 'outline', points, closed: true })),
    regions: bodies.map((body, i) => ({ body: body.id, rings: [hulls[i] ?? []] })),
    visibleShare: () => 1,
    bounds: {
      min: [Math.min(...all.map((p) => p[0])), Math.min(...all.map((p) => p[1]))],
      max: [Math.max(...all.map((p) => p[0])), Math.max(...all.map((p) => p[1]))],
    },
  };
};

/** Andrew's monotone chain. */
function hull(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: readonly Vec2[]): Vec2[] => {
    const kept: Vec2[] = [];
    for (const p of list) {
      for (;;) {
        const [a, b] = [kept[kept.length - 2], kept[kept.length - 1]];
        if (!a || !b || (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 1e-9) break;
        kept.pop();
      }
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** A box with its middle at the origin. */
export function boxMesh(x: number, y: number, z: number): Mesh {
  const positions: number[] = [];
  for (const k of [-1, 1]) for (const j of [-1, 1]) for (const i of [-1, 1]) positions.push((i * x) / 2, (j * y) / 2, (k * z) / 2);
  const quads = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
  const triangles = quads.flatMap(([a = 0, b = 0, c = 0, d = 0]) => [a, b, c, a, c, d]);
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

export function movedTo([x, y, z]: Vec3): Pose {
  return [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1];
}
