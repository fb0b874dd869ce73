import { PARTS } from '../parts/facts.ts';
import type { Kit } from '../read/index.ts';
import type { Part, PartKind, PartPlace, Pose, Shape } from './types.ts';

/** A part by itself, as heavy as its kind and shape make it. */
export const makePart = (kit: Kit, id: string, kind: PartKind, place: PartPlace, shape: Shape, pose: Pose): Part =>
  ({ id, kind, place, shape, pose, group: null, mass: PARTS[kind].mass(kit, shape) });
