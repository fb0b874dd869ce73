import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { KIT_PROFILE } from '../profiles/profiles.ts';
import type { Shape } from '../types.ts';
import { alongAxis, rod } from './round.ts';

/** A tube along x, middle at the origin, with its cross holes along y. */
export function buildTube(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'tube' }>): Manifold {
  const half = shape.length / 2;
  const wall = KIT_PROFILE.solid(kernel, shape, -half, half);
  const holes = shape.holes.map(({ at, diameter }) =>
    alongAxis(rod(kernel, diameter, -shape.outside, shape.outside, 'hole'), 'y').translate(at, 0, 0));
  return kernel.Manifold.difference([alongAxis(wall, 'x'), ...holes]);
}
