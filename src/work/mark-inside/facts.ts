import { pair, work } from '../rules.ts';

/** The inside rectangle, from which all other lines are measured. */
export const facts = work({
  tools: ['tape', 'pencil', 'straight-edge'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 4,
  traced: 0.5,
  waits: 0,
  askedByPanel: () => true,
  prepared: 'sample',
  shownIn: 'pattern',
});
