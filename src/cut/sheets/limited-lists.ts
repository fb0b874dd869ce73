import type { FreeTable } from './free-table.ts';
import { beside, emptyLayout, pieceLayout, type Layout } from './layout.ts';
import { rasterPlace, type Board } from './raster.ts';

/** The best layouts found for a rectangle without defects, best first, none with more of a piece than there are. */
export type Lists = (width: number, height: number) => readonly Layout[];

const SAME = 1e-12;

/**
 * Layouts with at most `most` of each piece. For every rectangle of the raster the `keep` best with different pieces
 * are kept and joined: what is kept is right, the best may be missed. `free` bounds what a pair can be worth.
 */
export function limitedLists(board: Board, worths: readonly number[], most: readonly number[], keep: number, free: FreeTable): Lists {
  const { widths, heights, laid } = board;
  const high = heights.length;
  const lists: (readonly Layout[])[] = [];
  const pieces = laid.filter(({ piece }) => (worths[piece] ?? 0) > 0 && (most[piece] ?? 0) > 0)
    .map((each) => ({ ...each, layout: pieceLayout(each, worths[each.piece] ?? 0, worths.length) }));
  const listAt = (i: number, j: number): readonly Layout[] => lists[i * high + j] ?? [];
  for (let i = 0; i < widths.length; i += 1) {
    const width = widths[i] ?? 0;
    for (let j = 0; j < high; j += 1) {
      const height = heights[j] ?? 0;
      const best = bestOf(keep);
      for (const each of i > 0 ? listAt(i - 1, j) : []) best.add(each);
      for (const each of j > 0 ? listAt(i, j - 1) : []) best.add(each);
      for (const piece of pieces) if (piece.width <= width && piece.height <= height) best.add(piece.layout);
      for (let a = 1; a < i && 2 * (widths[a] ?? 0) <= width; a += 1) {
        const at = widths[a] ?? 0;
        if (free.worth(at, height) + free.worth(width - at, height) <= best.least() + SAME) continue;
        joinAll(best, 'x', at, listAt(a, j), listAt(rasterPlace(widths, width - at), j), most);
      }
      for (let b = 1; b < j && 2 * (heights[b] ?? 0) <= height; b += 1) {
        const at = heights[b] ?? 0;
        if (free.worth(width, at) + free.worth(width, height - at) <= best.least() + SAME) continue;
        joinAll(best, 'y', at, listAt(i, b), listAt(i, rasterPlace(heights, height - at)), most);
      }
      lists.push(best.list());
    }
  }
  const none = [emptyLayout(worths.length)];
  return (width, height) => {
    const list = listAt(rasterPlace(widths, width), rasterPlace(heights, height));
    return list.length === 0 ? none : list;
  };
}

function joinAll(best: Best, axis: 'x' | 'y', at: number, firsts: readonly Layout[], seconds: readonly Layout[], most: readonly number[]): void {
  for (const first of firsts) {
    for (const second of seconds) {
      if (first.worth + second.worth <= best.least() + SAME) break;
      if (first.makes.every((count, piece) => count + (second.makes[piece] ?? 0) <= (most[piece] ?? 0))) best.add(beside(axis, at, first, second));
    }
  }
}

/** The best few layouts with different pieces. */
export interface Best {
  readonly add: (layout: Layout) => void;
  /** What the last of a full list is worth, below which nothing is taken up; −∞ while there is room. */
  readonly least: () => number;
  readonly list: () => readonly Layout[];
}

export function bestOf(keep: number): Best {
  const kept: Layout[] = [];
  const least = (): number => (kept.length < keep ? -Infinity : kept.at(-1)?.worth ?? -Infinity);
  return {
    least,
    list: () => kept,
    add: (layout) => {
      if (layout.worth <= least() + SAME) return;
      if (kept.some((each) => Math.abs(each.worth - layout.worth) <= SAME && each.makes.every((count, piece) => count === layout.makes[piece]))) return;
      const place = kept.findIndex((each) => each.worth < layout.worth - SAME);
      kept.splice(place < 0 ? kept.length : place, 0, layout);
      if (kept.length > keep) kept.pop();
    },
  };
}
