import { flatHoles, notchHoles } from '../../model/index.ts';
import { pair, work } from '../rules.ts';

/** Holes that are punched in the flat panel: for the panel pins, where they are not punched after wrapping, and in the corners of the notches. */
export const facts = work({
  tools: ['tape', 'pencil', 'straight-edge', 'board', 'punch', 'mallet'],
  people: 1,
  cautions: ['eyes'],
  check: pair('mark'),
  minutes: 8,
  shareOf: (_, { kit }) => (kit.practice.punching === 'flat' ? 1 : 0.5),
  traced: 0.7,
  waits: 0,
  sizes: ({ patterns }, detail) => {
    const own = detail.on === 'pattern' ? patterns[detail.index] : undefined;
    return { punch: own === undefined ? [] : [...flatHoles(own), ...notchHoles(own)].map(({ diameter }) => diameter) };
  },
  askedByPanel: ({ holes }) => holes,
  shownIn: 'pattern',
});
