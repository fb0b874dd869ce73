import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** The creases and the half-cut of each flap. */
export const facts: WorkFacts = {
  tools: ['tape', 'pencil', 'straight-edge'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 12,
  waits: 0,
  askedBy: { feature: 'panel' },
  prepared: 'sample',
  shownIn: 'pattern',
};
