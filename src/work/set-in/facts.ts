import { doing, pair, rule, work } from '../rules.ts';

/** A frame put over a box that will hang in it. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: [],
  check: pair('frame-square'),
  minutes: 2,
  waits: 0,
  rules: [rule('box-before-frame', 'A box is folded and pinned on the bench, with room all round it.', 'item', doing('pin-corners'), doing('set-in'))],
});
