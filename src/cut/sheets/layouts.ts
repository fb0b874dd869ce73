import { layoutsAroundDefects } from './around-defects.ts';
import { freeTable, type FreeTable } from './free-table.ts';
import type { Layout } from './layout.ts';
import { limitedLists } from './limited-lists.ts';
import type { Board } from './raster.ts';

/** Layouts kept for a part of a panel when there are not pieces enough for the best. */
const KEEP = 4;

export interface Found {
  /** Best first. */
  readonly layouts: readonly Layout[];
  /** No layout is worth more, however many of each piece there were. */
  readonly worth: number;
}

/** The best layouts found on a board at these prices, with at most `most` of each piece. */
export function bestLayouts(board: Board, prices: readonly number[], most: readonly number[]): Found {
  const free = freeTable(board, prices);
  const any = anyNumber(board, free, prices);
  const worth = any.whole ? any.layouts[0]?.worth ?? 0 : free.worth(board.width, board.height);
  const fits = any.layouts.every(({ makes }) => makes.every((count, piece) => count <= (most[piece] ?? 0)));
  return { layouts: fits ? any.layouts : limited(board, free, prices, most), worth };
}

function anyNumber(board: Board, free: FreeTable, prices: readonly number[]): { readonly layouts: readonly Layout[]; readonly whole: boolean } {
  if (board.blocked.length === 0) return { layouts: [free.layout(board.width, board.height)], whole: true };
  const found = layoutsAroundDefects(board, (width, height) => [free.layout(width, height)], free.worth, 1, prices.map(() => Infinity));
  return { layouts: found.layouts, whole: found.whole && board.complete };
}

function limited(board: Board, free: FreeTable, prices: readonly number[], most: readonly number[]): readonly Layout[] {
  const lists = limitedLists(board, prices, most, KEEP, free);
  if (board.blocked.length === 0) return lists(board.width, board.height);
  return layoutsAroundDefects(board, lists, free.worth, KEEP, most).layouts;
}
