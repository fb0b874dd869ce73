import { punchedShape } from '../../model/folding.ts';
import { laidFlat, panelMass, sidesOf } from '../panels.ts';
import { part } from '../part.ts';

/** A panel wrapped round tubes. Shown whole: a break would leave out its notches. */
export const facts = part(['panel', 'folded', 'plate'], {
  mass: panelMass,
  size: sidesOf,
  delivered: (shape) => punchedShape(laidFlat(shape), () => false),
  stock: { cutFrom: 'panels' },
  scale: { page: 0.1, small: 0.05, head: 0.017 },
  isWhole: true,
  isShownAtWork: true,
});
