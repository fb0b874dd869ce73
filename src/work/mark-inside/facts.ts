import { pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** The inside rectangle, from which all other lines are measured. */
export const facts: WorkFacts = {
  tools: ['tape', 'pencil', 'straight-edge'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 4,
  waits: 0,
  askedBy: { feature: 'panel' },
  prepared: 'sample',
  shownIn: 'pattern',
};
