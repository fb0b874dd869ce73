import type { Units } from './units.ts';

/**
 * Every way to fill a stock piece, also those with room left, at most `demand` of each piece; null when there are
 * more than `most`.
 */
export function allWays({ pieces, room }: Units, stock: number, demand: readonly number[], most: number): readonly (readonly number[])[] | null {
  const found: (readonly number[])[] = [];
  const makes = pieces.map(() => 0);
  const add = (piece: number, count: number, filled: number): boolean => {
    const size = pieces[piece];
    if (size === undefined) {
      if (count > 0) found.push([...makes]);
      return found.length <= most;
    }
    for (let more = 0; more <= (demand[piece] ?? 0) && filled + more * size <= room(stock, Math.max(1, count + more)); more += 1) {
      makes[piece] = more;
      if (!add(piece + 1, count + more, filled + more * size)) return false;
    }
    makes[piece] = 0;
    return true;
  };
  return add(0, 0, 0) ? found : null;
}
