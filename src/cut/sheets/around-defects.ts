import { bestOf } from './limited-lists.ts';
import type { Lists } from './limited-lists.ts';
import { beside, emptyLayout, type Layout } from './layout.ts';
import { blocks, type Board, type Part } from './raster.ts';

export interface AroundDefects {
  /** Best first, never empty. */
  readonly layouts: readonly Layout[];
  /** Whether every cut that could help was tried. */
  readonly whole: boolean;
}

/** Parts with a defect that are looked at before the search keeps to the most promising cuts. */
const PARTS = 1500;
const PROMISING = 3;
const SAME = 1e-12;

/**
 * The best layouts of a panel with defects. Parts without a defect are laid by `clear`, as if cut from a whole panel;
 * a part with one is cut in two, at sums of pieces from its own edge or from a defect's far edge: any layout can be
 * moved there. `worth` bounds what a rectangle of a size can hold. With one layout kept and any number of pieces
 * allowed this is exact.
 */
export function layoutsAroundDefects(board: Board, clear: Lists, worth: (width: number, height: number) => number, keep: number, most: readonly number[]): AroundDefects {
  const known = new Map<string, readonly Layout[]>();
  let whole = true;
  const layoutsOf = (part: Part): readonly Layout[] => {
    const width = part.x2 - part.x1;
    const height = part.y2 - part.y1;
    const blocked = board.blocked.filter((each) => blocks(each, part));
    if (blocked.length === 0) return clear(width, height);
    if (worth(width, height) <= SAME) return [emptyLayout(most.length)];
    const key = `${part.x1},${part.x2},${part.y1},${part.y2}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    if (known.size > PARTS) whole = false;
    const best = bestOf(keep);
    best.add(emptyLayout(most.length));
    const all = halvings(board, part)
      .map((half) => ({ ...half, most: worth(half.first.x2 - half.first.x1, half.first.y2 - half.first.y1) + worth(half.second.x2 - half.second.x1, half.second.y2 - half.second.y1) }))
      .sort((a, b) => b.most - a.most);
    for (const { axis, first, second, most: atMost } of known.size > PARTS ? all.slice(0, PROMISING) : all) {
      if (atMost <= best.least() + SAME) break;
      for (const one of layoutsOf(first)) {
        if (one.worth + worth(second.x2 - second.x1, second.y2 - second.y1) <= best.least() + SAME) break;
        for (const other of layoutsOf(second)) {
          if (one.worth + other.worth <= best.least() + SAME) break;
          if (one.makes.every((count, piece) => count + (other.makes[piece] ?? 0) <= (most[piece] ?? 0))) {
            best.add(beside(axis, axis === 'x' ? first.x2 - first.x1 : first.y2 - first.y1, one, other, true));
          }
        }
      }
    }
    known.set(key, best.list());
    return best.list();
  };
  return { layouts: layoutsOf({ x1: 0, x2: board.width, y1: 0, y2: board.height }), whole };
}

/** Every way to cut a part in two. */
function halvings({ cutsX, cutsY }: Board, part: Part): readonly { readonly axis: 'x' | 'y'; readonly first: Part; readonly second: Part }[] {
  return [
    ...Array.from(cutsX).filter((at) => at > part.x1 && at < part.x2)
      .map((at) => ({ axis: 'x' as const, first: { ...part, x2: at }, second: { ...part, x1: at } })),
    ...Array.from(cutsY).filter((at) => at > part.y1 && at < part.y2)
      .map((at) => ({ axis: 'y' as const, first: { ...part, y2: at }, second: { ...part, y1: at } })),
  ];
}
