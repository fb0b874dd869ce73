import { pair, work } from '../rules.ts';

/** Frames without front joints set over the lying work. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('deck-level'),
  minutes: 3,
  waits: 0,
  joins: true,
});
