import { pair, work } from '../rules.ts';

/** A flat panel held against its tubes. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: [],
  check: pair('panel-flush'),
  minutes: 2,
  waits: 0,
});
