import type { Model } from '../../model/index.ts';
import type { Kit, Stock, StockDefect } from '../../read/index.ts';
import { largestClear, offCutsOf, piecesOf, planSheets, type Edges, type SheetStock, type SheetWay } from '../sheets/index.ts';
import type { Solver } from '../solver.ts';
import { servesPanel } from './serves.ts';
import { inTwoStages, type Pile } from './two-stages.ts';
import type { OffCut, PanelPiece, PanelSheet, Source, Thrift } from './types.ts';

/** Panels alike on the pile or in a kit, mm. */
interface PanelPile extends Pile {
  readonly source: Source;
  readonly length: number;
  readonly width: number;
  readonly grain: 'length' | 'width' | null;
  readonly defects: readonly StockDefect[];
}

/** The pieces of panel of an order, cut from the stock as far as it goes, then from whole kits. Throws a RangeError when a piece is larger than any panel. */
export function planPanelPieces(pieces: readonly PanelPiece[], kit: Kit, stock: Stock | null, known: readonly Model[], solver: Solver, edges: Edges): { readonly sheets: readonly PanelSheet[]; readonly thrift: Thrift } {
  const piles = panelPiles(kit, stock);
  const wanted = pieces.map(({ width, height, count }) => ({ width, height, count, turn: true }));
  const staged = inTwoStages(piles, (costs, counts, last) => planSheets(wanted, piles.map((pile, index) => sheetStock(pile, costs[index] ?? 0, counts[index] ?? null)), kit.practice.knifeKerf, solver, { edges, nicest: last }));
  const missing = pieces[staged.missing.findIndex((count) => count > 0)];
  if (missing !== undefined) throw new RangeError(`a piece of ${missing.width.toFixed(1)} × ${missing.height.toFixed(1)} mm does not fit on the panels there are`);
  const sheets = withPatterns(staged.ways.flatMap((way): PanelSheet[] => {
    const pile = piles[way.stock];
    return pile === undefined ? [] : [panelSheet(pile, way, pieces, known)];
  }).sort((a, b) => Number(a.source.from === 'kit') - Number(b.source.from === 'kit') || b.times - a.times), pieces);
  const sum = (of: (sheet: PanelSheet) => number): number => sheets.reduce((total, sheet) => total + sheet.times * of(sheet), 0);
  return {
    sheets,
    thrift: {
      used: sum(() => 1), fromKits: staged.fromKits, fewestFromKits: staged.fewestFromKits,
      stock: sum(clearArea),
      pieces: pieces.reduce((total, { width, height, count }) => total + width * height * count, 0),
      useful: sum(({ offCuts }) => offCuts.reduce((total, { clear, serves }) => total + (serves.length > 0 && clear !== null ? clear.width * clear.height : 0), 0)),
      leastStock: staged.leastStock, proven: staged.proven,
    },
  };
}

/** Of several pieces alike the first in the order of the sheets is measured, and kept as the pattern of the others (common practice, no source). */
function withPatterns(sheets: readonly PanelSheet[], pieces: readonly PanelPiece[]): readonly PanelSheet[] {
  const waiting = new Set(pieces.filter(({ count }) => count > 1).map(({ letter }) => letter));
  return sheets.map((sheet) => ({ ...sheet, pieces: sheet.pieces.map((piece) => ({ ...piece, isPattern: waiting.delete(piece.letter) })) }));
}

function panelPiles(kit: Kit, stock: Stock | null): readonly PanelPile[] {
  const counted = (stock?.panels ?? []).map(({ name, count, length, width, grain, defects }): PanelPile =>
    ({ source: { from: 'stock', name }, from: 'stock', count, length, width, grain, defects, measure: clearArea({ length, width, defects }) }));
  const { length, width } = kit.panel;
  return [...counted, { source: { from: 'kit', name: kit.name }, from: 'kit', count: null, length, width, grain: null, defects: [], measure: length * width }];
}

const sheetStock = ({ length, width, grain, defects }: PanelPile, cost: number, count: number | null): SheetStock =>
  ({ width: length, height: width, count, cost, defects, grain: grain === null ? null : grain === 'length' ? 'x' : 'y' });

/** The area that no defect covers, mm²; overlapping defects count once. */
function clearArea({ length, width, defects }: { readonly length: number; readonly width: number; readonly defects: readonly StockDefect[] }): number {
  const xs = [...new Set([0, length, ...defects.flatMap((each) => [each.x, each.x + each.width])])].sort((a, b) => a - b);
  const ys = [...new Set([0, width, ...defects.flatMap((each) => [each.y, each.y + each.height])])].sort((a, b) => a - b);
  const covered = (x: number, y: number): boolean => defects.some((each) => x > each.x && x < each.x + each.width && y > each.y && y < each.y + each.height);
  return xs.slice(1).reduce((sum, right, i) => sum + ys.slice(1).reduce((column, top, j) => {
    const [left, low] = [xs[i] ?? 0, ys[j] ?? 0];
    return column + (covered((left + right) / 2, (low + top) / 2) ? 0 : (right - left) * (top - low));
  }, 0), 0);
}

function panelSheet({ source, length, width, grain, defects }: PanelPile, { cuts, times }: SheetWay, pieces: readonly PanelPiece[], known: readonly Model[]): PanelSheet {
  const offCuts = offCutsOf(cuts).map((region): OffCut => {
    const clear = largestClear(region, defects);
    return { region, clear, serves: clear === null ? [] : servesPanel(known, [clear.width, clear.height]) };
  });
  return {
    source, times, length, width, grain, defects, cuts, offCuts,
    pieces: piecesOf(cuts).map(({ piece, turned, x, y, width: wide, height: high }) => ({ letter: pieces[piece]?.letter ?? '', isPattern: false, turned, x, y, width: wide, height: high })),
  };
}
