import { doing, pair, rule, work } from '../rules.ts';

/** The pins that hold the corners of a box. */
export const facts = work({
  tools: ['mallet'],
  people: 1,
  cautions: [],
  check: pair('pin-home'),
  minutes: 4,
  waits: 0,
  counts: ['panel-pin'],
  rules: [rule('box-before-pinned', 'The tabs of a corner lie on the next wall when that stands.', 'batch', doing('turn-up'), doing('pin-corners'))],
});
