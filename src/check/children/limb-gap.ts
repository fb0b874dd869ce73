import { judge } from '../judge.ts';
import { isNearChildren } from '../rules.ts';
import type { Check } from '../types.ts';
import { plateGaps } from './plate-gaps.ts';

/**
 * Gaps round flat panels in which an arm or a leg is caught, mm: from memory, so never more than a caution. Told by the
 * gap nearest to the band and the side of it that it is on.
 */
export const limbGap: Check = ({ model, declared, limits: { limbLeast, limbMost } }) => {
  const gaps = isNearChildren(declared) ? plateGaps(model).filter(({ narrow }) => narrow > 0) : [];
  const judged = gaps.map(({ what, narrow, parts }) => {
    const under = narrow < (limbLeast.value + limbMost.value) / 2;
    return judge({
      name: 'limb-gap', figure: narrow, limit: under ? limbLeast.value : limbMost.value, bound: under ? 'most' : 'least', unit: 'mm',
      source: `between ${limbLeast.value} and ${limbMost.value} mm a limb is caught, ${limbLeast.source}; between ${what}`, parts, otherwise: 'caution',
    });
  });
  return judged.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};
