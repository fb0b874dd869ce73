import { part } from '../part.ts';
import { rounded } from '../rounded.ts';

/** kg. Common practice, no source. */
const MASS = 0.012;

/** A pin through a sleeve and its post, or through a flat panel and its tube. */
export const facts = part(['pin'], {
  mass: () => MASS,
  size: ({ diameter, length }) => [rounded(diameter), rounded(length)],
  isRound: true,
  stock: { counted: 'jointPins' },
  scale: { page: 0.5, small: 0.5, head: 0.16 },
});
