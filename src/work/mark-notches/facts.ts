import { pair, work } from '../rules.ts';

/** The square corners that come out. */
export const facts = work({
  tools: ['tape', 'pencil', 'square', 'straight-edge'],
  people: 1,
  cautions: [],
  check: pair('mark'),
  minutes: 5,
  traced: 0.5,
  waits: 0,
  askedByPanel: ({ corners }) => corners,
  prepared: 'sample',
  shownIn: 'pattern',
});
