import { chain, firm, onPosts, pair, work } from '../rules.ts';

/** Pins with wing nuts through the sleeves of one side. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('nut-tight'),
  minutes: 6,
  waits: 0,
  counts: ['joint-pin'],
  rules: () => (['front', 'back'] as const).flatMap((side) => chain('drilled-before-pinned', 'A pin needs its hole.',
    [onPosts('push-posts', side), onPosts('drill', side), onPosts('pin-posts', side)], firm)),
});
