import { cover, prefer, withoutSurplus, type BestWays, type CoverTask, type Way } from '../cover/index.ts';
import type { Solver } from '../solver.ts';
import { allWays } from './all-ways.ts';
import { bestOfEveryPlan } from './every-plan.ts';
import { fullest, fullestByCount } from './knapsack.ts';
import { lengthWishes } from './length-wishes.ts';
import type { LengthPiece, LengthPlan, LengthStock, SawRules } from './types.ts';
import { inUnits, type Units } from './units.ts';

/** With more ways than this to fill a stock piece, only those that the search came upon are weighed against each other. */
const WEIGHED = 600;
/** So many ways are at most put before the solver at once, which then proves the optimum itself. */
const EVERY = 2000;

/**
 * Saws pieces from stock at the least cost, exactly: a few from tubes of one length by looking at every plan, others by
 * column generation over all ways to fill a stock piece, whole numbers by the solver, and the bound that the prices
 * prove. Of equally cheap plans one with plain fractions, long off-cuts and few different ways, unless `nicest` is
 * false. Lengths in mm.
 */
export function planLengths(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], saw: SawRules, solver: Solver, nicest = true): LengthPlan {
  return planFew(pieces, stocks, saw) ?? planBySolver(pieces, stocks, saw, solver, nicest);
}

/** The same for a few pieces from as many stock pieces of one length as wanted; null where it takes the solver. */
export function planFew(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], saw: SawRules): LengthPlan | null {
  if (pieces.length === 0) return { ways: [], missing: [], cost: 0, bound: 0, proven: true };
  const [stock, ...others] = stocks;
  if (stock === undefined || stock.count !== null || others.length > 0) return null;
  const units = inUnits(pieces, stocks, saw);
  const demand = pieces.map(({ count }) => count);
  const ways = allWays(units, 0, demand, EVERY);
  const cuts = ways && bestOfEveryPlan(demand, ways, units.pieces, units.room(0, 1), lengthWishes(pieces, stocks, saw));
  if (!cuts) return null;
  const cost = stock.cost * cuts.reduce((sum, { times }) => sum + times, 0);
  return { ways: cuts.map((cut) => ({ stock: 0, ...cut })), missing: demand.map(() => 0), cost, bound: cost, proven: true };
}

function planBySolver(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], saw: SawRules, solver: Solver, nicest: boolean): LengthPlan {
  const units = inUnits(pieces, stocks, saw);
  const task = lengthTask(pieces, stocks, units);
  const found = cover(task, solver);
  const taken = !nicest || found.missing.some((count) => count > 0)
    ? found.taken
    : prefer(task, found.taken, waysToWeigh(task, units, found.ways), lengthWishes(pieces, stocks, saw), solver);
  return {
    ways: withoutSurplus(task, taken, lengthIn(pieces)).map(({ way: { stock, makes }, times }) => ({ stock, times, makes })),
    missing: found.missing, cost: found.cost, bound: found.bound, proven: found.cost - found.bound < 1e-6,
  };
}

function lengthTask(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], units: Units): CoverTask {
  const best = (stock: number, worths: readonly number[], most: readonly number[]): BestWays => {
    const fillers = { sizes: units.pieces, worths, most };
    const { worth, makes } = units.roomByCount
      ? fullestByCount(fillers, (count) => units.room(stock, count))
      : fullest(fillers, Math.max(0, units.room(stock, 1)));
    return { worth, ways: worth > 0 ? [{ stock, makes }] : [] };
  };
  const demand = pieces.map(({ count }) => count);
  return { demand, stocks, best, all: () => everyWay(units, stocks, demand) };
}

/** Every way to fill every stock piece; null when there are too many. */
function everyWay(units: Units, stocks: readonly unknown[], demand: readonly number[]): readonly Way[] | null {
  const all = stocks.map((_, stock) => allWays(units, stock, demand, EVERY)?.map((makes): Way => ({ stock, makes })) ?? null);
  const ways = all.flatMap((each) => each ?? []);
  return all.includes(null) || ways.length > EVERY ? null : ways;
}

function waysToWeigh(task: CoverTask, units: Units, found: readonly Way[]): readonly Way[] {
  const every = everyWay(units, task.stocks, task.demand);
  return every === null || every.length > WEIGHED ? found : every;
}

const lengthIn = (pieces: readonly LengthPiece[]) => ({ makes }: Way): number =>
  makes.reduce((sum, count, at) => sum + count * (pieces[at]?.length ?? 0), 0);
