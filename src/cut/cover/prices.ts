import type { Column, Row, Solver } from '../solver.ts';
import type { CoverTask, Way } from './types.ts';

/** What a piece that stays uncut costs, against the dearest stock: far more than any stock piece. */
const MISSING = 1000;
/** A way must be worth this much more than it costs to be taken up. */
const GAIN = 1e-7;
/** Rounds of pricing: far above what real orders take. */
const ROUNDS = 2000;

/** What the relaxed cover, in which a way may be cut 2.5 times, gives. */
export interface Relaxed {
  readonly ways: readonly Way[];
  /** How often each way is cut, not whole. */
  readonly times: readonly number[];
  /** The cost of the relaxed cover, over the ways found. */
  readonly cost: number;
  /** No cover costs less. */
  readonly bound: number;
  readonly prices: readonly number[];
}

const missingCost = (task: CoverTask): number => MISSING * Math.max(1, ...task.stocks.map(({ cost }) => cost));

/** The rows of a cover: every piece as often as wanted, no stock more often than it is there. */
export const coverRows = ({ demand, stocks }: CoverTask): readonly Row[] => [
  ...demand.map((least) => ({ least, most: null })),
  ...stocks.map(({ count }) => ({ least: null, most: count })),
];

/** The column of a way, and of a piece that stays uncut. */
export const wayColumn = (task: CoverTask, { stock, makes }: Way, whole: boolean): Column => ({
  cost: task.stocks[stock]?.cost ?? 0,
  most: null,
  whole,
  entries: [...makes.flatMap((count, piece): [number, number][] => (count > 0 ? [[piece, count]] : [])), [task.demand.length + stock, 1]],
});

export const missingColumns = (task: CoverTask, whole: boolean): readonly Column[] =>
  task.demand.map((_, piece) => ({ cost: missingCost(task), most: null, whole, entries: [[piece, 1]] }));

/**
 * Column generation (Gilmore and Gomory 1961): solves the relaxed cover over the ways known, asks for ways that are
 * worth more than they cost at its prices, until there is none. `known` ways are begun with.
 */
export function relaxedCover(task: CoverTask, solver: Solver, known: readonly Way[] = []): Relaxed {
  const ways = new Map(known.map((way) => [wayName(way), way]));
  let bound = 0;
  for (let round = 0; ; round += 1) {
    const columns = [...ways.values()].map((way) => wayColumn(task, way, false));
    const { cost, values, prices: rowPrices } = solver.solve({ rows: coverRows(task), columns: [...columns, ...missingColumns(task, false)] });
    const prices = task.demand.map((_, piece) => Math.max(0, rowPrices[piece] ?? 0));
    const found = task.stocks.map((_, stock) => task.best(stock, prices, task.demand));
    bound = Math.max(bound, boundAt(task, prices, found.map(({ worth }) => worth)));
    const better = found.flatMap(({ ways: best }, stock) => best.filter((way) => gain(task, way, prices, rowPrices[task.demand.length + stock] ?? 0) > GAIN));
    const before = ways.size;
    for (const way of better) ways.set(wayName(way), way);
    if (ways.size === before || round === ROUNDS) {
      return { ways: [...ways.values()], times: values.slice(0, columns.length), cost, bound: Math.min(bound, cost), prices };
    }
  }
}

export const wayName = ({ stock, makes }: Way): string => `${stock}:${makes.join(',')}`;

const worthOf = (way: Way, prices: readonly number[]): number => way.makes.reduce((sum, count, piece) => sum + count * (prices[piece] ?? 0), 0);

/** `stockPrice` is what one more piece of the stock would save, at most zero. */
const gain = (task: CoverTask, way: Way, prices: readonly number[], stockPrice: number): number =>
  worthOf(way, prices) - (task.stocks[way.stock]?.cost ?? 0) + stockPrice;

/**
 * The bound that prices prove (weak duality; Farley 1990), the better of two. Scaled until no way is worth more than
 * it costs, they pay for the demand. Or they are scaled for the stocks without limit alone, less what the ways of
 * each counted stock are then worth above their cost: better where such a stock is scarce.
 */
export function boundAt(task: CoverTask, prices: readonly number[], worths: readonly number[]): number {
  const paid = task.demand.reduce((sum, count, piece) => sum + count * (prices[piece] ?? 0), 0);
  const fits = task.stocks.map(({ cost }, stock) => Math.min(1, cost / Math.max(cost, worths[stock] ?? 0, Number.MIN_VALUE)));
  const forAll = Math.min(1, ...fits.filter((_, stock) => task.stocks[stock]?.count !== 0));
  const forUncounted = Math.min(1, ...fits.filter((_, stock) => task.stocks[stock]?.count === null));
  const above = task.stocks.reduce((sum, { cost, count }, stock) => sum + (count ?? 0) * Math.max(0, forUncounted * (worths[stock] ?? 0) - cost), 0);
  return Math.max(forAll * paid, forUncounted * paid - above);
}
