import type { Laid } from './raster.ts';
import type { Axis } from './types.ts';

/** Pieces laid in a rectangle so that straight cuts from edge to edge part them; sizes in whole units of the raster. */
export interface Layout {
  readonly worth: number;
  /** How many of each piece. */
  readonly makes: readonly number[];
  /** Null where nothing lies. */
  readonly node: LayoutNode | null;
}

export interface Placed {
  readonly laid: Laid;
  readonly x: number;
  readonly y: number;
}

export type LayoutNode =
  | { readonly kind: 'piece'; readonly laid: Laid }
  /** Pieces laid anywhere: each with its lower left corner, in whole units of the raster. */
  | { readonly kind: 'loose'; readonly placed: readonly Placed[] }
  /**
   * `at` is where the second part begins, from the rectangle's left or lower edge. A fixed one may not be moved up.
   * Beside a defect that crosses the rectangle, the first part ends at `ends`, before the defect.
   */
  | { readonly kind: 'cut'; readonly axis: Axis; readonly at: number; readonly first: Layout; readonly second: Layout; readonly fixed: boolean; readonly ends?: number };

export const emptyLayout = (pieces: number): Layout => ({ worth: 0, makes: Array.from({ length: pieces }, () => 0), node: null });

export const pieceLayout = (laid: Laid, worth: number, pieces: number): Layout => ({
  worth, makes: Array.from({ length: pieces }, (_, piece) => (piece === laid.piece ? 1 : 0)), node: { kind: 'piece', laid },
});

export const looseLayout = (placed: readonly Placed[], worth: number, pieces: number): Layout => ({
  worth, makes: Array.from({ length: pieces }, (_, piece) => placed.filter(({ laid }) => laid.piece === piece).length),
  node: placed.length === 0 ? null : { kind: 'loose', placed },
});

/** Two layouts side by side or one over the other. */
export function beside(axis: Axis, at: number, first: Layout, second: Layout, fixed = false, ends?: number): Layout {
  if (first.node === null && second.node === null) return first;
  return {
    worth: first.worth + second.worth,
    makes: first.makes.map((count, piece) => count + (second.makes[piece] ?? 0)),
    node: { kind: 'cut', axis, at, first, second, fixed, ...(ends === undefined ? {} : { ends }) },
  };
}

/** A layout with at most so many of each piece: of the others the last ones laid are left out. */
export function withAtMost(layout: Layout, most: readonly number[]): Layout {
  return without(layout, layout.makes.map((count, piece) => Math.max(0, count - (most[piece] ?? 0))));
}

function without(layout: Layout, spare: number[]): Layout {
  const { node } = layout;
  if (node === null) return layout;
  if (node.kind === 'piece') {
    const left = spare[node.laid.piece] ?? 0;
    if (left === 0) return layout;
    spare[node.laid.piece] = left - 1;
    return emptyLayout(layout.makes.length);
  }
  if (node.kind === 'loose') {
    const placed = node.placed.toReversed().filter(({ laid: { piece } }) => {
      const left = spare[piece] ?? 0;
      spare[piece] = Math.max(0, left - 1);
      return left === 0;
    }).toReversed();
    return looseLayout(placed, 0, layout.makes.length);
  }
  const second = without(node.second, spare);
  return beside(node.axis, node.at, without(node.first, spare), second, node.fixed, node.ends);
}
