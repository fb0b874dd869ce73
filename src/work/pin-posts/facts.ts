import { pair, work } from '../rules.ts';

/** Pins with wing nuts through the sleeves of one side. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('nut-tight'),
  minutes: 6,
  waits: 0,
  counts: ['joint-pin'],
});
