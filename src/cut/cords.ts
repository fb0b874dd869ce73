/**
 * How many whole cords give these pieces, mm: the longest first, each from the fullest cord that still holds it. So few
 * pieces fit on a cord that this comes to the fewest but for rare sets, and then to one more. A piece longer than a cord takes one of its own.
 */
export function cordsFor(pieces: readonly number[], length: number): number {
  const rests: number[] = [];
  for (const piece of pieces.toSorted((a, b) => b - a)) {
    const fitting = rests.map((rest, index) => ({ rest, index })).filter(({ rest }) => rest >= piece).sort((a, b) => a.rest - b.rest)[0];
    if (fitting === undefined) rests.push(length - piece);
    else rests[fitting.index] = fitting.rest - piece;
  }
  return rests.length;
}
