import type { Model, TubeNeed } from '../model/index.ts';
import type { TubeCutPattern, TubeCutPlan } from './types.ts';

interface Piece {
  readonly kind: TubeNeed['kind'];
  readonly length: number;
}

/**
 * Saws the tubes of an item from whole stock tubes: longest first, each into the first stock tube with room.
 * Plain fractions of a stock tube leave nothing over: the saw's cuts are shared among the pieces as long as
 * none comes out shorter than the joints' end play allows. Throws a RangeError when a piece is longer than the stock.
 */
export function planTubes(model: Model): TubeCutPlan {
  const { tube, joint, practice } = model.kit;
  const pieces = model.tubes.flatMap(({ kind, length, count }) => Array.from({ length: count }, (): Piece => ({ kind, length })))
    .sort((a, b) => b.length - a.length || a.kind.localeCompare(b.kind));
  const tooLong = pieces.find((piece) => piece.length > tube.length);
  if (tooLong !== undefined) {
    throw new RangeError(`a ${tooLong.kind} of ${tooLong.length} mm is longer than the stock tube of ${tube.length} mm`);
  }
  const stocks: Piece[][] = [];
  for (const piece of pieces) {
    const open = stocks.find((cut) => fits([...cut, piece], tube.length, practice.sawKerf, joint.endPlay));
    if (open === undefined) stocks.push([piece]);
    else open.push(piece);
  }
  return {
    stock: tube.length,
    kerf: practice.sawKerf,
    patterns: grouped(stocks, tube.length, practice.sawKerf),
    tubesUsed: stocks.length,
    fewest: Math.ceil(sum(pieces) / tube.length - 1e-9),
    shortest: Math.max(0, ...stocks.map((cut) => shortBy(cut, tube.length, practice.sawKerf))),
  };
}

const sum = (cut: readonly Piece[]): number => cut.reduce((total, piece) => total + piece.length, 0);

/** How much each piece loses when the saw's cuts do not fit beside the pieces, mm. */
const shortBy = (cut: readonly Piece[], stock: number, kerf: number): number =>
  Math.max(0, (sum(cut) + kerf * (cut.length - 1) - stock) / cut.length);

const fits = (cut: readonly Piece[], stock: number, kerf: number, endPlay: number): boolean =>
  sum(cut) <= stock + 1e-9 && shortBy(cut, stock, kerf) <= endPlay;

function grouped(stocks: readonly (readonly Piece[])[], stock: number, kerf: number): readonly TubeCutPattern[] {
  const nameOf = (cut: readonly Piece[]): string => cut.map((piece) => `${piece.kind} ${piece.length}`).join(' + ');
  const names = [...new Set(stocks.map(nameOf))];
  return names.map((name) => {
    const alike = stocks.filter((cut) => nameOf(cut) === name);
    const pieces = alike[0] ?? [];
    const left = stock - sum(pieces);
    return { count: alike.length, pieces, offCut: left < 1e-9 ? 0 : Math.max(0, left - kerf * pieces.length) };
  });
}
