import { cover, prefer, withoutSurplus, type BestWays, type CoverTask, type Way } from '../cover/index.ts';
import type { Solver } from '../solver.ts';
import { weighings, worthByWeight, type Weighing } from './area-bounds.ts';
import { chosenLayout, type Chosen } from './choose-layout.ts';
import { cornerLayout } from './corner-search.ts';
import { freeTable } from './free-table.ts';
import { layoutBook, type LayoutBook } from './layout-book.ts';
import { bestLayouts } from './layouts.ts';
import { lesserWays } from './lesser-ways.ts';
import { boardOf, type Board } from './raster.ts';
import type { Edges, SheetPiece, SheetPlan, SheetStock, SheetWay } from './types.ts';

/** What a further way to cut a panel costs, against an off-cut as large as the panel. Ours. */
const PER_WAY = 0.3;

export interface SheetOptions {
  /** Which cuts are made; only straight ones from edge to edge unless given. */
  readonly edges?: Edges;
  /** Whether the nicest of the cheapest plans is looked for; so it is unless given. */
  readonly nicest?: boolean;
}

/**
 * Cuts rectangular pieces from panels at the least cost, by straight cuts from edge to edge unless any will do: column
 * generation over layouts found by dynamic programming, whole numbers by the solver, and the bound that prices prove. Of equally
 * cheap plans one with large off-cuts and few different ways. Sizes in mm.
 */
export function planSheets(pieces: readonly SheetPiece[], stocks: readonly SheetStock[], kerf: number, solver: Solver, { edges = 'straight', nicest = true }: SheetOptions = {}): SheetPlan {
  if (pieces.length === 0) return { ways: [], missing: [], cost: 0, bound: 0, proven: true };
  const boards = stocks.map((stock) => boardOf(pieces, stock, kerf));
  const book = layoutBook();
  const task = sheetTask(pieces, stocks, boards, book, edges);
  const found = cover(task, solver);
  const chosen = chooser(pieces, stocks, boards, kerf, book);
  const wishes = { nicety: (way: Way) => (chosen(way)?.largest ?? 0) ** 2, perWay: PER_WAY };
  const taken = !nicest || found.missing.some((count) => count > 0) ? found.taken : prefer(task, found.taken, lesserWays(task, found.ways), wishes, solver);
  const area = ({ makes }: Way): number => makes.reduce((sum, count, at) => sum + count * (pieces[at]?.width ?? 0) * (pieces[at]?.height ?? 0), 0);
  const ways = withoutSurplus(task, taken, area).flatMap(({ way, times }): SheetWay[] => {
    const layout = chosen(way);
    return layout === null ? [] : [{ stock: way.stock, times, cuts: layout.cuts }];
  });
  return { ways, missing: found.missing, cost: found.cost, bound: found.bound, proven: found.cost - found.bound < 1e-6 };
}

function sheetTask(pieces: readonly SheetPiece[], stocks: readonly SheetStock[], boards: readonly Board[], book: LayoutBook, edges: Edges): CoverTask {
  const weighed = boards.map((board) => weighings(board, pieces.length));
  const demand = pieces.map(({ count }) => count);
  const best = (stock: number, prices: readonly number[], most: readonly number[]): BestWays => {
    const board = boards[stock];
    if (board === undefined) return { worth: 0, ways: [] };
    const { layouts, worth: straight } = bestLayouts(board, prices, most);
    // No straight cuts bound what loose pieces are worth: only the weighings do.
    const [all, worth] = edges === 'straight' ? [layouts, straight] : [[...layouts, cornerLayout(board, prices, most)], Infinity];
    const ways = all.filter(({ node }) => node !== null).map((layout) => book.enter(stock, layout));
    return { worth: Math.min(worth, lightestWorth(weighed[stock] ?? [], prices, demand)), ways };
  };
  return { demand, stocks, best, proofs: () => proofs(boards, weighed, stocks, demand, edges) };
}

const lightestWorth = (weighed: readonly Weighing[], prices: readonly number[], most: readonly number[]): number =>
  Math.min(...weighed.map((weighing) => worthByWeight(weighing, prices, most)));

/**
 * Prices by weight: a panel is worth its cost when all of its room is filled. A piece that it has no place for is
 * priced by its area on the cheapest of the others.
 */
function* proofs(boards: readonly Board[], weighed: readonly (readonly Weighing[])[], stocks: readonly SheetStock[], demand: readonly number[], edges: Edges) {
  const priced = (stock: number, { weights, room }: Weighing, piece: number): number => ((weights[piece] ?? Infinity) * (stocks[stock]?.cost ?? 0)) / room;
  const byArea = demand.map((_, piece) => Math.min(...weighed.flatMap(([plain], stock) => (plain !== undefined && Number.isFinite(plain.weights[piece]) ? [priced(stock, plain, piece)] : []))));
  for (const [stock, ways] of weighed.entries()) {
    for (const way of ways) {
      const prices = demand.map((_, piece) => [priced(stock, way, piece), byArea[piece] ?? 0].find(Number.isFinite) ?? 0);
      const worths = boards.map((board, other) => Math.min(edges === 'any' ? Infinity : freeTable(board, prices).worth(board.width, board.height), lightestWorth(weighed[other] ?? [], prices, demand)));
      yield { prices, worths };
    }
  }
}

/** The layout chosen for a way, looked for once. */
function chooser(pieces: readonly SheetPiece[], stocks: readonly SheetStock[], boards: readonly Board[], kerf: number, book: LayoutBook): (way: Way) => Chosen | null {
  const known = new Map<string, Chosen | null>();
  return (way) => {
    const name = `${way.stock}:${way.makes.join(',')}`;
    const before = known.get(name);
    if (before !== undefined) return before;
    const [layout, board, stock] = [book.layoutOf(way), boards[way.stock], stocks[way.stock]];
    const chosen = layout === null || board === undefined || stock === undefined ? null : chosenLayout(layout, board, pieces, stock, kerf);
    known.set(name, chosen);
    return chosen;
  };
}
