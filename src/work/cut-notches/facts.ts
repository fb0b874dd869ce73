import { chain, doing, pair, work } from '../rules.ts';

/** The square corners cut out. */
export const facts = work({
  tools: ['straight-edge', 'knife'],
  people: 1,
  cautions: ['sharp', 'gloves'],
  check: pair('notch'),
  minutes: 5,
  waits: 0,
  askedBy: { feature: 'panel' },
  shownIn: 'pattern',
  rules: () => chain('marked-before-cut', 'Every line is measured from a square blank and from the inside line; a cut cannot be taken back.',
    (['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches'] as const).map((action) => doing([action]))),
});
