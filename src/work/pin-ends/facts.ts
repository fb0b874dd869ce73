import { pair, work } from '../rules.ts';

/** The two pins at the ends of a tab. */
export const facts = work({
  tools: ['mallet'],
  people: 2,
  cautions: [],
  check: pair('pin-home'),
  minutes: 2,
  waits: 0,
  shownIn: 'creasing',
  counts: ['panel-pin'],
});
