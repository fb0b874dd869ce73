import { tippingForce } from '../formulas/tipping.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Case, Check, Finding } from '../types.ts';
import { emptyBody, topLadenBody, type Body } from './body.ts';

/** Push at the top that tips a body the way it tips most easily, N. */
export const forceToTip = (body: Body): number => tippingForce(body.weight, body.arm, body.height);

/** The push at the top that tips the empty item, N: m g b / h, in the worst of four directions. */
export const tipEmpty: Check = (given) => [tip(given, 'tip-empty', emptyBody(given))];

/** The same with only the top deck laden, the load towards the edge it tips over, N. */
export const tipLoaded: Check = (given) => [tip(given, 'tip-loaded', topLadenBody(given))];

/** Storage must not follow a pull; light furniture must not be too slender for its own weight. */
function tip(given: Case, name: 'tip-empty' | 'tip-loaded', body: Body): Finding {
  const { model, limits: { tippingForce: pull, touchShare } } = given;
  const limit = model.use === 'storage' ? pull : { ...touchShare, value: touchShare.value * emptyBody(given).weight };
  return judge({
    name, figure: forceToTip(body), limit: limit.value, bound: 'least', unit: 'N',
    source: `m g b / h about the posts, the worst of four directions (C); ${limit.source}`,
    parts: idsOf(model, 'post'), otherwise: 'caution',
  });
}
