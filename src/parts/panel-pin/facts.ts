import { part } from '../part.ts';
import { rounded } from '../rounded.ts';

/** kg. Common practice, no source. */
const MASS = 0.003;

/** A barbed pin through a tab. */
export const facts = part(['pin'], {
  mass: () => MASS,
  size: ({ diameter, length }) => [rounded(diameter), rounded(length)],
  isRound: true,
  stock: { counted: 'panelPins' },
  scale: { page: 0.5, small: 0.5, head: 0.45 },
});
