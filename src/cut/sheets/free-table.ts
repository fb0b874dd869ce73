import { beside, emptyLayout, pieceLayout, type Layout } from './layout.ts';
import { rasterPlace, type Board } from './raster.ts';

/** What rectangles without defects are worth when each piece may be cut any number of times. */
export interface FreeTable {
  /** No layout in a rectangle this wide and high is worth more, and one is worth it. */
  worth(width: number, height: number): number;
  layout(width: number, height: number): Layout;
}

/** Figures closer than this are the same: the first found stays. */
const SAME = 1e-12;
/** How a rectangle's worth was found: nothing new, a piece, a cut. */
const [LEFT, BELOW, PIECE, CUT_X, CUT_Y] = [0, 1, 2, 3, 4];

/** Dynamic programming over all rectangles of the raster (Gilmore and Gomory 1966, Beasley 1985): exact. */
export function freeTable(board: Board, worths: readonly number[]): FreeTable {
  const { widths, heights, laid } = board;
  const high = heights.length;
  const best = new Float64Array(widths.length * high);
  const how = new Uint8Array(best.length);
  const which = new Int32Array(best.length);
  // Where a width less another is looked up again and again: once for all.
  const restX = rests(widths);
  const restY = rests(heights);
  const paying = laid.map((each, index) => ({ ...each, index, worth: worths[each.piece] ?? 0 })).filter(({ worth }) => worth > 0);
  for (let i = 0; i < widths.length; i += 1) {
    const width = widths[i] ?? 0;
    for (let j = 0; j < high; j += 1) {
      const height = heights[j] ?? 0;
      const place = i * high + j;
      let value = i > 0 ? best[place - high] ?? 0 : 0;
      let kind = LEFT;
      let argument = 0;
      const below = j > 0 ? best[place - 1] ?? 0 : 0;
      if (i === 0 || below > value + SAME) [value, kind] = [below, BELOW];
      for (const piece of paying) {
        if (piece.width <= width && piece.height <= height && piece.worth > value + SAME) [value, kind, argument] = [piece.worth, PIECE, piece.index];
      }
      for (let a = 1; a < i && 2 * (widths[a] ?? 0) <= width; a += 1) {
        const sum = (best[a * high + j] ?? 0) + (best[(restX[i]?.[a] ?? 0) * high + j] ?? 0);
        if (sum > value + SAME) [value, kind, argument] = [sum, CUT_X, a];
      }
      for (let b = 1; b < j && 2 * (heights[b] ?? 0) <= height; b += 1) {
        const sum = (best[i * high + b] ?? 0) + (best[i * high + (restY[j]?.[b] ?? 0)] ?? 0);
        if (sum > value + SAME) [value, kind, argument] = [sum, CUT_Y, b];
      }
      best[place] = value;
      how[place] = kind;
      which[place] = argument;
    }
  }
  const at = (i: number, j: number): Layout => {
    const place = i * high + j;
    if ((best[place] ?? 0) <= 0) return emptyLayout(worths.length);
    const argument = which[place] ?? 0;
    switch (how[place]) {
      case LEFT: return at(i - 1, j);
      case BELOW: return at(i, j - 1);
      case CUT_X: return beside('x', widths[argument] ?? 0, at(argument, j), at(restX[i]?.[argument] ?? 0, j));
      case CUT_Y: return beside('y', heights[argument] ?? 0, at(i, argument), at(i, restY[j]?.[argument] ?? 0));
      default: {
        const piece = laid[argument];
        return piece === undefined ? emptyLayout(worths.length) : pieceLayout(piece, worths[piece.piece] ?? 0, worths.length);
      }
    }
  };
  const places = (width: number, height: number): readonly [number, number] => [rasterPlace(widths, width), rasterPlace(heights, height)];
  return {
    worth: (width, height) => {
      const [i, j] = places(width, height);
      return best[i * high + j] ?? 0;
    },
    layout: (width, height) => at(...places(width, height)),
  };
}

/** For every raster point, the place of what is left beyond every smaller one. */
function rests(raster: Int32Array): readonly Int32Array[] {
  return Array.from(raster, (whole, i) => Int32Array.from({ length: i + 1 }, (_, a) => rasterPlace(raster, whole - (raster[a] ?? 0))));
}
