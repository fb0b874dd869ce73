import type { Way, Wishes } from '../cover/index.ts';
import type { LengthPiece, LengthStock, SawRules } from './types.ts';

/** Shares a worker finds by halving a string, and thirds (common practice, no source). */
const PLAIN = [1 / 2, 1 / 4, 3 / 4, 1 / 3, 2 / 3, 1];
/** How wishes weigh, ours: a plain fraction against an off-cut as long as the stock, and a further page to cut by. */
const PLAIN_NICETY = 0.1;
const PER_WAY = 0.3;
/** A tube sawn into pieces of one length needs the stop set but once. */
const ALIKE_NICETY = 0.05;

/**
 * Halves, quarters and thirds of a stock piece are nice; so are long off-cuts, by the square of their share, so that
 * one long off-cut is better than two short ones. An off-cut shorter than every piece is no use. A tube sawn into
 * pieces of one length is nice too.
 */
export function lengthWishes(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], { play }: SawRules): Wishes {
  const longest = Math.max(1, ...stocks.map(({ length }) => length));
  const shortest = Math.min(...pieces.map(({ length }) => length));
  const nicety = ({ stock, makes }: Way): number => {
    const whole = stocks[stock]?.length ?? 0;
    const left = whole - makes.reduce((sum, count, piece) => sum + count * (pieces[piece]?.length ?? 0), 0);
    const plain = makes.every((count, piece) => count === 0 || PLAIN.some((share) => Math.abs((pieces[piece]?.length ?? 0) - share * whole) <= play + 1e-9));
    const alike = makes.filter((count) => count > 0).length === 1;
    return (left >= shortest ? (left / longest) ** 2 : 0) + (plain ? PLAIN_NICETY : 0) + (alike ? ALIKE_NICETY : 0);
  };
  return { nicety, perWay: PER_WAY };
}
