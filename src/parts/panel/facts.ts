import { FLAT } from '../../model/folding.ts';
import { part } from '../part.ts';

/** A panel wrapped round the tubes of a deck. Shown whole: a break would leave out its notches. */
export const facts = part('panel', {
  mass: (kit, { pattern }) => {
    const notched = pattern.blank[0] * pattern.blank[1] - 4 * pattern.notch[0] * pattern.notch[1];
    return notched * pattern.thickness * kit.panel.density;
  },
  delivered: (shape) => ({ ...shape, folding: FLAT }),
  stock: { cutFrom: 'panels' },
  scale: { page: 0.1, small: 0.05, head: 0.017 },
  isWhole: true,
  isShownAtWork: true,
});
