import { doing, either, firm, onPosts, work } from '../rules.ts';

/** The lying item turned onto its other face. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: null,
  minutes: 2,
  waits: 0,
  rules: () => [
    firm('one-side-before-turning', 'Two pinned posts hold the decks while the work is turned.', onPosts('pin-posts', 'front'), doing(['turn-item'])),
    firm('turned-before-the-other-side', 'Posts are pushed in on the upper side.', doing(['turn-item']),
      either(doing(['set-rails']), onPosts('push-posts', 'back'))),
  ],
});
