import { RULES, type Rule } from '../../work/facts.ts';
import type { OrderReason } from '../types.ts';
import { hasBit, indicesOf, union, type Bits } from './bits.ts';
import type { Ground } from './ground.ts';
import type { Building } from './line.ts';
import { partsIn } from './steps.ts';
import type { FoundStep } from './types.ts';

/** A step with what it does to the units; bench work does nothing to them. */
export interface Told {
  readonly step: Pick<FoundStep, 'key' | 'does' | 'batch' | 'moves' | 'newParts' | 'folds' | 'drillsFor' | 'side' | 'onBench'>;
  readonly building: Building | null;
}

/** Why steps come in this order: what must hold whatever anybody wishes, geometry first, for it explains most; then the firm rules. */
export function mustHold(ground: Ground, told: readonly Told[]): readonly OrderReason[] {
  const pairs = told.flatMap((first, index) => told.slice(index + 1).map((then) => [first, then] as const));
  return [
    ...pairs.flatMap(([first, then]) => geometry(ground, first, then)),
    ...pairs.flatMap(([first, then]) => needed(ground, first, then)),
    ...pairs.flatMap(([first, then]) => FIRM.filter((rule) => isOrdered(rule, first, then)).map((rule) => reason(first, then, rule.name))),
  ];
}

const reason = (first: Told, then: Told, rule: string, parts: readonly string[] = []): OrderReason => ({ first: first.step.key, then: then.step.key, rule, parts });

/** What the later step leaves behind would be in the way of the earlier one. */
function geometry(ground: Ground, first: Told, then: Told): readonly OrderReason[] {
  if (first.building?.is !== 'cut' || then.building?.is !== 'cut' || first.step.batch !== then.step.batch || makesHoles(first) || makesHoles(then)) return [];
  const later = then.building.cut.leaving.map(({ set }) => set).reduce(union);
  const blockers = blockersOf(ground, first.building);
  const met = indicesOf(later).filter((index) => hasBit(blockers, index) && !hasBit(ownOf(first.building), index));
  const parts = [...new Set(met.flatMap((index) => ground.units.all[index]?.parts ?? []))];
  return parts.length === 0 ? [] : [reason(first, then, 'geometry', parts)];
}

/** Holes are made where nothing moves: what moves is told of the step that pins. */
const makesHoles = ({ step: { does } }: Told): boolean => does === 'drill' || does === 'punch-tab';

const ownOf = (building: Building | null): Bits =>
  (building?.is === 'cut' ? building.cut.leaving.map(({ set }) => set).reduce(union) : new Uint32Array());

function blockersOf(ground: Ground, building: Extract<Building, { is: 'cut' }>): Bits {
  const sets = building.cut.leaving.flatMap(({ set, way }) => {
    const at = ground.blocking.ways.indexOf(way);
    return indicesOf(set).flatMap((index) => ground.foldBlocks.get(index) ?? ground.blocking.own[index] ?? ground.blocking.out[at]?.[index] ?? []);
  });
  // A tab's own pins hold it down; it could not be folded over them.
  const { flap, kind } = building.cut;
  return [...sets, ...(kind === 'unfold' && flap !== null ? [flap.rowBits] : [])].reduce(union, new Uint32Array(building.set.length));
}

/** What the earlier step brings or makes is what the later one works on. */
function needed(ground: Ground, first: Told, then: Told): readonly OrderReason[] {
  if (first.step.onBench || then.step.onBench || first.building === null || then.building === null) return [];
  const given = new Set([...first.step.newParts, ...first.step.moves.flatMap(({ parts }) => parts)]);
  const asked = partsAsked(ground, then);
  return asked.some((id) => given.has(id)) && then.building.set !== first.building.set ? [reason(first, then, 'needed')] : [];
}

function partsAsked(ground: Ground, { step, building }: Told): readonly string[] {
  if (building?.is === 'turn') return partsIn(ground, building.set);
  const closed = step.moves.flatMap(({ closes }) => closes).flatMap((connection) => Object.values(connection).flatMap((value) => (typeof value === 'string' ? [value] : [])));
  const touched = building === null ? [] : building.cut.undoes.flatMap(({ a, b }) => [a, b]).filter((index) => hasBit(building.cut.restBits, index));
  return [...closed, ...touched.flatMap((index) => ground.units.all[index]?.parts ?? [])];
}

/** Whether a rule orders these two. */
function isOrdered(rule: Rule, first: Told, then: Told): boolean {
  return isWithin(rule, first, then) && rule.first(first.step) && rule.then(then.step);
}

function isWithin({ within }: Rule, first: Told, then: Told): boolean {
  switch (within) {
    case 'batch': return first.step.batch === then.step.batch;
    case 'side': return first.step.batch === then.step.batch && first.step.side === then.step.side;
    case 'place': return first.building === then.building;
    case 'item': return true;
  }
}

/** Rules that no wish overrides. */
export const FIRM: readonly Rule[] = RULES.filter(({ firm }) => firm);
const PRACTICE: readonly Rule[] = RULES.filter(({ firm }) => !firm);

/** Good practice that an order keeps, for the reader; it gave way where it is not told. */
export const practised = (told: readonly Told[]): readonly OrderReason[] => told.flatMap((first, index) => told.slice(index + 1)
  .flatMap((then) => PRACTICE.filter((rule) => isOrdered(rule, first, then)).map((rule) => reason(first, then, rule.name))));
