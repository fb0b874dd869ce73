import type { Way } from '../cover/index.ts';
import { withAtMost, type Layout } from './layout.ts';

/** Remembers how the pieces of every way that was found lie. */
export interface LayoutBook {
  readonly enter: (stock: number, layout: Layout) => Way;
  /** The layout of a way, or of one with more in it, less what is too many; null where none is known. */
  readonly layoutOf: (way: Way) => Layout | null;
}

export function layoutBook(): LayoutBook {
  const known: { readonly way: Way; readonly layout: Layout }[] = [];
  const places = new Map<string, number>();
  const nameOf = ({ stock, makes }: Way): string => `${stock}:${makes.join(',')}`;
  return {
    enter: (stock, layout) => {
      const way: Way = { stock, makes: layout.makes };
      if (!places.has(nameOf(way))) {
        places.set(nameOf(way), known.length);
        known.push({ way, layout });
      }
      return way;
    },
    layoutOf: (way) => {
      const same = known[places.get(nameOf(way)) ?? -1];
      if (same !== undefined) return same.layout;
      const wider = known.find((each) => each.way.stock === way.stock && way.makes.every((count, piece) => count <= (each.way.makes[piece] ?? 0)));
      return wider === undefined ? null : withAtMost(wider.layout, way.makes);
    },
  };
}
