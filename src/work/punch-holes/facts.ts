import { pair, work } from '../rules.ts';

/** Holes for the panel pins. */
export const facts = work({
  tools: ['tape', 'punch', 'mallet'],
  people: 1,
  cautions: ['eyes'],
  check: pair('mark'),
  minutes: 8,
  waits: 0,
  askedByPanel: ({ holes }) => holes,
  shownIn: 'pattern',
});
