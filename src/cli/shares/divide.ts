/** A size of an item, the key of its content, and the work that is expected of it. */
export interface Piece {
  readonly item: string;
  readonly size: string;
  readonly key: string;
  readonly work: number;
}

/**
 * Deals pieces out so that shares take about as long: the longest first, each to the share that has the least. Of equal
 * ones the content's key decides, so that everybody who has the same content deals in the same way.
 */
export function divided<One extends Piece>(pieces: readonly One[], count: number): readonly (readonly One[])[] {
  const shares = Array.from({ length: count }, () => ({ pieces: [] as One[], work: 0 }));
  const dealt = [...pieces].sort((one, other) => other.work - one.work || (one.key < other.key ? -1 : 1));
  for (const piece of dealt) {
    const least = shares.reduce((found, share) => (share.work < found.work ? share : found));
    least.pieces.push(piece);
    least.work += piece.work;
  }
  return shares.map(({ pieces: own }) => own);
}
