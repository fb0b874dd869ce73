import { pair, work } from '../rules.ts';

/** The item stood on its feet. */
export const facts = work({
  tools: ['hands', 'straight-edge', 'plumb-line', 'tape'],
  people: 2,
  cautions: ['crush'],
  check: pair('rack-upright'),
  minutes: 2,
  waits: 0,
});
