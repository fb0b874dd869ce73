import { placed, type Vec3 } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';

/** A box along the axes, mm. */
export interface Box {
  readonly least: Vec3;
  readonly most: Vec3;
}

/** The box round all bodies, from their meshes. */
export function boxRound(bodies: readonly Pick<SceneBody, 'mesh' | 'pose'>[]): Box {
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  const most: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const { mesh, pose } of bodies) {
    for (let index = 0; index < mesh.positions.length; index += 3) {
      const point = placed(pose, [mesh.positions[index] ?? 0, mesh.positions[index + 1] ?? 0, mesh.positions[index + 2] ?? 0]);
      for (const axis of [0, 1, 2] as const) {
        least[axis] = Math.min(least[axis], point[axis]);
        most[axis] = Math.max(most[axis], point[axis]);
      }
    }
  }
  return { least, most };
}
