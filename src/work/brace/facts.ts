import { but, doing, firm, pair, rule, work } from '../rules.ts';

/** Crossed cables hung on the studs of one face. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: [],
  check: pair('cable-tight'),
  minutes: 6,
  waits: 0,
  seenFrom: 'outside',
  counts: ['cable'],
  rules: () => [
    firm('standing-before-cables', 'Cables are drawn tight on a frame that stands square.', doing(['stand-up']), doing(['brace'])),
    rule('cables-last', 'Cables are drawn tight on the upright, finished frame.', doing(['stand-up', 'hold-panel', 'pin-panel']), doing(['brace'])),
    rule('back-before-ends', 'The back is the longest face and squares the frame first.', doing(['brace'], 'back'), but(doing(['brace']), doing(['brace'], 'back'))),
    rule('back-before-ends', 'Opposite faces follow each other.', doing(['brace'], 'left'), doing(['brace'], 'right')),
  ],
});
