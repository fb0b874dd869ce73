import { placed, type Vec3 } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';

/** A box along the axes, mm. */
export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The box round all bodies, from their meshes. */
export function boxRound(bodies: readonly Pick<SceneBody, 'mesh' | 'pose'>[]): Box {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const { mesh, pose } of bodies) {
    for (let index = 0; index < mesh.positions.length; index += 3) {
      const point = placed(pose, [mesh.positions[index] ?? 0, mesh.positions[index + 1] ?? 0, mesh.positions[index + 2] ?? 0]);
      for (const axis of [0, 1, 2] as const) {
        min[axis] = Math.min(min[axis], point[axis]);
        max[axis] = Math.max(max[axis], point[axis]);
      }
    }
  }
  return { min, max };
}
