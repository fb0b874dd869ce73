import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { footing, topOf } from './body.ts';

/** Height over depth, front post to back post. */
export const slenderness: Check = (given) => {
  const { front, back } = footing(given);
  return [judge({
    name: 'slenderness', figure: topOf(given) / (back - front), limit: given.limits.slenderness.value,
    bound: 'most', unit: '1', source: given.limits.slenderness.source,
    parts: idsOf(given.model, 'post'), otherwise: 'caution',
  })];
};
