import { both, chain, doing, firm, onPlate, pair, work } from '../rules.ts';

/** Pins with wing nuts through a flat panel and its tubes. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('nut-tight'),
  minutes: 4,
  waits: 0,
  counts: ['joint-pin'],
  rules: () => chain('drilled-before-pinned', 'A pin needs its hole.',
    [doing(['hold-panel']), both(doing(['drill']), onPlate), doing(['pin-panel'])], firm)
    .map((link) => ({ ...link, within: 'plate' })),
});
