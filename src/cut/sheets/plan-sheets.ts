import { cover, prefer, type BestWays, type CoverTask, type Taken, type Way } from '../cover/index.ts';
import type { Solver } from '../solver.ts';
import { layoutsAroundDefects } from './around-defects.ts';
import { weighings, worthByWeight, type Weighing } from './area-bounds.ts';
import { freeTable, type FreeTable } from './free-table.ts';
import type { Layout } from './layout.ts';
import { limitedLists } from './limited-lists.ts';
import { boardOf, type Board } from './raster.ts';
import { realized } from './realize.ts';
import type { SheetPiece, SheetPlan, SheetStock, SheetWay } from './types.ts';

/** Layouts kept for a part of a panel when there are not pieces enough for the best. */
const KEEP = 4;

/**
 * Cuts rectangular pieces from panels by straight cuts from edge to edge, at the least cost: column generation over
 * layouts found by dynamic programming, whole numbers by the solver, and the bound that the prices prove.
 */
export function planSheets(pieces: readonly SheetPiece[], stocks: readonly SheetStock[], kerf: number, solver: Solver): SheetPlan {
  const layouts = new Map<string, Layout>();
  const boards = stocks.map((stock) => boardOf(pieces, stock, kerf));
  const weighed = boards.map((board) => weighings(board, pieces.length));
  const task: CoverTask = {
    demand: pieces.map(({ count }) => count),
    stocks,
    best: (stock, prices, most) => {
      const found = bestWays(boards[stock], stock, prices, most, layouts);
      return { ...found, worth: Math.min(found.worth, lightestWorth(weighed[stock] ?? [], prices, most)) };
    },
    proofs: () => proofs(boards, weighed, stocks, pieces),
  };
  const found = cover(task, solver);
  const taken = found.taken;
  const ways = taken.map(({ way, times }): SheetWay => ({ stock: way.stock, times, cuts: realized(layouts.get(nameOf(way)) as Layout, pieces, stocks[way.stock] as SheetStock, kerf, pieces.map(() => 0)) }));
  return { ways, missing: found.missing, cost: found.cost, bound: found.bound, proven: found.cost - found.bound < 1e-6 };
}

const lightestWorth = (weighed: readonly Weighing[], prices: readonly number[], most: readonly number[]): number =>
  Math.min(...weighed.map((weighing) => worthByWeight(weighing, prices, most)));

/** Prices by weight: a panel is worth its cost when all of its room is filled. */
function* proofs(boards: readonly Board[], weighed: readonly (readonly Weighing[])[], stocks: readonly SheetStock[], pieces: readonly SheetPiece[]) {
  const most = pieces.map(({ count }) => count);
  for (const [stock, ways] of weighed.entries()) {
    for (const { weights, room } of ways) {
      const prices = weights.map((weight) => (weight * (stocks[stock]?.cost ?? 0)) / room);
      const worths = boards.map((board, other) => Math.min(freeTable(board, prices).worth(board.width, board.height), lightestWorth(weighed[other] ?? [], prices, most)));
      yield { prices, worths };
    }
  }
}

const nameOf = ({ stock, makes }: Way): string => `${stock}:${makes.join(',')}`;

function bestWays(board: Board | undefined, stock: number, prices: readonly number[], most: readonly number[], layouts: Map<string, Layout>): BestWays {
  if (board === undefined) return { worth: 0, ways: [] };
  const free = freeTable(board, prices);
  const any = layoutsOf(board, free, prices, null);
  const fits = (layout: Layout): boolean => layout.makes.every((count, piece) => count <= (most[piece] ?? 0));
  const found = any.layouts.every(fits) ? any.layouts : layoutsOf(board, free, prices, most).layouts;
  const ways = found.filter(({ node }) => node !== null).map((layout): Way => {
    const way: Way = { stock, makes: layout.makes };
    layouts.set(nameOf(way), layouts.get(nameOf(way)) ?? layout);
    return way;
  });
  return { worth: any.whole ? any.layouts[0]?.worth ?? 0 : free.worth(board.width, board.height), ways };
}

/** The best layouts of a board; with any number of pieces where `most` is null. */
function layoutsOf(board: Board, free: FreeTable, prices: readonly number[], most: readonly number[] | null): { readonly layouts: readonly Layout[]; readonly whole: boolean } {
  const lists = most === null ? (width: number, height: number) => [free.layout(width, height)] : limitedLists(board, prices, most, KEEP, free);
  if (board.blocked.length === 0) return { layouts: lists(board.width, board.height), whole: true };
  const found = layoutsAroundDefects(board, lists, free.worth, most === null ? 1 : KEEP, most ?? prices.map(() => Infinity));
  return { layouts: found.layouts, whole: found.whole && board.complete };
}
