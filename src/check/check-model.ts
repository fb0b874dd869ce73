import { isToldByPoints, placed, type Model } from '../model/index.ts';
import type { Declared } from '../read/index.ts';
import { caseOf } from './case.ts';
import { childrenChecks } from './children/index.ts';
import { fitChecks } from './fit/index.ts';
import { defaultLimits, type Limits } from './limits.ts';
import { fixedLoadChecks, loadChecks } from './load/index.ts';
import { isJointTested } from './load/joint-test.ts';
import { safeLoadOf, type SafeLoad } from './load/safe-load.ts';
import { useLoad } from './load/use-load.ts';
import { notAppliedOf } from './needs.ts';
import { withLocal } from './local-limits.ts';
import { idsOf, partsOf } from './parts.ts';
import { rulesOf } from './rules.ts';
import { checkStructure } from './structure/index.ts';
import { emptyBody } from './tip/body.ts';
import { boardWalls, wallFor } from './tip/board-wall.ts';
import { tipChecksFor } from './tip/index.ts';
import { forceToTip } from './tip/tip-force.ts';
import type { Advice, Case, Check, Finding, PlaceLoad, Report } from './types.ts';

/**
 * Checks one size variant, for the use and the people that its file declares: fit and folding, load on the decks, tipping
 * over, hazards for children. The load findings of storage are told at its safe load, or at the nominal load where none is
 * safe; those of a seat, table or bed at the test load of its use, or as much of it as leaves the reserve. An item of points and bars is judged place by
 * place. Values that the kit sets by local rules stand in place of the table's. This does not replace local codes and licensed practice.
 */
export function checkModel(model: Model, declared: Declared, table: Limits = defaultLimits): Report {
  const limits = withLocal(table, model.kit);
  if (isToldByPoints(model)) return checkStructure(model, declared, limits);
  const empty = caseOf(model, declared, limits, 0);
  const safe = safeLoadOf(empty);
  const given: Case = { ...empty, load: toldLoad(empty, safe) };
  const tip = run(tipChecksFor(model.use), given);
  const wall = wallFor(declared, model.use === 'storage' && tip.some((finding) => finding.verdict !== 'pass'));
  const findings = [
    ...run(fitChecks, given), ...run(loadChecks, given), ...run(fixedLoadChecks, given), ...useLoad(given, safe.largest),
    ...boardWalls(wall, limits, idsOf(model, 'post')), ...tip, ...run(childrenChecks, given),
  ];
  return { findings, notApplied: notAppliedOf(given, findings), advice: adviceOf(given, safe, findings, wall) };
}

/** The load at which the findings are told, N: as much of the test load as leaves the reserve, all of it where that is not borne at all. */
function toldLoad(given: Case, { load, largest }: SafeLoad): number {
  const { test } = rulesOf(given);
  if (test === null) return load ?? given.limits.nominalLoad.value;
  return load === null || largest < test.value ? test.value : Math.min(load, test.value);
}

const run = (checks: readonly Check[], given: Case): readonly Finding[] => checks.flatMap((check) => check(given));

function adviceOf(given: Case, safe: SafeLoad, findings: readonly Finding[], wall: Advice['wall']): Advice {
  const { declared } = given;
  const load = findings.some((finding) => finding.verdict === 'fail') || wall === 'board' ? null : promised(given, safe);
  return {
    safeLoadPerDeck: load,
    loads: load === null ? [] : decksOf(given.model).map((deck) => ({ ...deck, load })),
    governedBy: safe.governedBy,
    wall,
    tippingForce: Math.floor(forceToTip(emptyBody(given)) * 10) / 10,
    untestedJoint: !isJointTested(given),
    people: declared.people,
    mattress: declared.mattress?.thickness ?? null,
  };
}

/** Every deck with its place, from the highest down; they are alike, and bear alike. */
const decksOf = (model: Model): readonly Omit<PlaceLoad, 'load'>[] => partsOf(model, 'panel').map((panel) => ({
  place: model.places.find(({ panels }) => panels.includes(panel.id))?.name ?? panel.id, panel: panel.id, height: placed(panel.pose, [0, 0, 0])[2],
})).toSorted((a, b) => b.height - a.height);

/** Storage is promised what it bears; anything else the use that its test load stands for, and no more. Less where the joints are untested. */
function promised(given: Case, safe: SafeLoad): number | null {
  const { limits: { untestedJoint, loadStep, leastSafeLoad } } = given;
  const { test, impact } = rulesOf(given);
  if (safe.load === null) return null;
  const share = isJointTested(given) ? 1 : untestedJoint.value;
  const load = Math.floor((share * Math.min(safe.load, test?.value ?? safe.load)) / impact.value / loadStep.value) * loadStep.value;
  return load < leastSafeLoad.value ? null : load;
}
