import { part } from '../part.ts';

/** A flat panel pinned to bare tubes. */
export const facts = part('plate', {
  mass: (kit, { width, height, thickness }) => width * height * thickness * kit.panel.density,
  size: ({ width, height }) => [Math.round(width), Math.round(height)],
  stock: { cutFrom: 'panels' },
  scale: { page: 0.1, small: 0.05, head: 0.025 },
  pictogram: 'plate',
});
