import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** The pin goes through the tab and ends in the panel under it: its point stays behind the outer skin. */
export const pinLength: Check = ({ model }) => [judge({
  name: 'pin-length', figure: model.kit.panelPin.length,
  limit: 2 * model.pattern.thickness - model.pattern.skin, bound: 'most', unit: 'mm',
  source: 'geometry: two thicknesses less the outer skin (C)', parts: idsOf(model, 'panel-pin'),
})];
