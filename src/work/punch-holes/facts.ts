import { pair, work } from '../rules.ts';

/** Holes for the panel pins. */
export const facts = work({
  tools: ['tape', 'punch', 'mallet'],
  people: 1,
  cautions: ['eyes'],
  check: pair('mark'),
  minutes: 8,
  waits: 0,
  sizes: ({ patterns, pattern: { notchRadius } }, detail) => {
    const own = detail.on === 'pattern' ? patterns[detail.index] : undefined;
    return { punch: own === undefined ? [] : [...own.holes.map(({ diameter }) => diameter), ...(own.form === 'wrapped' ? [2 * notchRadius] : [])] };
  },
  askedByPanel: ({ holes }) => holes,
  shownIn: 'pattern',
});
