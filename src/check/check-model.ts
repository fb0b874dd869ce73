import type { Model } from '../model/index.ts';
import { fitChecks } from './fit/index.ts';
import { defaultLimits, type Limits } from './limits.ts';
import { loadChecks } from './load/index.ts';
import { safeLoadOf } from './load/safe-load.ts';
import { emptyBody } from './tip/body.ts';
import { tipChecks } from './tip/index.ts';
import { forceToTip } from './tip/tip-force.ts';
import type { Case, Check, Finding, Report } from './types.ts';

/**
 * Checks one size variant: fit and folding, load on the decks, tipping over. The load findings are told at
 * the safe load, or at the nominal load where none is safe. This does not replace local codes and licensed
 * practice.
 */
export function checkModel(model: Model, limits: Limits = defaultLimits): Report {
  const safe = safeLoadOf(model, limits);
  const given: Case = { model, limits, load: safe.load ?? limits.nominalLoad.value };

  const fit = run(fitChecks, given);
  const load = run(loadChecks, given);
  const tip = run(tipChecks, given);
  const findings = [...fit, ...load, ...tip];

  return {
    findings,
    advice: {
      safeLoadPerDeck: findings.some((finding) => finding.verdict === 'fail') ? null : safe.load,
      governedBy: safe.governedBy,
      fixToWall: tip.some((finding) => finding.verdict !== 'pass'),
      tippingForce: Math.floor(forceToTip(emptyBody(given)) * 10) / 10,
    },
  };
}

const run = (checks: readonly Check[], given: Case): readonly Finding[] => checks.flatMap((check) => check(given));
