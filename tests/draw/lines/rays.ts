import { Matrix4, Vector3 } from 'three';
import { viewMatrix } from '../../../src/draw/lines/viewMatrix.ts';
import type { Body } from '../../../src/draw/types.ts';
import type { Vec2, Vec3 } from '../../../src/model/index.ts';
import type { View } from '../../../src/scene/index.ts';

/** Every triangle in view coordinates: nine numbers of its corners, its unit normal, its body. */
export interface Target {
  readonly corners: readonly [Vector3, Vector3, Vector3];
  readonly normal: Vector3;
  readonly body: number;
  readonly box: readonly [number, number, number, number];
}

/** Ray casting as plainly as can be: no welding, no grid of the drawing's own, the mesh's own normals. */
export interface Rays {
  readonly cells: ReadonlyMap<string, readonly Target[]>;
  readonly cell: number;
}

export function raysOf(bodies: readonly Body[], view: View): Rays {
  const cells = new Map<string, Target[]>();
  const cell = 25;
  bodies.forEach(({ mesh, pose }, body) => {
    const matrix = viewMatrix(view).multiply(new Matrix4().fromArray(pose));
    const corner = (h: number): Vector3 => new Vector3().fromArray(mesh.positions, 3 * (mesh.triangles[h] ?? 0)).applyMatrix4(matrix);
    for (let h = 0; h < mesh.triangles.length; h += 3) {
      const corners = [corner(h), corner(h + 1), corner(h + 2)] as const;
      const normal = corners[1].clone().sub(corners[0]).cross(corners[2].clone().sub(corners[0])).normalize();
      const xs = corners.map((c) => c.x);
      const ys = corners.map((c) => c.y);
      const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
      for (let i = Math.floor(box[0] / cell); i <= Math.floor(box[2] / cell); i++) {
        for (let j = Math.floor(box[1] / cell); j <= Math.floor(box[3] / cell); j++) {
          const key = `${i},${j}`;
          cells.set(key, [...(cells.get(key) ?? []), { corners, normal, body, box }]);
        }
      }
    }
  });
  return { cells, cell };
}

/** Triangles over a place of the view plane and their heights there. */
function hits({ cells, cell }: Rays, x: number, y: number): readonly { readonly target: Target; readonly z: number }[] {
  return (cells.get(`${Math.floor(x / cell)},${Math.floor(y / cell)}`) ?? []).flatMap((target) => {
    const { corners: [a, b, c], box } = target;
    if (x < box[0] || x > box[2] || y < box[1] || y > box[3]) return [];
    const area = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    if (Math.abs(area) < 1e-9) return [];
    const v = ((x - a.x) * (c.y - a.y) - (y - a.y) * (c.x - a.x)) / area;
    const w = ((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / area;
    return v < 0 || w < 0 || v + w > 1 ? [] : [{ target, z: a.z + v * (b.z - a.z) + w * (c.z - a.z) }];
  });
}

/** The body nearest to the eye at a place, or −1, and how far it stands before the next body. */
export function firstBody(rays: Rays, [x, y]: Vec2): number {
  const found = [...hits(rays, x, y)].sort((p, q) => q.z - p.z);
  return found[0]?.target.body ?? -1;
}

/** True where some triangle lies before a point, the point being deeper than `depth` mm under it, square to it. */
function isBlocked(rays: Rays, [x, y, z]: Vec3, dx: number, dy: number, depth: number): boolean {
  return hits(rays, x + dx, y + dy).some(({ target, z: height }) =>
    height > z && new Vector3(x, y, z).sub(target.corners[0]).dot(target.normal) * Math.sign(target.normal.z) < -depth);
}

const jitter = 0.01;
const around = [[0, 0], [jitter, jitter], [-jitter, jitter], [jitter, -jitter], [-jitter, -jitter]] as const;

/** Whether a ray of five, 0.01 mm apart, reaches a point of a line. */
export const isSeen = (rays: Rays, point: Vec3): boolean => around.some(([dx, dy]) => !isBlocked(rays, point, dx, dy, 0.01));

/** Whether a ray of five, 0.01 mm apart, is stopped before a point of a line. */
export const isHidden = (rays: Rays, point: Vec3): boolean => around.some(([dx, dy]) => isBlocked(rays, point, dx, dy, 0.001));
