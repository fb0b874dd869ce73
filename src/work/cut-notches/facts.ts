import { doing, pair, rule, work } from '../rules.ts';

/** The square corners cut out. */
export const facts = work({
  tools: ['straight-edge', 'board', 'knife'],
  people: 1,
  cautions: ['sharp', 'gloves'],
  check: pair('notch'),
  // The corners of a tray have no round hole: they are sharp.
  checkOf: (detail, { patterns }) => pair(detail.on === 'pattern' && patterns[detail.index]?.form === 'tray' ? 'notch-sharp' : 'notch'),
  minutes: 5,
  waits: 0,
  askedByPanel: ({ corners }) => corners,
  shownIn: 'pattern',
  rules: [
    rule('marked-before-cut', 'Every line is measured from a square blank and from the inside line; a cut cannot be taken back.', 'batch',
      doing('mark-inside', 'mark-creases', 'mark-notches', 'punch-holes'), doing('cut-notches')),
  ],
});
