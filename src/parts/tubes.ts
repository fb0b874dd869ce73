import { PROFILES } from '../model/profiles/profiles.ts';
import { rounded } from './rounded.ts';
import type { PartTold } from './types.ts';

/** What all tubes have in common: they lie along the paper, with a break where they are long. */
export const tube: PartTold<'tube'> = {
  mass: (shape, density) => shape.length * PROFILES[shape.profile ?? 'round'].section(shape).area * density,
  size: ({ length }) => [rounded(length)],
  variety: ({ profile = 'round', outside }) => `${profile} ${outside}`,
  undrilled: (shape) => ({ ...shape, holes: [] }),
  stock: { cutFrom: 'tubes' },
  scale: { page: 0.1, small: 0.1, head: 0.14 },
  view: { towardsEye: [0.35, -1, 0.3], up: [0, 0, 1] },
};
