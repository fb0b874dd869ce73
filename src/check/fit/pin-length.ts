import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** The pin goes through the tab and ends in the panel under it: well under the face that is sat on, the outer skin whole. */
export const pinLength: Check = ({ model, limits: { pinRest } }) => [judge({
  name: 'pin-length', figure: model.kit.panelPin.length,
  limit: 2 * model.pattern.thickness - Math.max(pinRest.value, model.pattern.skin), bound: 'most', unit: 'mm',
  source: `geometry: two thicknesses less what stays over the point (C); ${pinRest.source}`, parts: idsOf(model, 'panel-pin'),
})];
