/** What the pieces in a stock piece are worth at most, and how many of each that takes. */
export interface Filled {
  readonly worth: number;
  readonly makes: readonly number[];
}

/** Sizes are whole numbers; at most `most` of each piece are taken. */
export interface Fillers {
  readonly sizes: readonly number[];
  readonly worths: readonly number[];
  readonly most: readonly number[];
}

/** Figures closer than this are the same: the first found stays, so that the answer hangs on no rounding. */
const SAME = 1e-12;

/** The filling worth the most of a stock piece with this much room. Exact, by dynamic programming over the room. */
export function fullest(fillers: Fillers, room: number): Filled {
  return filled(fillers, room, [room]);
}

/** The same where the room shrinks as the pieces in it become more: `room(n)` for n pieces. */
export function fullestByCount(fillers: Fillers, room: (count: number) => number): Filled {
  const widest = Math.max(0, room(1));
  const most = Math.floor(widest / Math.min(...fillers.sizes));
  const rooms = Array.from({ length: most + 1 }, (_, count) => Math.min(widest, Math.max(-1, room(count))));
  return filled(fillers, widest, rooms);
}

/**
 * Layer n of the table holds the best fillings with at most n pieces; a single layer counts no pieces. `rooms` has
 * the room of each layer, −1 where that many pieces leave none.
 */
function filled(fillers: Fillers, widest: number, rooms: readonly number[]): Filled {
  const { sizes, worths, most } = fillers;
  const wide = widest + 1;
  const counted = rooms.length > 1;
  const best = new Float64Array(wide * rooms.length);
  const kinds = sizes.map((_, kind) => kind).filter((kind) => (worths[kind] ?? 0) > 0 && (most[kind] ?? 0) > 0 && (sizes[kind] ?? 0) <= widest);
  const taken = kinds.map((kind) => addKind(best, { wide, layers: rooms.length, counted, size: sizes[kind] ?? 1, worth: worths[kind] ?? 0, most: most[kind] ?? 0 }));
  const layer = rooms.reduce((top, room, at) => (room >= 0 && (best[at * wide + room] ?? 0) > (best[top * wide + (rooms[top] ?? 0)] ?? 0) + SAME ? at : top), 0);
  const makes = sizes.map(() => 0);
  let place = layer * wide + (rooms[layer] ?? 0);
  const worth = best[place] ?? 0;
  for (let at = kinds.length - 1; at >= 0; at -= 1) {
    const kind = kinds[at] ?? 0;
    const count = taken[at]?.[place] ?? 0;
    makes[kind] = count;
    place -= count * ((sizes[kind] ?? 0) + (counted ? wide : 0));
  }
  return { worth, makes };
}

interface Kind {
  readonly wide: number;
  readonly layers: number;
  readonly counted: boolean;
  readonly size: number;
  readonly worth: number;
  readonly most: number;
}

/** Adds every number of pieces of one kind to the fillings so far; gives the number taken at each place. */
function addKind(best: Float64Array, { wide, layers, counted, size, worth, most }: Kind): Uint16Array {
  const before = best.slice();
  const taken = new Uint16Array(best.length);
  const limit = counted ? Math.min(most, layers - 1) : most;
  for (let count = 1; count <= limit && count * size < wide; count += 1) {
    const step = count * (size + (counted ? wide : 0));
    for (let layer = counted ? count : 0; layer < layers; layer += 1) {
      for (let at = layer * wide + count * size; at < (layer + 1) * wide; at += 1) {
        const value = (before[at - step] ?? 0) + count * worth;
        if (value > (best[at] ?? 0) + SAME) {
          best[at] = value;
          taken[at] = count;
        }
      }
    }
  }
  return taken;
}
