import { Triangle, Vector3 } from 'three';
import { asMatrix } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';
import type { Box } from './extent.ts';

/** Work that lies no higher over a block than this rests on it, mm. */
const ON = 3;
/** The block's top is tried at as many places along and across. */
const TRIED = [0.15, 0.5, 0.85] as const;
/** Work rests on a block that it covers at so many of them. */
const ENOUGH = 4;

/** Whether something of some bodies lies on the top of a box. */
export function restsOn(bodies: readonly SceneBody[], { min, max }: Box): boolean {
  const places = TRIED.flatMap((x) => TRIED.map((y) => new Vector3(min[0] + (max[0] - min[0]) * x, min[1] + (max[1] - min[1]) * y, 0)));
  const covered = new Set<Vector3>();
  for (const { mesh: { positions, triangles }, pose } of bodies) {
    const matrix = asMatrix(pose);
    for (let at = 0; at < triangles.length; at += 3) {
      const corners = [0, 1, 2].map((corner) => new Vector3().fromArray(positions, (triangles[at + corner] ?? 0) * 3).applyMatrix4(matrix)) as [Vector3, Vector3, Vector3];
      if (corners.some(({ z }) => z < max[2] - ON || z > max[2] + ON)) continue;
      const flat = new Triangle(...corners.map((corner) => corner.setZ(0)) as [Vector3, Vector3, Vector3]);
      if (flat.getArea() > 1e-6) places.filter((place) => flat.containsPoint(place)).forEach((place) => covered.add(place));
    }
  }
  return covered.size >= ENOUGH;
}
