import { bestOf, type Best, type Lists } from './limited-lists.ts';
import { beside, emptyLayout, type Layout } from './layout.ts';
import { blocks, type Blocked, type Board, type Part } from './raster.ts';

export interface AroundDefects {
  /** Best first, never empty. */
  readonly layouts: readonly Layout[];
  /** Whether every cut that could help was tried. */
  readonly whole: boolean;
}

/** Parts with a defect that are cut at every place of the raster; after so many only along the defects' edges. */
const PARTS = 400;
const SAME = 1e-12;

interface Halves {
  readonly axis: 'x' | 'y';
  readonly first: Part;
  readonly second: Part;
  /** Whether a defect that reaches right across lies between the two. */
  readonly crossed?: boolean;
}

/**
 * The best layouts of a panel with defects. Parts without a defect are laid by `clear`, as if cut from a whole panel.
 * A part that a defect crosses from edge to edge falls into two beside it. Any other part with a defect is cut in
 * two, at the defect's edges, and at sums of pieces from its own edge or from a defect's far edge: any layout can be
 * moved there. `worth` bounds what a rectangle of a size can hold. With one layout kept, any number of pieces
 * allowed and every cut tried this is exact.
 */
export function layoutsAroundDefects(board: Board, clear: Lists, worth: (width: number, height: number) => number, keep: number, most: readonly number[]): AroundDefects {
  const known = new Map<string, readonly Layout[]>();
  let [visited, whole] = [0, true];
  const worthOf = (part: Part): number => (part.x2 <= part.x1 || part.y2 <= part.y1 ? 0 : worth(part.x2 - part.x1, part.y2 - part.y1));
  const layoutsOf = (part: Part): readonly Layout[] => {
    if (worthOf(part) <= SAME) return [emptyLayout(most.length)];
    const blocked = board.blocked.filter((each) => blocks(each, part));
    if (blocked.length === 0) return clear(part.x2 - part.x1, part.y2 - part.y1);
    const key = `${part.x1},${part.x2},${part.y1},${part.y2}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    visited += 1;
    const best = bestOf(keep);
    best.add(emptyLayout(most.length));
    const across = crossed(blocked, part);
    const edges = across ?? alongEdges(blocked, part);
    for (const halves of edges) join(best, halves);
    if (across === null) {
      if (visited <= PARTS) for (const halves of byWorth(everywhere(board, part))) join(best, halves);
      else whole = false;
    }
    known.set(key, best.list());
    return best.list();
  };
  const byWorth = (all: readonly Halves[]): readonly Halves[] => all
    .map((halves) => ({ halves, atMost: worthOf(halves.first) + worthOf(halves.second) }))
    .sort((a, b) => b.atMost - a.atMost).map(({ halves }) => halves);
  const join = (best: Best, { axis, first, second, crossed: between = false }: Halves): void => {
    const atMost = worthOf(second);
    if (worthOf(first) + atMost <= best.least() + SAME) return;
    for (const one of layoutsOf(first)) {
      if (one.worth + atMost <= best.least() + SAME) break;
      for (const other of layoutsOf(second)) {
        if (one.worth + other.worth <= best.least() + SAME) break;
        if (one.makes.every((count, piece) => count + (other.makes[piece] ?? 0) <= (most[piece] ?? 0))) {
          const [at, ends] = axis === 'x' ? [second.x1 - first.x1, first.x2 - first.x1] : [second.y1 - first.y1, first.y2 - first.y1];
          best.add(beside(axis, at, one, other, true, between ? ends : undefined));
        }
      }
    }
  };
  return { layouts: layoutsOf({ x1: 0, x2: board.width, y1: 0, y2: board.height }), whole };
}

/** The two parts beside a defect that reaches right across: no piece lies on both sides of it. Null where none does. */
function crossed(blocked: readonly Blocked[], part: Part): readonly Halves[] | null {
  const upright = blocked.find(({ fromY, toY }) => fromY <= part.y1 && toY >= part.y2);
  if (upright !== undefined) return [{ axis: 'x', first: { ...part, x2: Math.max(part.x1, upright.fromX) }, second: { ...part, x1: Math.min(part.x2, upright.toX) }, crossed: true }];
  const level = blocked.find(({ fromX, toX }) => fromX <= part.x1 && toX >= part.x2);
  return level === undefined ? null : [{ axis: 'y', first: { ...part, y2: Math.max(part.y1, level.fromY) }, second: { ...part, y1: Math.min(part.y2, level.toY) }, crossed: true }];
}

/** Cuts along the edges of the defects that lie in a part. */
const alongEdges = (blocked: readonly Blocked[], part: Part): readonly Halves[] => blocked.flatMap(({ fromX, toX, fromY, toY }) => [
  ...[fromX, toX].filter((at) => at > part.x1 && at < part.x2).map((at): Halves => ({ axis: 'x', first: { ...part, x2: at }, second: { ...part, x1: at } })),
  ...[fromY, toY].filter((at) => at > part.y1 && at < part.y2).map((at): Halves => ({ axis: 'y', first: { ...part, y2: at }, second: { ...part, y1: at } })),
]);

/** Cuts at every place of the raster. */
const everywhere = ({ cutsX, cutsY }: Board, part: Part): readonly Halves[] => [
  ...Array.from(cutsX).filter((at) => at > part.x1 && at < part.x2).map((at): Halves => ({ axis: 'x', first: { ...part, x2: at }, second: { ...part, x1: at } })),
  ...Array.from(cutsY).filter((at) => at > part.y1 && at < part.y2).map((at): Halves => ({ axis: 'y', first: { ...part, y2: at }, second: { ...part, y1: at } })),
];
