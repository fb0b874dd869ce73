import { bendingSag, shearSag } from '../formulas/sandwich.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { bearersOf } from './bearers.ts';
import { deckOf } from './deck.ts';
import { tubeSag } from './tube-deflection.ts';

/**
 * Sag after years of the tube or the panel, whichever is nearer to its limit, mm: storage stands laden. The moduli fall
 * with t^−n: slowly in skins and tubes, faster in a foam core.
 */
export const longTermSag: Check = (given) => {
  const { model, limits: { longTermHours, creepSkin, creepCore, longTermRatio, longTermPanelRatio } } = given;
  if (model.use !== 'storage') return [];
  const [skin, core] = [longTermHours.value ** creepSkin.value, longTermHours.value ** creepCore.value];
  const { bearers, strips } = deckOf(given);
  const tube = tubeSag(given);
  const told = [
    { figure: tube.figure * skin, limit: tube.span / longTermRatio.value, parts: bearersOf(model, bearers) },
    ...strips.map(({ strip, load }) => ({
      figure: bendingSag(load, strip) * skin + shearSag(load, strip) * core, limit: strip.span / longTermPanelRatio.value, parts: idsOf(model, 'panel'),
    })),
  ].map((each) => judge({
    name: 'long-term-sag', ...each, bound: 'most', unit: 'mm',
    source: `${creepSkin.source}; core ${creepCore.source}; ${longTermHours.source}; ${longTermRatio.source}; ${longTermPanelRatio.source}`,
  }));
  return told.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};
