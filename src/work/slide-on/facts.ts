import { pair, work } from '../rules.ts';

/** What is made goes over bars that run on through its joints. */
export const facts = work({
  tools: ['hands', 'sticky-tape'],
  people: 1,
  cautions: ['crush', 'gloves'],
  check: pair('deck-level'),
  minutes: 4,
  waits: 0,
});
