import { doing, firm, pair, work } from '../rules.ts';

/** A rectangle cut from the stock panel. */
export const facts = work({
  tools: ['tape', 'pencil', 'square', 'straight-edge', 'clamp', 'board', 'knife'],
  people: 2,
  cautions: ['sharp', 'gloves'],
  check: pair('mark'),
  minutes: 8,
  traced: 0.6,
  waits: 0,
  askedByPanel: () => true,
  prepared: 'all',
  shownIn: 'pattern',
  rules: [
    firm('blank-first', 'Every line is measured from the edges of the blank.', 'batch', doing('cut-blank'),
      doing('mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease', 'half-cut')),
  ],
});
