import { doing, either, firm, joining, pair, rule, work } from '../rules.ts';

/** Joints pushed onto short tubes, long tubes into joints. */
export const facts = work({
  tools: ['tape', 'pencil', 'hands', 'mallet', 'sticky-tape'],
  people: 1,
  cautions: ['gloves'],
  check: pair('tube-home'),
  minutes: 3,
  waits: 0,
  captionOf: (detail) => (detail.on === 'tubes' ? detail.tubes : 'into'),
  rules: [
    firm('tubes-cut-first', 'All frames need their tubes.', 'item', doing('cut-tubes'), either(joining, doing('mark-posts'))),
    rule('panel-before-frame', 'The frame lies on the bench that the panel is marked on.', 'batch', doing('half-cut'), doing('push')),
  ],
});
