import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { footing, topOf } from './body.ts';

/** Height over the smaller of width and depth, post to post. */
export const slenderness: Check = (given) => {
  const spans = ([0, 1] as const).map((axis) => footing(given, axis)).map(({ least, most }) => most - least);
  return [judge({
    name: 'slenderness', figure: topOf(given) / Math.min(...spans), limit: given.limits.slenderness.value,
    bound: 'most', unit: '1', source: given.limits.slenderness.source,
    parts: idsOf(given.model, 'post'), otherwise: 'caution',
  })];
};
