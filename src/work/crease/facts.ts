import { doing, pair, rule, work } from '../rules.ts';

/** The creases of each flap pressed in. */
export const facts = work({
  tools: ['straight-edge', 'creaser'],
  people: 2,
  cautions: [],
  check: pair('crease'),
  minutes: 8,
  waits: 0,
  askedByPanel: ({ creases }) => creases,
  triedIn: 1,
  shownIn: 'pattern',
  rules: [rule('notched-before-creased', 'Flaps fold freely only when the corners are out.', 'batch', doing('cut-notches'), doing('crease'))],
});
