import { cover, prefer, withoutSurplus, type BestWays, type CoverTask, type Way } from '../cover/index.ts';
import type { Solver } from '../solver.ts';
import { allWays } from './all-ways.ts';
import { fullest, fullestByCount } from './knapsack.ts';
import { lengthWishes } from './length-wishes.ts';
import type { LengthPiece, LengthPlan, LengthStock, SawRules } from './types.ts';
import { inUnits, type Units } from './units.ts';

/** With more ways than this to fill a stock piece, only those that the search came upon are weighed against each other. */
const WEIGHED = 600;

/**
 * Saws pieces from stock at the least cost, exactly: column generation over all ways to fill a stock piece, whole
 * numbers by the solver, and the bound that the prices prove. Of equally cheap plans one with plain fractions, long
 * off-cuts and few different ways. Lengths in mm.
 */
export function planLengths(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], saw: SawRules, solver: Solver): LengthPlan {
  const units = inUnits(pieces, stocks, saw);
  const task = lengthTask(pieces, stocks, units);
  const found = cover(task, solver);
  const taken = found.missing.some((count) => count > 0)
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
  return { demand: pieces.map(({ count }) => count), stocks, best };
}

function waysToWeigh(task: CoverTask, units: Units, found: readonly Way[]): readonly Way[] {
  const all = task.stocks.map((_, stock) => allWays(units, stock, task.demand, WEIGHED)?.map((makes): Way => ({ stock, makes })) ?? null);
  const known = all.flatMap((ways) => ways ?? []);
  return all.includes(null) || known.length > WEIGHED ? found : known;
}

const lengthIn = (pieces: readonly LengthPiece[]) => ({ makes }: Way): number =>
  makes.reduce((sum, count, at) => sum + count * (pieces[at]?.length ?? 0), 0);
