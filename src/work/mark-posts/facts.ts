import { doing, firm, pair, work } from '../rules.ts';

/** Where the decks come, marked on each post. */
export const facts = work({
  tools: ['tape', 'pencil'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 8,
  waits: 0,
  prepared: 'sample',
  toHand: 'post',
  rules: [firm('marked-before-posts', 'Work is set to the marks, then drilled.', 'item', doing('mark-posts'), doing('push-through', 'slide-on'))],
});
