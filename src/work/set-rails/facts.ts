import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** Frames without front joints set over the lying work. */
export const facts: WorkFacts = {
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('deck-level'),
  minutes: 3,
  waits: 0,
  joins: true,
};
