import { part } from '../part.ts';

/** kg. Common practice, no source. */
const MASS = 0.003;

/** A barbed pin through a tab. */
export const facts = part(['pin'], {
  mass: () => MASS,
  stock: { counted: 'panelPins' },
  scale: { page: 0.5, small: 0.5, head: 0.45 },
});
