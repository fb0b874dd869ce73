import { doing, either, firm, inRun, pair, rule, work } from '../rules.ts';

/** Joints pushed onto short tubes, long tubes into joints. */
export const facts = work({
  tools: ['hands', 'mallet'],
  people: 1,
  cautions: ['gloves'],
  check: pair('tube-home'),
  minutes: 3,
  waits: 0,
  counts: ['long-tube'],
  captionOf: (detail) => (detail.on === 'tubes' ? detail.tubes : 'long'),
  rules: () => [
    { ...firm('tubes-cut-first', 'All frames need their tubes.', doing(['cut-tubes']), either(inRun, doing(['mark-posts']))), within: 'item' },
    rule('panel-before-frame', 'The frame lies on the bench that the panel is marked on.', doing(['half-cut']), doing(['push-tubes'])),
  ],
});
