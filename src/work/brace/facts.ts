import { but, doing, joiningItem, on, pair, rule, work } from '../rules.ts';

/** Crossed cables hung on the studs of one face. */
export const facts = work({
  tools: ['tape', 'pencil', 'sticky-tape', 'knife', 'bottle', 'hands'],
  people: 2,
  sways: true,
  cautions: ['sharp', 'gloves'],
  check: pair('cable-tight'),
  minutes: 12,
  waits: 0,
  counts: ['cable'],
  rules: [
    rule('cables-last', 'Cables are drawn tight on the upright, finished frame.', 'item', but(joiningItem, doing('hang')), doing('hang')),
    rule('back-before-ends', 'The back is the longest face and squares the frame first.', 'item', on(doing('hang'), 'back'), on(doing('hang'), 'left', 'right', 'front')),
    rule('back-before-ends', 'Opposite faces follow each other.', 'item', on(doing('hang'), 'left'), on(doing('hang'), 'right')),
  ],
});
