import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** Two posts pushed through the joints of one side. */
export const facts: WorkFacts = {
  tools: ['hands'],
  people: 2,
  cautions: ['crush', 'gloves'],
  check: pair('deck-level'),
  minutes: 6,
  waits: 0,
  counts: 'post',
};
