import { Box3, Vector3 } from 'three';
import { asMatrix, dot, plus, times, type Vec3 } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';

/** A box along the axes, mm. */
export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The box round all bodies, from their meshes. */
export function boxRound(bodies: readonly Pick<SceneBody, 'mesh' | 'pose'>[]): Box {
  const box = new Box3();
  const point = new Vector3();
  for (const { mesh: { positions }, pose } of bodies) {
    const matrix = asMatrix(pose);
    for (let index = 0; index < positions.length; index += 3) box.expandByPoint(point.fromArray(positions, index).applyMatrix4(matrix));
  }
  return { min: box.min.toArray(), max: box.max.toArray() };
}

/** The middle of a box. */
export const middleOf = ({ min, max }: Box): Vec3 => times(plus(min, max), 0.5);

/** How far a box reaches in a direction. */
export const reachOf = ({ min, max }: Box, way: Vec3): number => dot(way, [way[0] > 0 ? max[0] : min[0], way[1] > 0 ? max[1] : min[1], way[2] > 0 ? max[2] : min[2]]);
