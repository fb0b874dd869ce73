import { pair, work } from '../rules.ts';

/** A cap, a foot or a castor in the end of a tube. */
export const facts = work({
  tools: ['hands', 'mallet', 'block', 'sticky-tape'],
  people: 1,
  cautions: [],
  check: pair('tube-home'),
  minutes: 2,
  waits: 0,
});
