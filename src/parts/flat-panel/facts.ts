import { laidFlat, panelMass, sidesOf } from '../panels.ts';
import { part } from '../part.ts';

/** A flat panel pinned to bare tubes. */
export const facts = part(['plate', 'folded'], {
  mass: panelMass,
  size: sidesOf,
  delivered: laidFlat,
  stock: { cutFrom: 'panels' },
  scale: { page: 0.1, small: 0.05, head: 0.025 },
});
