import { cover, type BestWays, type CoverTask, type Way } from '../cover/index.ts';
import type { Solver } from '../solver.ts';
import { fullest, fullestByCount } from './knapsack.ts';
import type { LengthPiece, LengthPlan, LengthStock, SawRules } from './types.ts';
import { inUnits } from './units.ts';

/**
 * Saws pieces from stock at the least cost, exactly: column generation over all ways to fill a stock piece, whole
 * numbers by the solver, and the bound that the prices prove. Lengths in mm. Of equal plans the first found.
 */
export function planLengths(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], saw: SawRules, solver: Solver): LengthPlan {
  const task = lengthTask(pieces, stocks, saw);
  const { taken, missing, cost, bound } = cover(task, solver);
  return {
    ways: taken.map(({ way: { stock, makes }, times }) => ({ stock, times, makes })),
    missing, cost, bound, proven: cost - bound < 1e-6,
  };
}

export function lengthTask(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], saw: SawRules): CoverTask {
  const units = inUnits(pieces, stocks, saw);
  const best = (stock: number, worths: readonly number[], most: readonly number[]): BestWays => {
    const fillers = { sizes: units.pieces, worths, most };
    const { worth, makes } = units.roomByCount
      ? fullestByCount(fillers, (count) => units.room(stock, count))
      : fullest(fillers, Math.max(0, units.room(stock, 1)));
    const way: Way = { stock, makes };
    return { worth, ways: worth > 0 ? [way] : [] };
  };
  return { demand: pieces.map(({ count }) => count), stocks, best };
}
