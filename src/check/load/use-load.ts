import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Finding } from '../types.ts';

/** The largest load at which every load check passes, N, against the test load of the item's use. None for storage. */
export function useLoad(given: Case, largest: number): readonly Finding[] {
  const { test } = rulesOf(given);
  if (!test) return [];
  return [judge({
    name: 'use-load', figure: largest, limit: test.value, bound: 'least', unit: 'N', source: test.source, parts: idsOf(given.model, 'panel'),
  })];
}
