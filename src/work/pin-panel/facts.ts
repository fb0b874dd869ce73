import { chain, doing, firm, pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** Pins with wing nuts through a flat panel and its tubes. */
export const facts: WorkFacts = {
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('nut-tight'),
  minutes: 4,
  waits: 0,
  counts: 'joint-pin',
  rules: () => chain('drilled-before-pinned', 'A pin needs its hole.',
    [doing(['hold-panel']), (work) => doing(['drill'])(work) && work.detail.on === 'plate', doing(['pin-panel'])], firm)
    .map((link) => ({ ...link, within: 'plate' })),
};
