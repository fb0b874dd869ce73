import { both, but, doing, firm, inRun, onBench, pair, work } from '../rules.ts';

/** A rectangle cut from the stock panel. */
export const facts = work({
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
      but(both(onBench, inRun), doing(['cut-blank']))),
  ],
});
