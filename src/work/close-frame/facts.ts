import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** The far end of a frame pushed on. */
export const facts: WorkFacts = {
  tools: ['hands', 'mallet'],
  people: 2,
  cautions: ['gloves'],
  check: pair('frame-square'),
  minutes: 3,
  waits: 0,
};
