import type { Side, Vec2, Vec3 } from '../types.ts';

/** The sides of a panel anticlockwise from the right, and which way its `along` runs there: with x and y, or against. */
export const ROUND: readonly { readonly side: Side; readonly way: 1 | -1 }[] = [
  { side: 'right', way: 1 }, { side: 'back', way: -1 }, { side: 'left', way: -1 }, { side: 'front', way: 1 },
];

export const runsAlongX = (side: Side): boolean => side === 'front' || side === 'back';

/** A point `out` mm from the middle towards a side, `along` it, in panel coordinates. */
export function atSide(side: Side, along: number, out: number): Vec2 {
  switch (side) {
    case 'right': return [out, along];
    case 'left': return [-out, along];
    case 'back': return [along, out];
    case 'front': return [along, -out];
  }
}

/** Towards a side, and along it, on the flat panel. */
export const outwards = (side: Side): Vec3 => [...atSide(side, 0, 1), 0];
export const alongSide = (side: Side): Vec3 => [...atSide(side, 1, 0), 0];
