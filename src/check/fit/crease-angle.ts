import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';

/** The sharpest crease of any flap against the sharpest that leaves the panel's skin whole. */
export const creaseAngle: Check = ({ model }) => [judge({
  name: 'crease-angle', figure: Math.max(...model.pattern.flaps.map((flap) => flap.creaseAngle)),
  limit: model.kit.panel.tightestCrease, bound: 'most', unit: 'rad',
  source: `tightest crease of the panel of ${model.kit.name}`, parts: idsOf(model, 'panel'),
})];
