import type { Model } from '../model/index.ts';
import { caseOf } from './case.ts';
import { childrenChecks } from './children/index.ts';
import { fitChecks } from './fit/index.ts';
import { defaultLimits, type Limits } from './limits.ts';
import { loadChecks } from './load/index.ts';
import { safeLoadOf, type SafeLoad } from './load/safe-load.ts';
import { useLoad } from './load/use-load.ts';
import { rulesOf } from './rules.ts';
import { emptyBody } from './tip/body.ts';
import { tipChecksFor } from './tip/index.ts';
import { forceToTip } from './tip/tip-force.ts';
import type { Case, Check, Finding, Report } from './types.ts';

/**
 * Checks one size variant: fit and folding, load on the decks, tipping over, children's hazards. The load findings of
 * storage are told at its safe load, or at the nominal load where none is safe; those of a seat, table or bed at the
 * test load of its use. This does not replace local codes and licensed practice.
 */
export function checkModel(model: Model, limits: Limits = defaultLimits): Report {
  const empty = caseOf(model, limits, 0);
  const safe = safeLoadOf(empty);
  const { test } = rulesOf(empty);
  const given: Case = { ...empty, load: test?.value ?? safe.load ?? limits.nominalLoad.value };

  const fit = run(fitChecks, given);
  const load = [...run(loadChecks, given), ...useLoad(given, safe.largest)];
  const tip = run(tipChecksFor(model.use), given);
  const children = run(childrenChecks, given);
  const findings = [...fit, ...load, ...tip, ...children];

  return {
    findings,
    advice: {
      safeLoadPerDeck: findings.some((finding) => finding.verdict === 'fail') ? null : promised(given, safe),
      governedBy: safe.governedBy,
      fixToWall: model.use === 'storage' && tip.some((finding) => finding.verdict !== 'pass'),
      tippingForce: Math.floor(forceToTip(emptyBody(given)) * 10) / 10,
    },
  };
}

const run = (checks: readonly Check[], given: Case): readonly Finding[] => checks.flatMap((check) => check(given));

/** Storage is promised what it bears; anything else the use that its test load stands for, and no more. */
function promised(given: Case, safe: SafeLoad): number | null {
  const { test } = rulesOf(given);
  if (!test || safe.load === null) return safe.load;
  const { testOverUse, loadStep } = given.limits;
  return Math.floor(Math.min(safe.load, test.value) / testOverUse.value / loadStep.value) * loadStep.value;
}
