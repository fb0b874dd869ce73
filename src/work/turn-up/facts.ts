import { doing, firm, pair, work } from '../rules.ts';

/** Walls of a box turned up by their creases, and the tabs at their ends turned round the corners. */
export const facts = work({
  tools: ['hands'],
  people: 1,
  cautions: [],
  check: pair('walls-upright'),
  minutes: 3,
  waits: 0,
  rules: [
    firm('ready-before-turned-up', 'A wall that stands can no longer be marked, cut or creased.', 'batch',
      doing('cut-notches', 'punch-holes', 'crease', 'half-cut'), doing('turn-up')),
  ],
});
