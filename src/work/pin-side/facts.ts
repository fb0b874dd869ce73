import { pair, work } from '../rules.ts';

/** The pins of a tab, those at its ends first: they stop it from creeping. */
export const facts = work({
  tools: ['mallet'],
  people: 2,
  cautions: [],
  check: pair('pin-home'),
  minutes: 3,
  waits: 0,
  shownIn: 'creasing',
  counts: ['panel-pin'],
});
