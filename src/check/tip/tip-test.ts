import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import type { Check } from '../types.ts';
import { emptyBody } from './body.ts';

/**
 * Storage furniture is due a tip test where it is taller than 600 mm and its centre of gravity's height
 * times its mass is over 6 kg·m, both (GB/T 10357.4, R). Told by the figure nearer to letting it off.
 */
export const tipTest: Check = (given) => {
  const { tipTestHeight, tipTestMoment } = given.limits;
  const body = emptyBody(given);
  const byHeight = { figure: body.height, limit: tipTestHeight.value, unit: 'mm' };
  const byMoment = { figure: (body.centreHeight / 1000) * body.mass, limit: tipTestMoment.value, unit: 'kg·m' };
  const nearer = byHeight.limit / byHeight.figure >= byMoment.limit / byMoment.figure ? byHeight : byMoment;
  return [judge({
    name: 'tip-test', ...nearer, bound: 'most', source: tipTestMoment.source,
    parts: idsOf(given.model, 'post'), otherwise: 'caution',
  })];
};
