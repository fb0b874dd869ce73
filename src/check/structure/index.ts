import type { Model } from '../../model/index.ts';
import type { Declared } from '../../read/index.ts';
import type { Limits } from '../limits.ts';
import { localCodes } from '../children/local-codes.ts';
import { holeDepths } from '../fit/hole-depth.ts';
import { isJointTested } from '../load/joint-test.ts';
import { findingNames } from '../names.ts';
import { boardWalls, wallFor } from '../tip/board-wall.ts';
import type { Advice, Finding, PlaceLoad, Report } from '../types.ts';
import { backBars, backPanels } from './backrest.ts';
import { adultEdges, barBending, barDeflection, edgeSags } from './bars.ts';
import { middleOf } from './bearings.ts';
import { lastPassing, scarceAt } from '../load/safe-load.ts';
import { structureCase, withShares, type StructureCase, type StructureCheck } from './case.ts';
import { castorBrakes, castorLoads, wallHolds } from './fittings.ts';
import { creases, pinGaps, pinLengths, stockPatterns, tabEdges, tabGaps, tabLengths } from './fit.ts';
import { lidGaps, lidHolds, lidLifts, lidVents } from './lid.ts';
import { silentOf } from './needs.ts';
import { panelCores, panelSags, panelSkins, pinSkins, yearsOfSag } from './panels.ts';
import { beds, fingerGaps, limbGaps, marks, openEnds, snags } from './reach.ts';
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

const reachChecks: readonly StructureCheck[] = [castorBrakes, lidHolds, lidGaps, lidVents, lidLifts, fingerGaps, limbGaps, snags, openEnds, marks, localCodes, beds];

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

/**
 * The case with as much of its loads as leaves every check its reserve: of each place as much as it bears alone, then of all
 * of them as much as the whole bears at once. All of the loads where they are not borne at all, or where less would not help.
 */
function reserved(given: StructureCase): StructureCase {
  const told = (shares: readonly number[]): readonly Finding[] => firmChecks.flatMap((check) => check(withShares(given, shares)));
  const greatest = (shares: (share: number) => readonly number[]): number => {
    const scarce = scarceAt((steps) => told(shares(steps / SHARES)), given.limits.loadReserve.value);
    return scarce(SHARES).length === 0 ? 1 : lastPassing(scarce, SHARES) / SHARES;
  };
  const full = given.bearings.map(() => 1);
  if (told(full).some(({ verdict }) => verdict === 'fail')) return given;
  if (greatest((share) => full.map(() => share)) === 1) return given;
  const alone = full.map((_, own) => greatest((share) => full.map((_, index) => (index === own ? share : 0))));
  const whole = greatest((share) => alone.map((each) => share * each));
  const shares = alone.map((each) => whole * each);
  return shares.some((share) => share < LEAST_SHARE) ? given : withShares(given, shares);
}

function adviceOf(given: StructureCase, findings: readonly Finding[], loads: readonly Finding[], wall: Advice['wall']): Advice {
  const { declared } = given;
  const promises = findings.some(({ verdict }) => verdict === 'fail') || wall === 'board' ? [] : promised(given);
  const [tightest] = loads.filter(({ name, verdict }) => verdict !== 'caution' && name !== 'joint-test' && name !== 'bracing').toSorted((a, b) => a.margin - b.margin);
  return {
    safeLoadPerDeck: promises.length === 0 ? null : Math.min(...promises.map(({ load }) => load)),
    loads: promises,
    governedBy: tightest?.name ?? null,
    wall,
    tippingForce: Math.floor(pushToTipEmpty(given) * 10) / 10,
    untestedJoint: !isJointTested(given),
    people: declared.people,
    mattress: declared.mattress?.thickness ?? null,
  };
}

/** What each place is tested with, over the impact of its use, and no more than its file says; less where joints are untested. None where nothing is borne, or one bears too little for a promise. */
function promised(given: StructureCase): readonly PlaceLoad[] {
  const { limits: { untestedJoint, loadStep, leastSafeLoad }, bearings } = given;
  const joints = isJointTested(given) ? 1 : untestedJoint.value;
  const loads = bearings.filter(({ place: { use } }) => use !== 'lid').map((bearing): PlaceLoad => ({
    place: bearing.place.name, panel: bearing.panel.id, height: middleOf(bearing)[2],
    load: Math.floor((joints * Math.min(bearing.placed / bearing.rules.impact.value, bearing.place.load ?? Infinity)) / loadStep.value) * loadStep.value,
  }));
  return loads.some(({ load }) => load < leastSafeLoad.value) ? [] : loads.toSorted((a, b) => b.height - a.height);
}
