import { PARTS } from '../parts/facts.ts';
import type { Kit } from '../read/index.ts';
import type { Part, PartKind, PartPlace, Pose, Shape } from './types.ts';

/** A part by itself, of the kit's usual tube or panel where it is cut from one; as heavy as its kind and shape make it. */
export const makePart = (kit: Kit, id: string, kind: PartKind, place: PartPlace, shape: Shape, pose: Pose): Part =>
  ({ id, kind, place, shape, pose, group: null, mass: PARTS[kind].mass(shape, densityOf(kit, kind)) });

function densityOf(kit: Kit, kind: PartKind): number {
  const { stock } = PARTS[kind];
  if (!('cutFrom' in stock)) return 0;
  return stock.cutFrom === 'tubes' ? kit.tube.density : kit.panel.density;
}
