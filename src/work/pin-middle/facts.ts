import { doing, pair, rule, work } from '../rules.ts';

/** The pins of a tab between its ends. */
export const facts = work({
  tools: ['mallet'],
  people: 1,
  cautions: [],
  check: pair('pin-home'),
  minutes: 1,
  waits: 0,
  shownIn: 'creasing',
  counts: ['panel-pin'],
  rules: [rule('ends-before-middle', 'Pins at both ends stop the tab from creeping.', 'side', doing('pin-ends'), doing('pin-middle'))],
});
