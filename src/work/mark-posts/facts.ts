import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** Where the decks come, marked on each post. */
export const facts: WorkFacts = {
  tools: ['tape', 'pencil'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 8,
  waits: 0,
  prepared: 'sample',
  toHand: 'post',
};
