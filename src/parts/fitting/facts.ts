import { part } from '../part.ts';

/** A small part of the kit: a foot, a castor, a cap, a hinge. */
export const facts = part(['fitting'], {
  mass: ({ fitting }) => fitting.mass,
  variety: ({ fitting }) => fitting.name,
  // A cap of the item's own is called as one that the work brings.
  named: ({ fitting }) => (fitting.is === 'end-cap' ? 'tube-cap' : fitting.is),
  stock: { untold: true },
  hasWayUp: true,
  scale: { page: 0.5, small: 0.5, head: 0.09 },
});
