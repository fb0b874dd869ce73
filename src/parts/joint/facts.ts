import { part } from '../part.ts';

/** A corner joint. */
export const facts = part('joint', {
  mass: (_, { joint }) => joint.mass,
  undrilled: (shape) => ({ ...shape, drilled: null }),
  stock: { counted: 'joints' },
  scale: { page: 0.5, small: 0.5, head: 0.09 },
});
