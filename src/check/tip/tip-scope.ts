import { judge } from '../judge.ts';
import { distance, idsOf } from '../parts.ts';
import { standInputOf } from '../stand/stand-input.ts';
import type { Case, Check } from '../types.ts';
import { emptyBody } from './body.ts';

/**
 * The published tip-over tests of storage furniture cover what is at least so tall, so heavy and so roomy, all three
 * (scope of ASTM F2057-23, R). Told by the figure that lets it off most clearly. The room counted is all between the posts.
 */
export const tipScope: Check = (given) => {
  const { storageHeight, storageMass, storageVolume } = given.limits;
  const body = emptyBody(given);
  const figures = [
    { figure: body.height, limit: storageHeight.value, unit: 'mm' },
    { figure: body.mass, limit: storageMass.value, unit: 'kg' },
    { figure: roomOf(given, body.height), limit: storageVolume.value, unit: 'dm³' },
  ];
  const [clearest = { figure: body.height, limit: storageHeight.value, unit: 'mm' }] = figures.toSorted((a, b) => a.figure / a.limit - b.figure / b.limit);
  return [judge({
    name: 'tip-scope', ...clearest, bound: 'most', source: storageHeight.source, parts: idsOf(given.model, 'post'), otherwise: 'caution',
  })];
};

/** dm³ */
function roomOf({ model, limits }: Case, height: number): number {
  const { posts } = standInputOf(model, limits);
  const [xs, ys] = [posts.map(({ x }) => x), posts.map(({ y }) => y)];
  const across = distance([Math.min(...xs), 0, 0], [Math.max(...xs), 0, 0]);
  const deep = distance([0, Math.min(...ys), 0], [0, Math.max(...ys), 0]);
  return (across * deep * height) / 1e6;
}
