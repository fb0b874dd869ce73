import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** The square corners that come out. */
export const facts: WorkFacts = {
  tools: ['tape', 'pencil', 'straight-edge'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 5,
  waits: 0,
  askedBy: { feature: 'panel' },
  prepared: 'sample',
  shownIn: 'pattern',
};
