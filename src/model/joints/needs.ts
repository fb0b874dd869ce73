import type { TubeKind } from '../../read/index.ts';
import type { Vec3 } from '../types.ts';

/** Something that a joint at a point has to take: a bar that ends, one that runs through, or a cable's loop. `out` is a unit vector. */
export interface Need {
  readonly is: 'socket' | 'sleeve' | 'stud';
  /** The way the bar goes off from the point, or the cable's loop slips off; either way of a bar that runs through. */
  readonly out: Vec3;
  /** Id of the bar or cable. */
  readonly part: string;
  readonly tube: TubeKind | null;
}

/** All needs of one point. */
export interface Needs {
  readonly needs: readonly Need[];
  /** Towards the middle of the item, for the choice between poses that are as good: a unit vector or nought. */
  readonly inwards: Vec3;
}
