import { pair, work } from '../rules.ts';

/** A flat panel on the bars that it will be pinned to. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('panel-flush'),
  minutes: 2,
  waits: 0,
});
