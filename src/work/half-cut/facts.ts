import { doing, pair, rule, work } from '../rules.ts';

/** The line on which the tab turns back, cut down to the outer skin. */
export const facts = work({
  tools: ['tape', 'straight-edge', 'clamp', 'sticky-tape', 'knife'],
  people: 2,
  cautions: ['sharp', 'gloves'],
  check: pair('half-cut'),
  minutes: 6,
  waits: 0,
  askedByPanel: ({ halfCuts }) => halfCuts,
  triedIn: 5,
  shownIn: 'pattern',
  rules: [rule('half-cut-last', 'A half-cut panel bends while it is handled.', 'batch', doing('crease'), doing('half-cut'))],
});
