import type { Face } from '../../read/index.ts';
import type { Vec2, Vec3 } from '../types.ts';

/** One side of the item, seen from outside. */
export interface FaceTurn {
  readonly face: Face;
  readonly inwards: Vec3;
  readonly outwards: Vec3;
  /** Towards the face's own right, seen from outside. */
  readonly across: Vec3;
  /** Half the distance between its two posts' axes, and of the face from the item's middle, mm. */
  readonly halfSpan: number;
  readonly out: number;
}

export function faceTurn(face: Face, axes: Vec2): FaceTurn {
  const [ax, ay] = axes;
  switch (face) {
    case 'back': return { face, inwards: [0, -1, 0], outwards: [0, 1, 0], across: [-1, 0, 0], halfSpan: ax, out: ay };
    case 'front': return { face, inwards: [0, 1, 0], outwards: [0, -1, 0], across: [1, 0, 0], halfSpan: ax, out: ay };
    case 'left': return { face, inwards: [1, 0, 0], outwards: [-1, 0, 0], across: [0, -1, 0], halfSpan: ay, out: ax };
    case 'right': return { face, inwards: [-1, 0, 0], outwards: [1, 0, 0], across: [0, 1, 0], halfSpan: ay, out: ax };
  }
}
