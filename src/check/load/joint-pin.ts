import { tubeSection } from '../../model/index.ts';
import { doubleShearResistance, wallBearingResistance } from '../formulas/pin.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check, Finding } from '../types.ts';
import { deckWeight } from '../weights.ts';
import { cornerShare } from './standings.ts';

/** One laden deck hangs on four pins; the pin of the corner that bears most takes this, N. */
export const pinLoad = (given: Case): number => given.load * cornerShare(given) + deckWeight(given) * given.limits.cornerShare.value;

/** Double shear of the joint pin that bears most, N: 2 · 0.6 A f_up / γ_M2 (EN 1993-1-8 Table 3.10), over a load factor. None without pins. */
export function pinShearUnder({ model, limits }: Pick<Case, 'model' | 'limits'>, load: number): readonly Finding[] {
  const { kit: { jointPin } } = model;
  const parts = idsOf(model, 'joint-pin');
  return parts.length === 0 ? [] : [judge({
    name: 'pin-shear', figure: load,
    limit: doubleShearResistance(jointPin.diameter, jointPin.strength, limits.pinMaterialFactor.value) / limits.pinLoadFactor.value,
    bound: 'most', unit: 'N',
    source: `2 · 0.6 A f_up / γ_M2, EN 1993-1-8 Table 3.10 (R), ${limits.pinMaterialFactor.source}; ${limits.pinLoadFactor.source}; ${limits.cornerShare.source}`,
    parts,
  })];
}

/** That joint pin presses on both walls of its post, N: 2 d t f, with used-stock factor and factor of safety. None without pins. */
export function pinBearingUnder(given: Pick<Case, 'model' | 'limits'>, load: number, posts: readonly string[]): readonly Finding[] {
  const { model: { kit }, limits } = given;
  const { jointPin, tube } = kit;
  const { factor } = rulesOf(given);
  const pins = idsOf(given.model, 'joint-pin');
  return pins.length === 0 ? [] : [judge({
    name: 'pin-bearing', figure: load,
    limit: (wallBearingResistance(tubeSection(kit).bearingWidth(jointPin.diameter), tube.wall, tube.bearingStrength) * tube.usedStockFactor) / factor.value,
    bound: 'most', unit: 'N',
    source: `2 d t f, pin bearing as in EN 13706 (R2); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}; ${limits.cornerShare.source}`,
    parts: [...posts, ...pins],
  })];
}

export const pinShear: Check = (given) => pinShearUnder(given, pinLoad(given));
export const pinBearing: Check = (given) => pinBearingUnder(given, pinLoad(given), idsOf(given.model, 'post'));
