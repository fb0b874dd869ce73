import { doing, firm, pair, rule, work } from '../rules.ts';

/** The frame laid on its panel. */
export const facts = work({
  tools: ['tape', 'hands'],
  people: 2,
  cautions: [],
  check: pair('frame-centred'),
  minutes: 2,
  waits: 0,
  rules: [
    firm('panel-ready-before-frame-is-laid', 'A panel under the frame can no longer be marked, cut or creased.', 'batch',
      doing('cut-notches', 'punch-holes', 'crease', 'half-cut'), doing('lay-frame')),
    rule('frame-before-panel', 'The frame is squared before it is wrapped.', 'batch', doing('close'), doing('lay-frame')),
  ],
});
