import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Shape } from '../types.ts';
import { alongAxis, rod } from './round.ts';

/** Corners of the cable's round in a loop. */
const LOOP_SIDES = 14;

/** A straight cable between two loops that lie round z. */
export function buildCable(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'cable' }>): Manifold {
  const thick = shape.diameter / 2;
  const middle = shape.loopInside + thick;
  const ring = Array.from({ length: LOOP_SIDES }, (_, index): [number, number] => {
    const angle = (2 * Math.PI * index) / LOOP_SIDES;
    return [middle + thick * Math.cos(angle), thick * Math.sin(angle)];
  });
  const loop = kernel.Manifold.revolve([ring], 16);
  const straight = alongAxis(rod(kernel, shape.diameter * 0.98, middle, shape.length - middle), 'x');
  return kernel.Manifold.union([loop, straight, loop.translate(shape.length, 0, 0)]);
}
