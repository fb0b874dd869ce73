import type { FindingName } from '../names.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check, Finding } from '../types.ts';
import { loadChecks } from './index.ts';
import { pinSkin } from './pin-skin.ts';

export interface SafeLoad {
  /** N spread over each deck at the same time, that leaves every check its reserve, or null. */
  readonly load: number | null;
  /** The greatest that passes every check, without reserve and without asking whether it is worth a promise; 0 where nothing is safe. */
  readonly largest: number;
  /** The finding that fails one step further than the load with its reserve, or runs out of reserve there; null when the cap comes first. */
  readonly governedBy: string | null;
}

/** A seat, table or bed is tried up to this many times its test load. */
const TRIED = 2;

/** What is never more than a caution lowers no load. */
const firmChecks: readonly Check[] = loadChecks.filter((check) => check !== pinSkin);

/**
 * The greatest load, in whole steps up to the cap, at which every load check passes, and that which leaves a reserve
 * besides; null under the least load worth a promise. The checks only get worse with load, so halving the steps finds
 * both.
 */
export function safeLoadOf(given: Case): SafeLoad {
  const { limits } = given;
  const step = limits.loadStep.value;
  const { test } = rulesOf(given);
  const cap = test ? TRIED * test.value : limits.loadCap.value;
  const most = Math.floor(cap / step);
  const told = (steps: number): readonly Finding[] => firmChecks.flatMap((check) => check({ ...given, load: steps * step }));
  const failing = (steps: number): readonly Finding[] => told(steps).filter(({ verdict }) => verdict === 'fail');
  const scarce = scarceAt(told, limits.loadReserve.value);
  const [largest, reserved] = [lastPassing(failing, most), lastPassing(scarce, most)];
  const load = reserved * step;
  return {
    load: load < limits.leastSafeLoad.value ? null : load,
    largest: Math.max(0, largest * step),
    governedBy: reserved >= most ? null : worstOf(scarce(reserved + 1)),
  };
}

/**
 * What fails at a load (in steps), or has less than the reserve in hand. A count has none, and what lacks it without any
 * load does not get it by a smaller one.
 */
export function scarceAt(told: (steps: number) => readonly Finding[], reserve: number): (steps: number) => readonly Finding[] {
  const isScarce = ({ unit, margin }: Finding): boolean => unit !== '1' && margin < reserve;
  const always = new Set<FindingName>(told(0).filter(isScarce).map(({ name }) => name));
  return (steps) => told(steps).filter((finding) => finding.verdict === 'fail' || (finding.verdict === 'pass' && isScarce(finding) && !always.has(finding.name)));
}

/** The last of the steps up to `most` at which nothing is told; −1 where there is none. */
export function lastPassing(told: (steps: number) => readonly Finding[], most: number): number {
  let passes = -1;
  let fails = most + 1;
  while (fails - passes > 1) {
    const half = Math.floor((passes + fails) / 2);
    if (told(half).length === 0) passes = half;
    else fails = half;
  }
  return passes;
}

const worstOf = (findings: readonly Finding[]): string | null =>
  findings.toSorted((a, b) => a.margin - b.margin)[0]?.name ?? null;
