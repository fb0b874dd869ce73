import { pair, work } from '../rules.ts';

/** The far end of a frame pushed on. */
export const facts = work({
  tools: ['tape', 'pencil', 'hands', 'mallet', 'sticky-tape'],
  people: 2,
  cautions: ['gloves'],
  check: pair('frame-square'),
  minutes: 3,
  waits: 0,
});
