import { Box3, Ray, Triangle, Vector3 } from 'three';
import { asMatrix, type Vec3 } from '../../model/index.ts';
import type { SceneBody } from '../types.ts';

/** A body's triangles where it is, and the box round them, mm. */
export interface Placed {
  readonly box: Box3;
  readonly triangles: readonly Triangle[];
}

/** Bodies as triangles in the scene; triangles without an area are left out. */
export const placedBodies = (bodies: readonly Pick<SceneBody, 'mesh' | 'pose'>[]): readonly Placed[] => bodies.map(({ mesh: { positions, triangles }, pose }) => {
  const matrix = asMatrix(pose);
  const corner = (index: number): Vector3 => new Vector3().fromArray(positions, 3 * index).applyMatrix4(matrix);
  const all = Array.from({ length: triangles.length / 3 }, (_, index) => {
    const [a = 0, b = 0, c = 0] = triangles.subarray(3 * index, 3 * index + 3);
    return new Triangle(corner(a), corner(b), corner(c));
  }).filter((triangle) => triangle.getArea() > 1e-6);
  return { triangles: all, box: new Box3().setFromPoints(all.flatMap(({ a, b, c }) => [a, b, c])) };
});

/** How far the nearest of some bodies is from a place, mm; no farther than `most` is asked. */
export function nearestFar(bodies: readonly Placed[], place: Vec3, most: number): number {
  const [point, closest] = [new Vector3(...place), new Vector3()];
  return bodies.reduce((far, { box, triangles }) => (box.distanceToPoint(point) >= far ? far
    : triangles.reduce((nearest, triangle) => Math.min(nearest, triangle.closestPointToPoint(point, closest).distanceTo(point)), far)), most);
}

/** Whether any of some bodies is met on a straight way from a place, of length 1 or not, within so far, mm. */
export function isMet(bodies: readonly Placed[], from: Vec3, way: Vec3, within: number): boolean {
  const ray = new Ray(new Vector3(...from), new Vector3(...way).normalize());
  const met = new Vector3();
  return bodies.some(({ box, triangles }) => ray.intersectsBox(box)
    && triangles.some(({ a, b, c }) => ray.intersectTriangle(a, b, c, false, met) !== null && met.distanceTo(ray.origin) <= within));
}
