import { doing, firm, inRun, pair } from '../rules.ts';
import type { WorkFacts } from '../types.ts';

/** A rectangle cut from the stock panel. */
export const facts: WorkFacts = {
  tools: ['tape', 'pencil', 'straight-edge', 'knife'],
  people: 2,
  cautions: ['sharp', 'gloves'],
  check: pair('mark'),
  minutes: 8,
  waits: 0,
  askedBy: { feature: 'panel' },
  prepared: 'all',
  shownIn: 'pattern',
  rules: () => [
    firm('blank-first', 'Every line is measured from the edges of the blank.', doing(['cut-blank']),
      (work) => work.standing === 'bench' && inRun(work) && !doing(['cut-blank'])(work)),
  ],
};
