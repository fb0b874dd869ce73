import { coreShear, faceStress } from '../formulas/sandwich.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { deckOf, panelSag as sagOf } from './deck.ts';

/** Sag of the panel's middle, mm: 5/384 P L³ / D + 1/8 P L / S, moduli with the used-stock factor. */
export const panelSag: Check = (given) => {
  const { strip, panelLoad } = deckOf(given);
  return [judge({
    name: 'panel-sag', figure: sagOf(panelLoad, strip), limit: strip.span / given.limits.panelSagRatio.value,
    bound: 'most', unit: 'mm',
    source: `thin-face sandwich strip (C); ${given.limits.panelSagRatio.source}`, parts: idsOf(given.model, 'panel'),
  })];
};

/** Stress in the panel's skins, N/mm²: M / (b h t_f). */
export const panelSkin: Check = (given) => {
  const { strip, panelLoad } = deckOf(given);
  const { panel } = given.model.kit;
  const factor = given.limits.factorOfSafety;
  return [judge({
    name: 'panel-skin', figure: faceStress(panelLoad, strip),
    limit: (panel.skinStrength * panel.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `thin-face sandwich strip (C); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
    parts: idsOf(given.model, 'panel'),
  })];
};

/** Shear in the panel's core at the tubes, N/mm²: V / (b h). */
export const panelCore: Check = (given) => {
  const { strip, panelLoad } = deckOf(given);
  const { panel } = given.model.kit;
  const factor = given.limits.factorOfSafety;
  return [judge({
    name: 'panel-core', figure: coreShear(panelLoad, strip),
    limit: (panel.coreShearStrength * panel.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `thin-face sandwich strip (C); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
    parts: idsOf(given.model, 'panel'),
  })];
};
