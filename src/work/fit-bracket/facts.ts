import { pair, work } from '../rules.ts';

/** A wall bracket on a bar. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('panel-flush'),
  minutes: 3,
  waits: 0,
});
