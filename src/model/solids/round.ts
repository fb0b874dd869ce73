import type { Manifold, ManifoldToplevel, Vec3 } from 'manifold-3d';

/** Sides of a round part: enough that each facet turns by less than 15°. */
const ROUND_SIDES = 24;
const SMALL_ROUND_SIDES = 16;

const sidesFor = (diameter: number): number => (diameter < 12 ? SMALL_ROUND_SIDES : ROUND_SIDES);

/** A solid rod along z from `from` to `to`. A hole's rod is drawn round its circle, so that a shaft of that size fits. */
export function rod(kernel: ManifoldToplevel, diameter: number, from: number, to: number, kind: 'shaft' | 'hole' = 'shaft'): Manifold {
  const sides = sidesFor(diameter);
  const radius = diameter / 2 / (kind === 'hole' ? Math.cos(Math.PI / sides) : 1);
  return kernel.Manifold.cylinder(to - from, radius, radius, sides).translate(0, 0, from);
}

const RAISED: Readonly<Record<'x' | 'y' | 'z', Vec3>> = { x: [0, 90, 0], y: [-90, 0, 0], z: [0, 0, 0] };

/** Turns what was built along +z so that it runs along +x or +y. */
export const alongAxis = (solid: Manifold, axis: 'x' | 'y' | 'z'): Manifold => solid.rotate(RAISED[axis]);
