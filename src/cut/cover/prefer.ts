import type { Column, Row, Solver } from '../solver.ts';
import { coverRows, wayColumn, wayName } from './prices.ts';
import type { CoverTask, Taken, Way } from './types.ts';

/** Branches looked at for the nicest of the cheapest covers. */
const NODES = 60;
const NEAR = 1e-6;

export interface Wishes {
  /** How much nicer one stock piece cut this way is than one cut any old way. */
  readonly nicety: (way: Way) => number;
  /** What every further way costs: each is a page to read and a rule to set. */
  readonly perWay: number;
}

/**
 * Of the covers that cost no more than `taken`, the nicest: over the ways given (those of `taken` are joined),
 * by the solver, up to a number of branches. Never less nice than `taken`, never dearer.
 */
export function prefer(task: CoverTask, taken: readonly Taken[], given: readonly Way[], wishes: Wishes, solver: Solver): readonly Taken[] {
  const ways = [...new Map([...taken.map(({ way }) => way), ...given].map((way) => [wayName(way), way])).values()];
  const costs = ways.map((way) => task.stocks[way.stock]?.cost ?? 0);
  const most = ways.map((way) => mostTimes(task, way));
  const rows: readonly Row[] = [
    ...coverRows(task),
    { least: null, most: taken.reduce((sum, { way, times }) => sum + times * (task.stocks[way.stock]?.cost ?? 0), 0) + NEAR },
    ...ways.map((): Row => ({ least: null, most: 0 })),
  ];
  const spent = task.demand.length + task.stocks.length;
  const cut = ways.map((way, index): Column => {
    const { entries } = wayColumn(task, way, true);
    return { cost: -wishes.nicety(way), most: most[index] ?? 0, whole: true, entries: [...entries, [spent, costs[index] ?? 0], [spent + 1 + index, 1]] };
  });
  const used = ways.map((_, index): Column => ({ cost: wishes.perWay, most: 1, whole: true, entries: [[spent + 1 + index, -(most[index] ?? 0)]] }));
  const times = new Map(taken.map((each) => [wayName(each.way), each.times]));
  const begun = ways.map((way) => times.get(wayName(way)) ?? 0);
  const answer = solver.solve({ rows, columns: [...cut, ...used] }, { nodes: NODES, start: [...begun, ...begun.map((count) => Math.min(1, count))] });
  if (answer.status === 'none') return taken;
  return ways.flatMap((way, index): Taken[] => {
    const count = Math.round(answer.values[index] ?? 0);
    return count > 0 ? [{ way, times: count }] : [];
  });
}

/** As often as a way can be of use. */
const mostTimes = (task: CoverTask, { stock, makes }: Way): number => Math.min(
  task.stocks[stock]?.count ?? Infinity,
  Math.max(0, ...makes.map((count, piece) => (count === 0 ? 0 : Math.ceil((task.demand[piece] ?? 0) / count)))),
);
