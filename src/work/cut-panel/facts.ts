import { doing, pair, rule, work } from '../rules.ts';

/** A flat panel cut and punched. */
export const facts = work({
  tools: ['tape', 'pencil', 'straight-edge', 'knife', 'punch', 'mallet'],
  people: 2,
  cautions: ['sharp', 'eyes', 'gloves'],
  check: pair('mark'),
  minutes: 10,
  waits: 0,
  prepared: 'all',
  shownIn: 'plates',
  rules: () => [rule('plates-on-the-bench', 'All bench work is done before the frames are joined.', doing(['cut-panel']), doing(['mark-posts']))],
});
