import { tippingAngle } from '../formulas/tipping.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { topLadenBody } from './body.ts';

/** The slope on which the item falls by itself, top deck alone laden, rad: atan(b / z), in the worst of four directions. */
export const tipAngle: Check = (given) => {
  const body = topLadenBody(given);
  return [judge({
    name: 'tip-angle', figure: tippingAngle(body.arm, body.centreHeight), limit: given.limits.tippingAngle.value,
    bound: 'least', unit: 'rad', source: `atan of arm over height of the centre of gravity (C); ${given.limits.tippingAngle.source}`,
    parts: idsOf(given.model, 'post'), otherwise: 'caution',
  })];
};
