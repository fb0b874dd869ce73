import { judge } from '../judge.ts';
import { isNearChildren } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { beddingGap } from './mattress.ts';
import { plateGaps, sleeveGaps, type Gap } from './plate-gaps.ts';

/**
 * No gap that a finger reaches may lie between 7 and 12 mm (EN 747-1, R). Told by the gap nearest to that band and the
 * side of the band that it is on; gaps are reckoned between nominal parts.
 * Grooves between joints count too, however shallow.
 */
export const fingerGap: Check = (given) => {
  const { fingerLeast, fingerMost } = given.limits;
  const gaps = isNearChildren(given.declared) ? gapsOf(given) : [];
  const judged = gaps.map(({ what, narrow, parts }) => {
    const under = narrow < (fingerLeast.value + fingerMost.value) / 2;
    return judge({
      name: 'finger-gap', figure: narrow, limit: under ? fingerLeast.value : fingerMost.value, bound: under ? 'most' : 'least', unit: 'mm',
      source: `no reachable gap between ${fingerLeast.value} and ${fingerMost.value} mm, ${fingerLeast.source}; between ${what}`, parts,
    });
  });
  return judged.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};

/** A gap of nothing is no gap. */
const gapsOf = (given: Case): readonly Gap[] => [...plateGaps(given.model), ...sleeveGaps(given.model), ...beddingGap(given)].filter(({ narrow }) => narrow > 0);
