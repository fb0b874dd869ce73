import { doing, firm, pair, work } from '../rules.ts';

/** A flat panel held against its tubes. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: [],
  check: pair('panel-flush'),
  minutes: 2,
  waits: 0,
  rules: () => [
    firm('plates-cut-first', 'A plate is cut and punched before it is held to its tubes.', doing(['cut-panel']), doing(['hold-panel'])),
    firm('standing-before-plates', 'Plates are pinned to a frame that stands square.', doing(['stand-up']), doing(['hold-panel'])),
  ],
});
