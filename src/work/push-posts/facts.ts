import { firm, joiningBatch, joiningItem, pair, work } from '../rules.ts';

/** Two posts pushed through the joints of one side. */
export const facts = work({
  tools: ['hands', 'sticky-tape'],
  people: 2,
  cautions: ['crush', 'gloves'],
  check: pair('deck-level'),
  minutes: 6,
  waits: 0,
  counts: ['post', 'bar'],
  rules: [firm('batches-before-the-item', 'What posts run through can no longer be wrapped.', 'item', joiningBatch, joiningItem)],
});
