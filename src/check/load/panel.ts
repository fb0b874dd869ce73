import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Limit } from '../limits.ts';
import { rulesOf, testShare, testSource } from '../rules.ts';
import type { Case, Check, Finding } from '../types.ts';
import { coreStress, deckOf, skinStress } from './deck.ts';

const round = (value: number): number => Math.round(value * 100) / 100;

const MODEL = 'crossing thin-face sandwich strips (C)';

/** Sag of the panel's middle, mm: 5/384 P L³ / D + 1/8 P L / S of either strip, moduli with the used-stock factor. */
export const panelSag: Check = (given) => {
  const { strips, sag } = deckOf(given);
  const { panelRatio } = rulesOf(given);
  return [judge({
    name: 'panel-sag', figure: sag, limit: Math.min(...strips.map(({ strip }) => strip.span)) / panelRatio.value,
    bound: 'most', unit: 'mm', source: `${MODEL}; ${panelRatio.source}`, parts: idsOf(given.model, 'panel'),
  })];
};

/** Stress in the panel's skins, N/mm²: M / (b h t_f). */
export const panelSkin: Check = (given) => [strength(given, 'panel-skin', skinStress(given), given.model.kit.panel.skinStrength, rulesOf(given).skinFactor)];

/** Shear in the panel's core at the tubes, N/mm²: V / (b h), b the flaps that hold the strip. */
export const panelCore: Check = (given) => [strength(given, 'panel-core', coreStress(given), given.model.kit.panel.coreShearStrength, rulesOf(given).factor)];

function strength(given: Case, name: 'panel-skin' | 'panel-core', figure: number, full: number, factor: Limit): Finding {
  const rules = rulesOf(given);
  return judge({
    name, figure, limit: (full * given.model.kit.panel.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `${MODEL}, on one half or in one place; ${rules.pad.source}; ${given.limits.spread.source}${testSource(rules, testShare(given))}; strength of the kit × used-stock factor / ${round(factor.value)}, ${factor.source}`, parts: idsOf(given.model, 'panel'),
  });
}
