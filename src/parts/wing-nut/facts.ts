import { part } from '../part.ts';
import { rounded } from '../rounded.ts';

/** kg. Common practice, no source. */
const MASS = 0.008;

/** The nut of a joint's pin. */
export const facts = part(['wing-nut'], {
  mass: () => MASS,
  size: ({ bore }) => [rounded(bore)],
  isRound: true,
  stock: { counted: 'wingNuts' },
  scale: { page: 0.5, small: 0.5, head: 0.4 },
});
