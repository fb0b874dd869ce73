import { doing, firm, pair, work } from '../rules.ts';

/** The item stood on its feet. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('rack-upright'),
  minutes: 2,
  waits: 0,
  rules: () => [firm('pinned-before-standing', 'Unpinned decks slide down the posts.', doing(['pin-posts']), doing(['stand-up']))],
});
