import { pair, work } from '../rules.ts';

/** Pins with wing nuts through a flat panel and its tubes. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('nut-tight'),
  minutes: 4,
  waits: 0,
  counts: ['joint-pin'],
});
