import { hasCords } from '../../model/index.ts';
import { pair, work } from '../rules.ts';

/** The item stood on its feet. What is tied can be drawn plumb; what pins alone hold was measured square before it was drilled, and is only looked at for feet that do not stand. */
export const facts = work({
  tools: ['hands', 'straight-edge', 'plumb-line', 'tape'],
  without: (_, model) => (hasCords(model) ? [] : ['straight-edge', 'plumb-line', 'tape']),
  people: 2,
  cautions: ['crush'],
  check: pair('rack-upright'),
  checkOf: (_, model) => pair(hasCords(model) ? 'rack-upright' : 'feet-stand'),
  minutes: 2,
  waits: 0,
});
