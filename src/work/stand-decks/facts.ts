import { doing, firm, inRun, pair, rule, work } from '../rules.ts';

/** Decks and frames stood on edge as far apart as they will hang. */
export const facts = work({
  tools: ['tape', 'hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('deck-level'),
  minutes: 4,
  waits: 0,
  joins: true,
  rules: () => [
    { ...firm('decks-before-posts', 'Posts run through all decks, and a deck on its posts can no longer be wrapped.', inRun, doing(['stand-decks', 'push-posts'])), within: 'item' },
    rule('spacing-before-drilling', 'Decks are set to the marks, then drilled.', doing(['mark-posts']), doing(['stand-decks'])),
  ],
});
