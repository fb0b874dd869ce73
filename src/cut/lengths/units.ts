import { greatestCommon } from '../cover/index.ts';
import type { LengthPiece, LengthStock, SawRules } from './types.ts';

/** Lengths are reckoned to this, mm. */
const FINEST = 0.01;
/** A piece of a third of a tube, rounded, still fits three times: far less than a pencil line, mm. */
const FORGIVEN = 0.05;

/** Lengths as whole numbers of a unit that divides all pieces. */
export interface Units {
  readonly pieces: readonly number[];
  /** How much of a stock piece `count` pieces may fill: less the more saw cuts they need. */
  readonly room: (stock: number, count: number) => number;
  /** Whether the number of pieces changes the room. */
  readonly roomByCount: boolean;
  readonly mm: number;
}

/**
 * Between n pieces are n − 1 cuts. Where they do not fit beside the pieces, each piece gives up its share, as
 * long as that stays within the play: n pieces may fill the stock's length, and at most n times the play less the
 * cuts more than that. With a play of the kerf or more a cut never costs a piece; without play this is the usual
 * rule that a piece with its cut takes its length and the kerf (and the stock is a kerf longer).
 */
export function inUnits(pieces: readonly LengthPiece[], stocks: readonly LengthStock[], { kerf, play }: SawRules): Units {
  const fine = (mm: number): number => Math.round(mm / FINEST);
  const lengths = pieces.map(({ length }) => fine(length));
  const perPiece = fine(kerf) - fine(play);
  const roomByCount = perPiece > 0 && play > 0;
  // With no play every piece takes its kerf along, so that one knapsack does for any number of pieces.
  const along = perPiece > 0 && !roomByCount ? perPiece : 0;
  const taken = lengths.map((length) => length + along);
  const unit = taken.reduce(greatestCommon, 0) || 1;
  const ends = stocks.map(({ length }) => fine(length));
  const room = (stock: number, count: number): number => {
    const whole = ends[stock] ?? 0;
    const most = along > 0 ? whole + fine(kerf) : roomByCount ? Math.min(whole, whole + fine(kerf) - count * perPiece) : whole;
    return Math.floor((most + fine(FORGIVEN)) / unit);
  };
  return { pieces: taken.map((length) => length / unit), room, roomByCount, mm: unit * FINEST };
}
