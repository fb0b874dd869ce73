import { real, whole } from './arrays.ts';

/** Least x y z and greatest x y z of those triangles (three points each) that are listed, in the list's order. */
export function boxesOfTriangles(triangles: Int32Array, points: Float64Array, listed: Iterable<number> & { readonly length: number }): Float64Array {
  const boxes = new Float64Array(6 * listed.length);
  let place = 0;
  for (const t of listed) {
    const [a, b, c] = [3 * whole(triangles, 3 * t), 3 * whole(triangles, 3 * t + 1), 3 * whole(triangles, 3 * t + 2)];
    for (let k = 0; k < 3; k++) {
      boxes[place + k] = Math.min(real(points, a + k), real(points, b + k), real(points, c + k));
      boxes[place + k + 3] = Math.max(real(points, a + k), real(points, b + k), real(points, c + k));
    }
    place += 6;
  }
  return boxes;
}
