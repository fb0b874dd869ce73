import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { topOf } from './body.ts';

/** Taller than this, and it is fixed to a wall whatever the other figures say. */
export const wallHeight: Check = (given) => [judge({
  name: 'wall-height', figure: topOf(given), limit: given.limits.wallHeight.value, bound: 'most', unit: 'mm',
  source: given.limits.wallHeight.source, parts: idsOf(given.model, 'post'), otherwise: 'caution',
})];
