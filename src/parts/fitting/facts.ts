import { part } from '../part.ts';

/** A small part of the kit: a foot, a castor, a cap, a hinge. */
export const facts = part(['fitting'], {
  mass: ({ fitting }) => fitting.mass,
  variety: ({ fitting }) => fitting.name,
  stock: { untold: true },
  hasWayUp: true,
  scale: { page: 0.5, small: 0.5, head: 0.09 },
});
