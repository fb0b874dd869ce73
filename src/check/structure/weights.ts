import { sideForce } from '../load/push.ts';
import type { Model } from '../../model/index.ts';
import type { Limits } from '../limits.ts';
import type { Bearing } from './bearings.ts';

/** What weights are told from. */
interface Weighed {
  readonly model: Model;
  readonly limits: Limits;
  readonly bearings: readonly Bearing[];
}

/** Weight of the empty item, N. */
export const ownWeight = ({ model, limits }: Pick<Weighed, 'model' | 'limits'>): number => model.parts.reduce((sum, { mass }) => sum + mass, 0) * limits.gravity.value;

/** Weight with every place laden at once, N. */
export const ladenWeight = (given: Pick<Weighed, 'model' | 'limits' | 'bearings'>): number => ownWeight(given) + given.bearings.reduce((sum, { load }) => sum + load, 0);

/** The push that must break nothing, N: a person leans on it. */
export const strongPush = (given: Weighed): number => {
  const { storagePush, furniturePush } = given.limits;
  return Math.max(sideForce(given.limits, ladenWeight(given)), given.model.use === 'storage' ? storagePush.value : furniturePush.value);
};

export const pushSources = ({ model, limits }: Pick<Weighed, 'model' | 'limits'>): string =>
  `${(model.use === 'storage' ? limits.storagePush : limits.furniturePush).source}, or push ${limits.sideForceShare.source}, ${limits.sideForceLeast.source}`;
