import { doing, pair, rule, work } from '../rules.ts';

/** A flap folded round its tube, its tab turned back. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('tab-flat'),
  minutes: 3,
  waits: 0,
  shownIn: 'creasing',
  springsBackUntil: 'pin-side',
  rules: [rule('short-before-long', 'Short sides first; opposite sides before neighbours keep the frame centred.', 'batch', doing('wrap'), doing('wrap'))],
});
