import { doing, firm, pair, work } from '../rules.ts';

/** Holes for pins, through sleeves and posts or through a flat panel and its tubes. */
export const facts = work({
  tools: ['tape', 'pencil', 'drill'],
  // The panel's holes lead the bit.
  without: ({ on }) => (on === 'plate' ? ['tape', 'pencil'] : []),
  people: 2,
  cautions: ['eyes', 'dust', 'bit'],
  check: pair('hole-straight'),
  minutes: 12,
  waits: 0,
  sizes: ({ kit }) => ({ drill: [kit.jointPin.diameter] }),
  shareOf: ({ on }) => (on === 'plate' ? 0.5 : 1),
  captionOf: ({ on }) => (on === 'plate' ? 'panel' : 'posts'),
  rules: [firm('drilled-before-pinned', 'A pin needs its hole.', 'place', doing('drill'), doing('pin'))],
});
