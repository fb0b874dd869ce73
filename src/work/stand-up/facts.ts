import { doing, firm, pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** The item stood on its feet. */
export const facts: WorkFacts = {
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('rack-upright'),
  minutes: 2,
  waits: 0,
  rules: () => [firm('pinned-before-standing', 'Unpinned decks slide down the posts.', doing(['pin-posts']), doing(['stand-up']))],
};
