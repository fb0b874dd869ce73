import type { Limits } from '../limits.ts';
import { rulesOf } from '../rules.ts';
import type { Case } from '../types.ts';
import { loadedWeight } from '../weights.ts';

/** The push on the top, N: a share of the whole weight and a little more. */
export const sideForce = ({ sideForceShare, sideForceLeast }: Limits, weight: number): number => sideForceShare.value * weight + sideForceLeast.value;

export const pushSource = ({ limits }: Pick<Case, 'limits'>): string => `push ${limits.sideForceShare.source}, ${limits.sideForceLeast.source}`;

/** The push that must break nothing, N: a person leans on it. */
export const hardPush = (given: Case): number => Math.max(sideForce(given.limits, loadedWeight(given)), rulesOf(given).push.value);

export const hardPushSource = (given: Case): string => `${rulesOf(given).push.source}, or ${pushSource(given)}`;
