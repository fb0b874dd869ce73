import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Shape } from '../types.ts';
import { rod } from './round.ts';

/** A pin with its shank along −z and a flat head. The shank is a trifle thinner than its hole. */
export function buildPin(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'pin' }>): Manifold {
  return rod(kernel, shape.diameter, -shape.length, shape.headHeight)
    .add(rod(kernel, shape.headDiameter, 0, shape.headHeight));
}

/** A wing nut: a round body with two upright wings, bore along z. */
export function buildWingNut(kernel: ManifoldToplevel, shape: Extract<Shape, { form: 'wing-nut' }>): Manifold {
  const { Manifold } = kernel;
  const body = rod(kernel, shape.bore * 2, 0, shape.height * 0.6);
  const half = shape.span / 2;
  const wing = Manifold.extrude([[[0, 0], [half * 0.8, shape.height * 0.4], [half, shape.height], [half * 0.55, shape.height], [0, shape.height * 0.55]]], shape.bore * 0.4, 0, 0, [1, 1], true)
    .rotate([90, 0, 0]);
  return Manifold.union([body, wing, wing.rotate([0, 0, 180])])
    .subtract(rod(kernel, shape.bore, -1, shape.height + 1, 'hole'));
}
