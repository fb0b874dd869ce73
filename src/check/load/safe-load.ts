import type { Model } from '../../model/index.ts';
import type { Limits } from '../limits.ts';
import type { Finding } from '../types.ts';
import { loadChecks } from './index.ts';

export interface SafeLoad {
  /** N spread over each deck at the same time, or null. */
  readonly load: number | null;
  /** The finding that fails one step further; null when the cap comes first. */
  readonly governedBy: string | null;
}

/**
 * The greatest load, in whole steps up to the cap, at which every load check passes; null under the least
 * load worth a promise. The checks only get worse with load, so halving the steps finds it.
 */
export function safeLoadOf(model: Model, limits: Limits): SafeLoad {
  const step = limits.loadStep.value;
  const failing = (steps: number): readonly Finding[] =>
    loadChecks.flatMap((check) => check({ model, limits, load: steps * step })).filter((finding) => finding.verdict === 'fail');
  let passes = -1;
  let fails = Math.floor(limits.loadCap.value / step) + 1;
  while (fails - passes > 1) {
    const half = Math.floor((passes + fails) / 2);
    if (failing(half).length === 0) passes = half;
    else fails = half;
  }
  const load = passes * step;
  const capped = fails * step > limits.loadCap.value;
  return {
    load: load < limits.leastSafeLoad.value ? null : load,
    governedBy: capped ? null : worstOf(failing(fails)),
  };
}

const worstOf = (findings: readonly Finding[]): string | null =>
  findings.toSorted((a, b) => a.margin - b.margin)[0]?.name ?? null;
