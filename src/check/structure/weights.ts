import { sideForce } from '../load/push.ts';
import type { StructureCase } from './case.ts';

/** Weight of the empty item, N. */
export const ownWeight = ({ model, limits }: Pick<StructureCase, 'model' | 'limits'>): number => model.parts.reduce((sum, { mass }) => sum + mass, 0) * limits.gravity.value;

/** Weight with every place laden at once, N. */
export const ladenWeight = (given: Pick<StructureCase, 'model' | 'limits' | 'bearings'>): number => ownWeight(given) + given.bearings.reduce((sum, { load }) => sum + load, 0);

/** The push that must break nothing, N: a person leans on it. */
export const strongPush = (given: StructureCase): number => {
  const { storagePush, furniturePush } = given.limits;
  return Math.max(sideForce(given.limits, ladenWeight(given)), given.model.use === 'storage' ? storagePush.value : furniturePush.value);
};

export const pushSources = ({ model, limits }: StructureCase): string =>
  `${(model.use === 'storage' ? limits.storagePush : limits.furniturePush).source}, or push ${limits.sideForceShare.source}, ${limits.sideForceLeast.source}`;
