import type { Model } from '../../model/index.ts';
import type { Kit, Stock } from '../../read/index.ts';
import { planLengths, type LengthStock } from '../lengths/index.ts';
import type { Solver } from '../solver.ts';
import { servesTube } from './serves.ts';
import { inTwoStages, type Pile } from './two-stages.ts';
import type { Source, Thrift, TubePiece, TubeSheet } from './types.ts';

/** Tubes alike on the pile or in a kit. */
interface TubePile extends Pile {
  readonly source: Source;
  readonly length: number;
}

/** An off-cut is what is left after the last cut: less than this goes to dust, mm. */
const DUST = 1;

/** The tubes of an order, sawn from the stock as far as it goes, then from whole kits. Throws a RangeError when a piece is longer than any tube. */
export function planTubePieces(pieces: readonly TubePiece[], kit: Kit, stock: Stock | null, known: readonly Model[], solver: Solver): { readonly sheets: readonly TubeSheet[]; readonly thrift: Thrift } {
  const piles = tubePiles(kit, stock);
  const saw = { kerf: kit.practice.sawKerf, play: kit.joint.endPlay };
  const staged = inTwoStages(piles, (costs, counts, last) => planLengths(pieces,
    piles.map(({ measure }, index): LengthStock => ({ length: measure, cost: costs[index] ?? 0, count: counts[index] ?? null })), saw, solver, last));
  const missing = staged.missing.findIndex((count) => count > 0);
  if (missing >= 0) throw new RangeError(`a tube of ${pieces[missing]?.length ?? 0} mm is longer than the tubes there are: at most ${Math.max(...piles.map(({ measure }) => measure))} mm`);
  const sheets = staged.ways.flatMap(({ stock: index, times, makes }): TubeSheet[] => {
    const pile = piles[index];
    return pile === undefined ? [] : [tubeSheet(pile, times, makes, pieces, saw, known)];
  }).sort((a, b) => Number(a.source.from === 'kit') - Number(b.source.from === 'kit') || b.times - a.times);
  return { sheets, thrift: thriftOf(sheets, pieces, staged) };
}

function tubePiles(kit: Kit, stock: Stock | null): readonly TubePile[] {
  const counted = (stock?.tubes ?? []).filter(({ cracked }) => !cracked).map(({ name, count, length, notFromEnd }): TubePile =>
    ({ source: { from: 'stock', name }, from: 'stock', count, length, measure: length - notFromEnd }));
  return [...counted, { source: { from: 'kit', name: kit.name }, from: 'kit', count: null, length: kit.tube.length, measure: kit.tube.length }];
}

function tubeSheet(pile: TubePile, times: number, makes: readonly number[], pieces: readonly TubePiece[], { kerf, play }: { readonly kerf: number; readonly play: number }, known: readonly Model[]): TubeSheet {
  const cut = pieces.flatMap((piece, index) => Array.from({ length: makes[index] ?? 0 }, () => piece));
  const filled = cut.reduce((sum, { length }) => sum + length, 0);
  // Where the play takes a whole cut the saw runs on the mark; else the cuts stand between the pieces, as far as there is room.
  const onTheMark = kerf <= play;
  const shorter = Math.max(0, (filled + kerf * (cut.length - 1) - pile.measure) / Math.max(1, cut.length));
  const step = onTheMark ? 0 : kerf;
  const less = onTheMark ? 0 : shorter;
  const ends = cut.map((_, index) => Math.min(pile.measure, cut.slice(0, index + 1).reduce((sum, { length }) => sum + length - less, 0) + index * step));
  const left = pile.measure - (ends.at(-1) ?? 0) - kerf;
  const offCut = left < DUST ? 0 : left;
  return {
    source: pile.source, times, length: pile.length, usable: pile.measure,
    pieces: cut.map(({ letter }) => letter), ends, shorter, offCut, serves: offCut > 0 ? servesTube(known, offCut) : [],
  };
}

function thriftOf(sheets: readonly TubeSheet[], pieces: readonly TubePiece[], staged: { readonly fromKits: number; readonly fewestFromKits: number; readonly leastStock: number; readonly proven: boolean }): Thrift {
  const sum = (of: (sheet: TubeSheet) => number): number => sheets.reduce((total, sheet) => total + sheet.times * of(sheet), 0);
  return {
    used: sum(() => 1),
    fromKits: staged.fromKits, fewestFromKits: staged.fewestFromKits,
    stock: sum(({ usable }) => usable),
    pieces: pieces.reduce((total, { length, count }) => total + length * count, 0),
    useful: sum(({ offCut, serves }) => (serves.length > 0 ? offCut : 0)),
    leastStock: staged.leastStock, proven: staged.proven,
  };
}
