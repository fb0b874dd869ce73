import { part } from '../part.ts';

/** A joint of tubes. */
export const facts = part(['joint', 'ported-joint'], {
  mass: ({ joint }) => joint.mass,
  variety: (shape) => (shape.form === 'joint' ? '' : shape.joint.name),
  undrilled: (shape) => (shape.form === 'joint' ? { ...shape, drilled: null } : { ...shape, drilled: [] }),
  stock: { counted: 'joints' },
  hasWayUp: true,
  scale: { page: 0.5, small: 0.5, head: 0.09 },
});
