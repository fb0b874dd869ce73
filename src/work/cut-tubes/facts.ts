import { pair, work } from '../rules.ts';

/** Stock tubes sawn to length, all of the item at once. */
export const facts = work({
  tools: ['tape', 'pencil', 'square', 'saw'],
  people: 2,
  cautions: ['dust', 'eyes', 'gloves'],
  check: pair('cut-square'),
  minutes: 40,
  waits: 0,
  prepared: 'all',
  shownIn: 'lengths',
});
