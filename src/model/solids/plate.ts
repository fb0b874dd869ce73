import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Shape } from '../types.ts';
import { rod } from './round.ts';

/** A flat panel with its holes, blind ones from below. */
export function buildPlate(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'plate' }>): Manifold {
  const slab = kernel.Manifold.cube([shape.width, shape.height, shape.thickness], true).translate(0, 0, shape.thickness / 2);
  const holes = shape.holes.map(({ at, diameter, depth }) => rod(kernel, diameter, -1, depth ?? shape.thickness + 1, 'hole').translate(at[0], at[1], 0));
  return kernel.Manifold.difference([slab, ...holes]);
}
