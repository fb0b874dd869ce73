import { tubeSection } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { backrestPush } from './backrest.ts';
import { hardPush, hardPushSource } from './push.ts';

/** Bending stress in the post that bends most under the push, or under the push on the backrest, N/mm²: M / W of the drilled tube. */
export const postBending: Check = (given) => {
  const { kit: { tube, jointPin } } = given.model;
  const moments = momentsOf(given);
  if (moments.length === 0) return [];
  const { factor } = rulesOf(given);
  const modulus = tubeSection(given.model.kit).drilledModulus(jointPin.diameter);
  return [judge({
    name: 'post-bending', figure: Math.max(...moments) / modulus, limit: (tube.bendingStrength * tube.usedStockFactor) / factor.value,
    bound: 'most', unit: 'N/mm²',
    source: `moment of the frame solved in space over the drilled section (C); ${hardPushSource(given)}`
      + `${moments.length > 1 ? `, or ${given.limits.backrestShare.source}` : ''}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
    parts: idsOf(given.model, 'post'),
  })];
};

function momentsOf(given: Case): readonly number[] {
  const { braced, backrestMoment } = given.stance;
  if (braced === null) return [];
  return [braced.postMoment * hardPush(given), ...(backrestMoment === null ? [] : [backrestMoment * backrestPush(given)])];
}
