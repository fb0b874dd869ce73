import { beside, emptyLayout, pieceLayout, type Layout } from './layout.ts';
import type { Board, Laid } from './raster.ts';
import type { Axis } from './types.ts';

/** Pieces of up to so many kinds are tried in every turning; of more, all lying, all standing and all unturned. */
const KINDS = 4;

/**
 * Plain layouts of exactly these pieces on a board without defects: strips across it, in them columns, in them
 * pieces, largest first; either way round, in several orders and turnings. None where no such layout holds all pieces.
 */
export function stripLayouts(board: Board, makes: readonly number[]): readonly Layout[] {
  return turnings(board, makes).flatMap((laid) => (['x', 'y'] as const).flatMap((axis) => orders(axis).flatMap((order) => {
    const pieces = laid.flatMap((each) => Array.from({ length: makes[each.piece] ?? 0 }, () => each)).sort(order);
    const layout = inStrips(board, pieces, axis, makes.length);
    return layout === null ? [] : [layout];
  })));
}

/** One way to lie for every kind of piece that is made. */
function turnings({ laid }: Board, makes: readonly number[]): readonly (readonly Laid[])[] {
  const kinds = makes.flatMap((count, piece) => (count > 0 ? [laid.filter((each) => each.piece === piece)] : []));
  if (kinds.some((ways) => ways.length === 0)) return [];
  if (kinds.length <= KINDS) return kinds.reduce<readonly (readonly Laid[])[]>((all, ways) => all.flatMap((before) => ways.map((way) => [...before, way])), [[]]);
  const policies: readonly ((ways: readonly Laid[]) => Laid | undefined)[] = [
    (ways) => ways[0],
    (ways) => ways.find(({ width, height }) => width >= height) ?? ways[0],
    (ways) => ways.find(({ width, height }) => width <= height) ?? ways[0],
  ];
  return policies.map((policy) => kinds.flatMap((ways) => policy(ways) ?? []));
}

type Order = (a: Laid, b: Laid) => number;

const orders = (axis: Axis): readonly Order[] => {
  const [along, across] = axis === 'y' ? ['width', 'height'] as const : ['height', 'width'] as const;
  return [
    (a, b) => b[across] - a[across] || b[along] - a[along] || a.piece - b.piece,
    (a, b) => b.width * b.height - a.width * a.height || a.piece - b.piece,
    (a, b) => b[along] - a[along] || b[across] - a[across] || a.piece - b.piece,
  ];
};

interface Column {
  readonly along: number;
  across: number;
  readonly pieces: Laid[];
}

interface Strip {
  readonly across: number;
  along: number;
  readonly columns: Column[];
}

/** Strips stacked along `axis`. Each piece goes on a column it fits on, else beside, else begins a strip. */
function inStrips(board: Board, pieces: readonly Laid[], axis: Axis, kinds: number): Layout | null {
  const [along, across] = axis === 'y' ? ['width', 'height'] as const : ['height', 'width'] as const;
  const strips: Strip[] = [];
  for (const piece of pieces) {
    const column = strips.flatMap((strip) => strip.columns.filter((each) => each.along === piece[along] && each.across + piece[across] <= strip.across))[0];
    if (column !== undefined) {
      column.pieces.push(piece);
      column.across += piece[across];
      continue;
    }
    let strip = strips.find((each) => piece[across] <= each.across && each.along + piece[along] <= board[along]);
    if (strip === undefined) {
      strip = { across: piece[across], along: 0, columns: [] };
      strips.push(strip);
    }
    strip.along += piece[along];
    strip.columns.push({ along: piece[along], across: piece[across], pieces: [piece] });
  }
  const other: Axis = axis === 'y' ? 'x' : 'y';
  if (strips.some(({ along: wide }) => wide > board[along]) || strips.reduce((sum, strip) => sum + strip.across, 0) > board[across]) return null;
  return stacked(axis, strips.map((strip) => ({
    size: strip.across,
    layout: stacked(other, strip.columns.map((column) => ({
      size: column.along,
      layout: stacked(axis, column.pieces.map((piece) => ({ size: piece[across], layout: pieceLayout(piece, 0, kinds) })), kinds),
    })), kinds),
  })), kinds);
}

function stacked(axis: Axis, parts: readonly { readonly size: number; readonly layout: Layout }[], kinds: number): Layout {
  const [first, ...rest] = parts;
  if (first === undefined) return emptyLayout(kinds);
  return rest.length === 0 ? first.layout : beside(axis, first.size, first.layout, stacked(axis, rest, kinds));
}
