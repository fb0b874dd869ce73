import type { Model, TubeNeed } from '../model/index.ts';
import { planFew, planLengths, type LengthStock, type LengthWay } from './lengths/index.ts';
import { loadSolver } from './solver.ts';
import { letterOf } from './order/needs.ts';
import type { LetteredPiece as Piece, TubeCutPattern, TubeCutPlan } from './types.ts';

/**
 * Saws the tubes of one item from as few whole stock tubes as can be, as an order of nothing else is sawn (see
 * `planLengths`): of equally short plans one with plain fractions, long off-cuts and few different ways. The saw's cuts
 * are shared among the pieces as long as none comes out shorter than the joints' end play allows. Lengths in mm. The
 * solver is loaded only for an item with very many tubes of many lengths.
 * Throws a RangeError when a piece is longer than the stock.
 */
export async function planTubes(model: Model): Promise<TubeCutPlan> {
  const { tube, joint, practice } = model.kit;
  const piles = pilesOf(model.tubes);
  const tooLong = piles.flat().find((piece) => piece.length > tube.length);
  if (tooLong !== undefined) {
    throw new RangeError(`a ${tooLong.kind} of ${tooLong.length} mm is longer than the stock tube of ${tube.length} mm`);
  }
  const saw = { kerf: practice.sawKerf, play: joint.endPlay };
  const wanted = piles.map(([first, ...others]) => ({ length: first.length, count: 1 + others.length }));
  const whole: readonly LengthStock[] = [{ length: tube.length, count: null, cost: 1 }];
  const { ways, bound } = planFew(wanted, whole, saw) ?? planLengths(wanted, whole, saw, await loadSolver());
  const stocks = dealtOut(piles, ways);
  return {
    stock: tube.length,
    kerf: saw.kerf,
    patterns: grouped(stocks, tube.length, saw.kerf),
    tubesUsed: stocks.length,
    fewest: Math.ceil(bound - NEAR_WHOLE),
    shortest: Math.max(0, ...stocks.map((cut) => shortBy(cut, tube.length, saw.kerf))),
  };
}

/** A bound as near as this to a whole number of tubes is that number. */
const NEAR_WHOLE = 1e-6;
/** Lengths closer than this are sawn alike, mm. */
const ALIKE = 0.01;
/** A printed length is that of a tube as near as this, mm. */
const SAME = 0.06;

type Pile = readonly [Piece, ...Piece[]];

/** All pieces in piles of one length, the longest first, each pile by kind. */
function pilesOf(tubes: readonly TubeNeed[]): readonly Pile[] {
  const pieces = tubes.flatMap(({ kind, length, count }) => Array.from({ length: count }, (): Piece => ({ kind, length, letter: '' })))
    .sort((a, b) => b.length - a.length || a.kind.localeCompare(b.kind));
  const piles = pieces.reduce<readonly Pile[]>((piles, piece) => {
    const last = piles.at(-1);
    return last !== undefined && last[0].length - piece.length < ALIKE ? [...piles.slice(0, -1), [...last, piece]] : [...piles, [piece]];
  }, []);
  const lettered = (piece: Piece, place: number): Piece => ({ ...piece, letter: letterOf(place) });
  return piles.map(([first, ...others], place): Pile => [lettered(first, place), ...others.map((piece) => lettered(piece, place))]);
}

/** Tells the letter that is written on every tube of a length, mm; null where the item has none of it. */
export function tubeLetters({ tubes }: Pick<Model, 'tubes'>): (length: number) => string | null {
  const piles = pilesOf(tubes);
  return (length) => piles.find(([piece]) => Math.abs(piece.length - length) < SAME)?.[0].letter ?? null;
}

export const tubeLetter = (model: Pick<Model, 'tubes'>, length: number): string | null => tubeLetters(model)(length);

/** The pieces of each stock tube, the longest first; the tubes with the longest pieces first. */
function dealtOut(piles: readonly Pile[], ways: readonly LengthWay[]): readonly (readonly Piece[])[] {
  const makesOfTubes = ways.flatMap(({ times, makes }) => Array.from({ length: times }, () => makes)).sort(longerFirst);
  return makesOfTubes.map((makes, tube) => piles.flatMap((pile, index) => {
    const taken = makesOfTubes.slice(0, tube).reduce((sum, earlier) => sum + (earlier[index] ?? 0), 0);
    return pile.slice(taken, taken + (makes[index] ?? 0));
  }));
}

/** More of the longest pieces comes first, then more of the next. */
function longerFirst(one: readonly number[], other: readonly number[]): number {
  const place = one.findIndex((count, index) => count !== other[index]);
  return place < 0 ? 0 : (other[place] ?? 0) - (one[place] ?? 0);
}

const sum = (cut: readonly Piece[]): number => cut.reduce((total, piece) => total + piece.length, 0);

/** How much each piece loses when the saw's cuts do not fit beside the pieces, mm. */
const shortBy = (cut: readonly Piece[], stock: number, kerf: number): number =>
  Math.max(0, (sum(cut) + kerf * (cut.length - 1) - stock) / cut.length);

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
