import { tippingForce } from '../formulas/tipping.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Case, Check, Finding } from '../types.ts';
import { emptyBody, topLadenBody, type Body } from './body.ts';

/** Push at the top that tips a body to the front, N. */
export const forceToTip = (body: Body): number => tippingForce(body.weight, body.arm, body.height);

/** The push at the top that tips the empty item to the front, N: m g b / h. */
export const tipEmpty: Check = (given) => [tip(given, 'tip-empty', emptyBody(given))];

/** The same with only the top deck laden, the load towards the front, N. */
export const tipLoaded: Check = (given) => [tip(given, 'tip-loaded', topLadenBody(given))];

function tip({ model, limits }: Case, name: 'tip-empty' | 'tip-loaded', body: Body): Finding {
  const limit = model.use === 'storage' ? limits.tippingForce : limits.touchForce;
  return judge({
    name, figure: forceToTip(body), limit: limit.value, bound: 'least', unit: 'N',
    source: `m g b / h about the front posts (C); ${limit.source}`,
    parts: idsOf(model, 'post'), otherwise: 'caution',
  });
}
