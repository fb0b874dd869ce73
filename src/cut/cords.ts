/** So many whole cords, each cut into these pieces, the longest first, mm. */
export interface CordPattern {
  readonly count: number;
  readonly pieces: readonly number[];
}

/**
 * How these pieces are cut from whole cords of a length, mm: the longest first, each from the fullest cord that still holds it. So few
 * pieces fit on a cord that this comes to the fewest but for rare sets, and then to one more. A piece longer than a cord takes one of its own.
 */
export function cordPatterns(pieces: readonly number[], length: number): readonly CordPattern[] {
  const cords: { readonly pieces: number[]; rest: number }[] = [];
  for (const piece of pieces.toSorted((a, b) => b - a)) {
    const [fitting] = cords.filter(({ rest }) => rest >= piece).sort((a, b) => a.rest - b.rest);
    if (fitting === undefined) cords.push({ pieces: [piece], rest: length - piece });
    else {
      fitting.pieces.push(piece);
      fitting.rest -= piece;
    }
  }
  const keys = cords.map((cord) => cord.pieces.join());
  return cords.flatMap((cord, index) => (keys.indexOf(keys[index] ?? '') === index ? [{ count: keys.filter((key) => key === keys[index]).length, pieces: cord.pieces }] : []));
}

/** How many whole cords give these pieces, mm. */
export const cordsFor = (pieces: readonly number[], length: number): number => cordPatterns(pieces, length).reduce((sum, { count }) => sum + count, 0);
