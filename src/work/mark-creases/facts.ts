import { pair, work } from '../rules.ts';

/** The creases and the half-cut of each flap. */
export const facts = work({
  tools: ['tape', 'pencil', 'straight-edge'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 12,
  traced: 0.5,
  waits: 0,
  askedByPanel: ({ creases }) => creases,
  prepared: 'sample',
  shownIn: 'pattern',
});
