import { unit, type Vec2, type Vec3 } from '../../model/index.ts';
import { pieceOf, type Piece } from './convex.ts';

/** A flat outline drawn out along the third axis: (u, v) from w = `from` to `to`, each corner placed by `place`. */
export function prism(outline: readonly Vec2[], from: number, to: number, place: (u: number, v: number, w: number) => Vec3): Piece {
  const origin = place(0, 0, 0);
  const direction = (u: number, v: number, w: number): Vec3 => {
    const [x, y, z] = place(u, v, w);
    return unit([x - origin[0], y - origin[1], z - origin[2]]);
  };
  const edges = outline.map(([u, v], index): Vec2 => {
    const [nu, nv] = outline[(index + 1) % outline.length] ?? [u, v];
    return [nv - v, u - nu];
  }).filter(([u, v]) => Math.hypot(u, v) > 1e-6);
  const points = outline.flatMap(([u, v]) => [place(u, v, from), place(u, v, to)]);
  return pieceOf(points, [direction(0, 0, 1), ...different(edges.map(([u, v]) => direction(u, v, 0)))]);
}

/** Directions without those that only look the other way. */
const different = (directions: readonly Vec3[]): readonly Vec3[] =>
  directions.filter(([x, y, z], index) => !directions.slice(0, index).some((other) => Math.abs(other[0] * x + other[1] * y + other[2] * z) > 0.99999));

export const rectangle = (u0: number, u1: number, v0: number, v1: number): readonly Vec2[] => [[u0, v0], [u1, v0], [u1, v1], [u0, v1]];
