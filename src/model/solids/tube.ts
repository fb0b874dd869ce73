import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { PROFILES } from '../profiles/profiles.ts';
import type { Shape } from '../types.ts';
import { alongAxis, rod } from './round.ts';

/** A tube along x, middle at the origin, with its cross holes along y or turned from it. */
export function buildTube(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'tube' }>): Manifold {
  const half = shape.length / 2;
  const { bar } = PROFILES[shape.profile ?? 'round'];
  const wall = bar(kernel, shape.outside, -half, half).subtract(bar(kernel, shape.inside, -half - 1, half + 1));
  const holes = shape.holes.map(({ at, diameter, turn = 0 }) =>
    alongAxis(rod(kernel, diameter, -shape.outside, shape.outside, 'hole'), 'y').rotate([(turn * 180) / Math.PI, 0, 0]).translate(at, 0, 0));
  return kernel.Manifold.difference([alongAxis(wall, 'x'), ...holes]);
}
