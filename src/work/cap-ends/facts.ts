import { capFor, cappedEnds } from '../../model/index.ts';
import { doing, firm, pair, rule, work } from '../rules.ts';

/** Sawn ends filed wet, and those that stay open capped; all of the item's tubes at once. */
export const facts = work({
  tools: ['file', 'water', 'hands'],
  people: 1,
  cautions: ['dust', 'eyes', 'gloves'],
  check: pair('end-smooth'),
  minutes: 20,
  waits: 0,
  prepared: 'all',
  shownIn: 'lengths',
  supplies: (model) => cappedEnds(model).map(({ count, ...end }) => ({ name: 'tube-cap', shape: { form: 'fitting', fitting: capFor(model.kit, end), ...end }, count, size: [end.outside] })),
  rules: [
    firm('sawn-before-filed', 'An end is filed when it is there.', 'item', doing('cut-tubes'), doing('cap-ends')),
    rule('marked-before-capped', 'Marks are measured from the bare end.', 'item', doing('mark-posts'), doing('cap-ends')),
    rule('filed-before-pushed', 'Fibres of a rough end cut hands and scrape joints.', 'item', doing('cap-ends'), doing('push', 'push-through')),
  ],
});
