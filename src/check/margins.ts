import type { FindingName } from './names.ts';
import type { Finding, Report } from './types.ts';

/** What the kit's own measures set just so, whatever the size; and the load of the use, which is the test's own. */
const JUST_SO: readonly FindingName[] = ['use-load', 'crease-angle', 'pin-length', 'hole-depth', 'stock-tube', 'stock-panel', 'stock-plate', 'stock-cable'];

/** A margin under this is told apart: what is built is never quite what was reckoned. Our default. */
export const SCANT = 1.05;

/**
 * All that failed, the worst first; then what is measured and passed, the tightest first: no counts, which are met or not,
 * and nothing that the kit sets just so.
 */
export function tightest({ findings }: Pick<Report, 'findings'>): readonly Finding[] {
  const passed = findings.filter(({ name, unit, verdict }) => verdict === 'pass' && unit !== '1' && !JUST_SO.includes(name));
  return [...findings.filter(({ verdict }) => verdict === 'fail').toSorted(byMargin), ...passed.toSorted(byMargin)];
}

const byMargin = (a: Finding, b: Finding): number => a.margin - b.margin;

/** Those of them that fail or have less than a twentieth to spare. */
export const scant = (report: Pick<Report, 'findings'>): readonly Finding[] => tightest(report).filter(({ margin }) => margin < SCANT);
