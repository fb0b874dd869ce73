import type { Column, Solver } from '../solver.ts';
import { boundAt, coverRows, missingColumns, relaxedCover, wayColumn, wayName } from './prices.ts';
import type { Cover, CoverTask, Taken, Way } from './types.ts';
import { wholeCosts } from './whole-costs.ts';

/** Branches of one search, and searches with new ways, before the best found is taken. */
const NODES = 3000;
const DIVES = 8;
const NEAR = 1e-6;

export interface CoverAnswer extends Cover {
  /** Every way found on the way. */
  readonly ways: readonly Way[];
}

/**
 * Covers the demand at the least cost: the relaxed cover for the bound, then whole numbers of the ways found; as
 * long as that costs more than the bound, further ways are priced for what a rounded-down relaxed cover leaves over.
 * `known` ways are begun with.
 */
export function cover(task: CoverTask, solver: Solver, known: readonly Way[] = []): CoverAnswer {
  const relaxed = relaxedCover(task, solver, known);
  let ways = relaxed.ways;
  let best = wholeCover(task, ways, solver, null);
  // With a piece missing a cover costs more than any sum of stocks.
  const roundedUp = best.missing.some((count) => count > 0) ? (bound: number): number => bound : wholeCosts(task.stocks, best.cost);
  let bound = provenBound(task, relaxed.bound, best.cost, roundedUp);
  const all = best.cost > bound + NEAR ? task.all?.() ?? null : null;
  if (all !== null) {
    ways = joined(all, ways);
    best = wholeCover(task, ways, solver, best);
    // The search over every way bounds the cost as well; stopped at its limit, by less.
    bound = Math.max(bound, roundedUp(best.bound));
  }
  for (let dive = 0; all === null && dive < DIVES && best.cost > bound + NEAR; dive += 1) {
    const more = dived(task, solver, ways, dive);
    if (more.length === ways.length) break;
    ways = more;
    best = wholeCover(task, ways, solver, best);
  }
  return { ...best, bound: Math.max(0, Math.min(bound, best.cost)), ways };
}

/** The highest bound of all proofs, as far as they are needed. */
function provenBound(task: CoverTask, relaxed: number, cost: number, roundedUp: (bound: number) => number): number {
  let bound = roundedUp(relaxed);
  if (task.proofs === undefined || bound >= cost - NEAR) return bound;
  for (const { prices, worths } of task.proofs()) {
    bound = Math.max(bound, roundedUp(boundAt(task, prices, worths)));
    if (bound >= cost - NEAR) break;
  }
  return bound;
}

/** Whole numbers of the ways known, with the bound over these ways. Begins with `start`. */
function wholeCover(task: CoverTask, ways: readonly Way[], solver: Solver, start: Cover | null): Cover {
  const columns = [...ways.map((way) => wayColumn(task, way, true)), ...missingColumns(task, true)];
  const begun = start === null ? greedy(task, ways) : valuesOf(start, ways);
  const answer = solver.solve({ rows: coverRows(task), columns }, { nodes: NODES, start: begun });
  const values = answer.status === 'none' || answer.cost > costOf(columns, begun) + NEAR ? begun : answer.values;
  const taken = ways.flatMap((way, index): Taken[] => {
    const times = Math.round(values[index] ?? 0);
    return times > 0 ? [{ way, times }] : [];
  });
  const missing = task.demand.map((_, piece) => Math.round(values[ways.length + piece] ?? 0));
  return { taken, missing, cost: costOf(columns, values.map(Math.round)), bound: Number.isFinite(answer.bound) ? answer.bound : 0 };
}

const costOf = (columns: readonly Column[], values: readonly number[]): number =>
  columns.reduce((sum, { cost }, index) => sum + cost * (values[index] ?? 0), 0);

function valuesOf({ taken, missing }: Cover, ways: readonly Way[]): readonly number[] {
  const times = new Map(taken.map((each) => [wayName(each.way), each.times]));
  return [...ways.map((way) => times.get(wayName(way)) ?? 0), ...missing];
}

/** A first answer: again and again the way that makes the most of what is still wanted for its cost. */
function greedy(task: CoverTask, ways: readonly Way[]): readonly number[] {
  const left: number[] = [...task.demand];
  const stock: number[] = task.stocks.map(({ count }) => count ?? Infinity);
  const times: number[] = ways.map(() => 0);
  for (;;) {
    let best = -1;
    let most = 0;
    ways.forEach((way, index) => {
      if ((stock[way.stock] ?? 0) < 1) return;
      const made = way.makes.reduce((sum, count, piece) => sum + Math.min(count, left[piece] ?? 0), 0) / Math.max(NEAR, task.stocks[way.stock]?.cost ?? 0);
      if (made > most + 1e-12) [best, most] = [index, made];
    });
    const way = ways[best];
    if (way === undefined) return [...times, ...left];
    times[best] = (times[best] ?? 0) + 1;
    stock[way.stock] = (stock[way.stock] ?? 0) - 1;
    way.makes.forEach((count, piece) => { left[piece] = Math.max(0, (left[piece] ?? 0) - count); });
  }
}

/** Ways for what is left when the relaxed cover is rounded down; each dive rounds down by a little more. */
function dived(task: CoverTask, solver: Solver, ways: readonly Way[], dive: number): readonly Way[] {
  let all = ways;
  let left: CoverTask = task;
  for (;;) {
    const { ways: found, times } = relaxedCover(left, solver, all);
    all = joined(all, found);
    const taken = found.map((_, index) => Math.floor((times[index] ?? 0) * (1 - dive * 0.1) + NEAR));
    if (!taken.some((count) => count > 0)) {
      const fullest = times.indexOf(Math.max(...times));
      if (fullest < 0) return all;
      taken[fullest] = 1;
    }
    left = leftAfter(left, found, taken);
    if (left.demand.every((count) => count === 0)) return all;
  }
}

function joined(ways: readonly Way[], more: readonly Way[]): readonly Way[] {
  const names = new Set(ways.map(wayName));
  return [...ways, ...more.filter((way) => !names.has(wayName(way)))];
}

const leftAfter = (task: CoverTask, ways: readonly Way[], taken: readonly number[]): CoverTask => ({
  ...task,
  demand: task.demand.map((count, piece) =>
    Math.max(0, count - ways.reduce((sum, way, index) => sum + (way.makes[piece] ?? 0) * (taken[index] ?? 0), 0))),
  stocks: task.stocks.map((stock, at) => ({
    ...stock,
    count: stock.count === null ? null : Math.max(0, stock.count - ways.reduce((sum, way, index) => sum + (way.stock === at ? taken[index] ?? 0 : 0), 0)),
  })),
});
