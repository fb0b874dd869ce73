import { liftsOff } from '../../model/index.ts';
import { pair, work } from '../rules.ts';

/** The lying item turned onto its other face; nobody lifts it by a handle that is only pushed on, now or later. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: null,
  checkOf: (_, model) => (liftsOff(model).length > 0 ? pair('handle-pushed') : null),
  minutes: 2,
  waits: 0,
});
