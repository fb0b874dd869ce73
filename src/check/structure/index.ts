import type { Model } from '../../model/index.ts';
import type { Declared } from '../../read/index.ts';
import type { Limits } from '../limits.ts';
import { holeDepths } from '../fit/hole-depth.ts';
import { isJointTested } from '../load/joint-test.ts';
import { findingNames } from '../names.ts';
import { boardWalls, wallFor } from '../tip/board-wall.ts';
import { rulesOf } from '../rules.ts';
import type { Advice, Finding, Report } from '../types.ts';
import { backBars, backPanels } from './backrest.ts';
import { adultEdges, barBending, barDeflection, edgeSags } from './bars.ts';
import { lastPassing, scarceAt } from '../load/safe-load.ts';
import { structureCase, withShare, type StructureCase, type StructureCheck } from './case.ts';
import { castorBrakes, castorLoads, wallHolds } from './fittings.ts';
import { creases, pinGaps, pinLengths, stockPatterns, tabEdges, tabGaps, tabLengths } from './fit.ts';
import { lidGaps, lidHolds, lidLifts, lidVents } from './lid.ts';
import { silentOf } from './needs.ts';
import { panelCores, panelSags, panelSkins, pinSkins, yearsOfSag } from './panels.ts';
import { beds, codes, fingerGaps, limbGaps, marks, openEnds, snags } from './reach.ts';
import { barReach, ringsApart } from './sleeves.ts';
import { bracings, buckling, cablePulls, frameBending, isScreen, jointTests, pinBearings, pinShears, sways } from './standing.ts';
import { stockBars, stockCables } from './stock.ts';
import { backTips, edgeTips, pushToTipEmpty, slenders, storageTips, tipAngles, tipEmpties, tipLadens } from './tip.ts';

const fitChecks: readonly StructureCheck[] = [stockPatterns, stockBars, stockCables, creases, tabLengths, tabEdges, tabGaps, pinLengths, holeDepths, pinGaps, ringsApart, barReach];

const loadChecks: readonly StructureCheck[] = [
  barBending, barDeflection, panelSags, panelSkins, panelCores, pinSkins, yearsOfSag, buckling, frameBending, pinShears, pinBearings, backBars, backPanels,
  bracings, sways, cablePulls, edgeSags, adultEdges, jointTests, castorLoads, wallHolds,
];

const tipChecks: readonly StructureCheck[] = [slenders, tipEmpties, tipLadens, tipAngles, storageTips, edgeTips, backTips];

const reachChecks: readonly StructureCheck[] = [castorBrakes, lidHolds, lidGaps, lidVents, lidLifts, fingerGaps, limbGaps, snags, openEnds, marks, codes, beds];

/** Checks one size of an item of points, bars and panels: each place by the load of its use, the frame as it is. */
export function checkStructure(model: Model, declared: Declared, limits: Limits): Report {
  const given = reserved(structureCase(model, declared, limits));
  const run = (checks: readonly StructureCheck[]): readonly Finding[] => checks.flatMap((check) => check(given));
  const loads = run(loadChecks);
  const tips = run(tipChecks);
  const order = (name: string): number => findingNames.findIndex((each) => each === name);
  const wall = wallFor(declared, model.use === 'storage' && !isScreen(given) && tips.some(({ verdict }) => verdict !== 'pass'));
  const findings = [...run(fitChecks), ...loads, ...boardWalls(wall, limits, model.parts.filter(({ kind }) => kind === 'bar').map(({ id }) => id)), ...tips, ...run(reachChecks)].toSorted((a, b) => order(a.name) - order(b.name));
  return { findings, notApplied: silentOf(given, findings), advice: adviceOf(given, findings, loads, wall) };
}

/** What is never more than a caution lowers no load, and the makers' test asks what the load asks. */
const firmChecks: readonly StructureCheck[] = loadChecks.filter((check) => check !== pinSkins && check !== jointTests);

/** Loads are lowered in shares of so many parts, at most to half. */
const SHARES = 200;
const LEAST_SHARE = 0.5;

/** The case with as much of its loads as leaves every check its reserve; all of them where they are not borne at all, or where less would not help. */
function reserved(given: StructureCase): StructureCase {
  const told = (steps: number): readonly Finding[] => firmChecks.flatMap((check) => check(withShare(given, steps / SHARES)));
  if (told(SHARES).some(({ verdict }) => verdict === 'fail')) return given;
  const share = lastPassing(scarceAt(told, given.limits.loadReserve.value), SHARES) / SHARES;
  return share < LEAST_SHARE ? given : withShare(given, share);
}

function adviceOf(given: StructureCase, findings: readonly Finding[], loads: readonly Finding[], wall: Advice['wall']): Advice {
  const { declared } = given;
  const [tightest] = loads.filter(({ name, verdict }) => verdict !== 'caution' && name !== 'joint-test' && name !== 'bracing').toSorted((a, b) => a.margin - b.margin);
  return {
    safeLoadPerDeck: findings.some(({ verdict }) => verdict === 'fail') || wall === 'board' ? null : promised(given),
    governedBy: tightest?.name ?? null,
    wall,
    tippingForce: Math.floor(pushToTipEmpty(given) * 10) / 10,
    untestedJoint: !isJointTested(given),
    people: declared.people,
    mattress: declared.mattress?.thickness ?? null,
  };
}

/** The least that any place of the item's use is tested with, over the impact of the use; less where joints are untested. Null where nothing is borne. */
function promised(given: StructureCase): number | null {
  const { limits: { untestedJoint, loadStep, leastSafeLoad }, bearings } = given;
  const { impact } = rulesOf(given);
  const borne = bearings.filter(({ place: { use } }) => use !== 'lid').map(({ placed, rules }) => placed / rules.impact.value);
  if (borne.length === 0) return null;
  const share = isJointTested(given) ? 1 : untestedJoint.value;
  const load = Math.floor((share * Math.min(...borne)) / loadStep.value) * loadStep.value;
  return load < leastSafeLoad.value || impact.value <= 0 ? null : load;
}
