import { doing, firm, pair, rule, work } from '../rules.ts';

/** A flat panel cut and punched. */
export const facts = work({
  tools: ['tape', 'pencil', 'square', 'straight-edge', 'board', 'knife', 'sticky-tape', 'punch', 'mallet'],
  without: (detail, { plates }) => (detail.on === 'plates' && plates[detail.index]?.holes.some(({ depth }) => depth !== undefined) === true ? [] : ['sticky-tape']),
  people: 2,
  cautions: ['sharp', 'eyes', 'gloves'],
  check: pair('mark'),
  minutes: 10,
  traced: 0.6,
  waits: 0,
  sizes: ({ plates }, detail) => ({ punch: detail.on === 'plates' ? plates[detail.index]?.holes.map(({ diameter }) => diameter) ?? [] : [] }),
  prepared: 'all',
  shownIn: 'plates',
  rules: [
    firm('plates-cut-first', 'A flat panel is cut and punched before it is held to its tubes.', 'item', doing('cut-panel'), doing('lay-panel')),
    rule('plates-on-the-bench', 'All bench work is done before the frames are joined.', 'item', doing('cut-panel'), doing('mark-posts')),
  ],
});
