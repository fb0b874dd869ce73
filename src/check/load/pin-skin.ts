import type { Side } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Check } from '../types.ts';
import { edgePulls } from './deck.ts';

/** The wrap round a tube is a sling: the floor takes one half of the pull on the tube, the tab and its pins the other (statics). */
const TAB_SHARE = 0.5;

/**
 * Pressure of a tab's pins on one skin, N/mm², from the pull of the sagging panel: share / (n d t), d t one skin under one
 * pin. The side whose pins press hardest counts. A caution: holes worn oval let the pull go, and the panel still bears by
 * bending, which alone is counted on elsewhere. A pin pulled straight out is held by its barbs, which nobody measured.
 */
export const pinSkin: Check = (given) => {
  const { kit: { panel, panelPin }, pattern } = given.model;
  const { factor } = rulesOf(given);
  const [across, along] = edgePulls(given);
  const sides: readonly (readonly [Side, number])[] = [['front', across], ['back', across], ['left', along], ['right', along]];
  const pressures = sides.map(([side, pull]) => {
    const pins = pattern.flaps.filter((flap) => flap.side === side).reduce((sum, flap) => sum + flap.pins.length, 0);
    return (TAB_SHARE * pull) / Math.max(1, pins) / (panelPin.diameter * panel.skin);
  });
  return [judge({
    name: 'pin-skin', figure: Math.max(...pressures), limit: (panel.skinStrength * panel.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `half of the panel’s pull on its tube, over the tab’s pins and one skin (C); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
    parts: idsOf(given.model, 'panel-pin'), otherwise: 'caution',
  })];
};
