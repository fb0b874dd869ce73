import { tubeSection } from '../../model/index.ts';
import { doubleShearResistance, wallBearingResistance } from '../formulas/pin.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { deckWeight } from '../weights.ts';
import { cornerShare } from './standings.ts';

/** One laden deck hangs on four pins; the pin of the corner that bears most takes this, N. */
export const pinLoad = (given: Case): number => given.load * cornerShare(given) + deckWeight(given) * given.limits.cornerShare.value;

/** Double shear of the joint pin, N: 2 · 0.6 A f_up / γ_M2 (EN 1993-1-8 Table 3.10), over a load factor. */
export const pinShear: Check = (given) => {
  const { model: { kit: { jointPin } }, limits } = given;
  return [judge({
    name: 'pin-shear', figure: pinLoad(given),
    limit: doubleShearResistance(jointPin.diameter, jointPin.strength, limits.pinMaterialFactor.value) / limits.pinLoadFactor.value,
    bound: 'most', unit: 'N',
    source: `2 · 0.6 A f_up / γ_M2, EN 1993-1-8 Table 3.10 (R), ${limits.pinMaterialFactor.source}; ${limits.pinLoadFactor.source}; ${limits.cornerShare.source}`,
    parts: idsOf(given.model, 'joint-pin'),
  })];
};

/** The joint pin presses on both walls of the post, N: 2 d t f, with used-stock factor and factor of safety. */
export const pinBearing: Check = (given) => {
  const { model: { kit: { jointPin, tube } }, limits } = given;
  const { factor } = rulesOf(given);
  return [judge({
    name: 'pin-bearing', figure: pinLoad(given),
    limit: (wallBearingResistance(tubeSection(given.model.kit).bearingWidth(jointPin.diameter), tube.wall, tube.bearingStrength) * tube.usedStockFactor) / factor.value,
    bound: 'most', unit: 'N',
    source: `2 d t f, pin bearing as in EN 13706 (R2); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}; ${limits.cornerShare.source}`,
    parts: idsOf(given.model, 'post', 'joint-pin'),
  })];
};
