import { rulesOf } from '../rules.ts';
import type { Case, Finding } from '../types.ts';
import { loadChecks } from './index.ts';

export interface SafeLoad {
  /** N spread over each deck at the same time, or null. */
  readonly load: number | null;
  /** The same without asking whether it is worth a promise; 0 where nothing is safe. */
  readonly largest: number;
  /** The finding that fails one step further; null when the cap comes first. */
  readonly governedBy: string | null;
}

/** A seat, table or bed is tried up to this many times its test load. */
const TRIED = 2;

/**
 * The greatest load, in whole steps up to the cap, at which every load check passes; null under the least
 * load worth a promise. The checks only get worse with load, so halving the steps finds it.
 */
export function safeLoadOf(given: Case): SafeLoad {
  const { limits } = given;
  const step = limits.loadStep.value;
  const { test } = rulesOf(given);
  const cap = test ? TRIED * test.value : limits.loadCap.value;
  const failing = (steps: number): readonly Finding[] =>
    loadChecks.flatMap((check) => check({ ...given, load: steps * step })).filter((finding) => finding.verdict === 'fail');
  let passes = -1;
  let fails = Math.floor(cap / step) + 1;
  while (fails - passes > 1) {
    const half = Math.floor((passes + fails) / 2);
    if (failing(half).length === 0) passes = half;
    else fails = half;
  }
  const load = passes * step;
  const capped = fails * step > cap;
  return {
    load: load < limits.leastSafeLoad.value ? null : load,
    largest: Math.max(0, load),
    governedBy: capped ? null : worstOf(failing(fails)),
  };
}

const worstOf = (findings: readonly Finding[]): string | null =>
  findings.toSorted((a, b) => a.margin - b.margin)[0]?.name ?? null;
