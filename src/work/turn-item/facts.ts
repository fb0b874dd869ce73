import { work } from '../rules.ts';

/** The lying item turned onto its other face. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: null,
  minutes: 2,
  waits: 0,
});
