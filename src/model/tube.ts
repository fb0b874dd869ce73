import type { Kit } from '../read/index.ts';
import type { Shape } from './types.ts';

/** A tube from the kit's stock, undrilled. */
export const tubeShape = (kit: Kit, length: number): Extract<Shape, { form: 'tube' }> => ({
  form: 'tube',
  length,
  outside: kit.tube.outsideDiameter,
  inside: kit.tube.outsideDiameter - 2 * kit.tube.wall,
  holes: [],
});
