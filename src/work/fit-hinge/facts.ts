import { pair, work } from '../rules.ts';

/** A hinge or a lid stay clipped onto a bar. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: ['crush'],
  check: pair('panel-flush'),
  minutes: 3,
  waits: 0,
});
