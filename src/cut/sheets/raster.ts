import type { Axis, SheetPiece, SheetStock } from './types.ts';

/** Lengths are reckoned to this, mm; a piece may be this much larger than the room it is laid in. */
export const FINEST = 0.01;
const FORGIVEN = 0.05;

/** A piece as it may lie, with a kerf at its right and upper edge, in whole units of `FINEST`. */
export interface Laid {
  readonly piece: number;
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

/** Where no piece may begin before `toX`, `toY` and end, kerf counted, beyond `fromX`, `fromY`. */
export interface Blocked {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
}

/**
 * A panel on its raster. Every piece takes its kerf along, so the panel is a kerf larger each way: the same cutting
 * problem without kerf, exactly.
 */
export interface Board {
  readonly laid: readonly Laid[];
  readonly blocked: readonly Blocked[];
  readonly width: number;
  readonly height: number;
  /** Widths and heights of parts: sums of pieces (Herz 1972), those of them that cutting the whole can lead to. */
  readonly widths: Int32Array;
  readonly heights: Int32Array;
  /** Whether they are all there are, so that a part between any two cuts can be looked up. */
  readonly complete: boolean;
  /** Places of cuts on a panel with defects: sums counted from the left edge and from the right edge of every defect. */
  readonly cutsX: Int32Array;
  readonly cutsY: Int32Array;
}

/** A raster of at most so many parts is kept whole for a panel with defects. */
const COMPLETE = 6000;
/** Where it is not, so many places of cuts are tried. */
const FEW = 100;

const fine = (mm: number): number => Math.round(mm / FINEST);

export function boardOf(pieces: readonly SheetPiece[], stock: SheetStock, kerf: number): Board {
  const k = fine(kerf);
  const width = fine(stock.width) + k + fine(FORGIVEN);
  const height = fine(stock.height) + k + fine(FORGIVEN);
  const blocked = stock.defects.map((defect): Blocked => {
    const [fromX, toX] = blockedFrom(defect.x, defect.width, stock.width, width, k);
    const [fromY, toY] = blockedFrom(defect.y, defect.height, stock.height, height, k);
    return { fromX, toX, fromY, toY };
  });
  const widened = stock.defects.some((defect) => Math.min(defect.width, defect.height) < kerf);
  const laid = pieces.flatMap((piece, index) => waysToLie(piece, stock.grain).map((turned): Laid => ({
    piece: index, turned,
    width: fine(turned ? piece.height : piece.width) + k,
    height: fine(turned ? piece.width : piece.height) + k,
  }))).filter((each) => fitsSomewhere(each, width, height, blocked));
  const countOf = ({ piece }: Laid): number => pieces[piece]?.count ?? 0;
  const wide = laid.map((each) => [each.width, countOf(each)] as const);
  const high = laid.map((each) => [each.height, countOf(each)] as const);
  const widths = sumsUpTo(wide, width, [0]);
  const heights = sumsUpTo(high, height, [0]);
  const startsX = [0, ...blocked.map(({ toX }) => toX)];
  const startsY = [0, ...blocked.map(({ toY }) => toY)];
  const none = new Int32Array();
  const complete = blocked.length > 0 && !widened && widths.length * heights.length <= COMPLETE;
  return {
    laid, blocked, width, height, complete,
    widths: complete ? widths : reachedByCutting(widths),
    heights: complete ? heights : reachedByCutting(heights),
    cutsX: blocked.length === 0 ? none : complete ? sumsUpTo(wide, width, startsX) : sumsOfFew(wide, width, startsX),
    cutsY: blocked.length === 0 ? none : complete ? sumsUpTo(high, height, startsY) : sumsOfFew(high, height, startsY),
  };
}

/** Not turned, turned, or both. Along a grain the long side lies; a square and a piece that may not turn lie as they are. */
function waysToLie({ width, height, turn }: SheetPiece, grain: Axis | null): readonly boolean[] {
  if (width === height) return [false];
  if (grain !== null) {
    const turned = (width > height) !== (grain === 'x');
    return turned && !turn ? [] : [turned];
  }
  return turn ? [false, true] : [false];
}

/**
 * Where a defect blocks the board along one side. One that reaches the panel's edge reaches the board's; one narrower
 * than the kerf is taken as wide as the kerf, so that a cut has room in it.
 */
function blockedFrom(at: number, size: number, side: number, board: number, kerf: number): readonly [from: number, to: number] {
  const from = at <= FORGIVEN ? 0 : fine(at) + kerf;
  return [from, at + size >= side - FORGIVEN ? board : Math.max(fine(at + size), from)];
}

/** Whether a piece alone fits between the defects: if at all, then moved left and down to an edge of the panel or of a defect. */
function fitsSomewhere(piece: Laid, width: number, height: number, blocked: readonly Blocked[]): boolean {
  const xs = [0, ...blocked.map(({ toX }) => toX)].filter((x) => x >= 0 && x + piece.width <= width);
  const ys = [0, ...blocked.map(({ toY }) => toY)].filter((y) => y >= 0 && y + piece.height <= height);
  return xs.some((x) => ys.some((y) => blocked.every((defect) => !blocks(defect, { x1: x, x2: x + piece.width, y1: y, y2: y + piece.height }))));
}

/** A rectangle of a panel, in whole units of the raster. */
export interface Part {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

/** Whether pieces that fill the part would touch the defect. */
export const blocks = (defect: Blocked, part: Part): boolean =>
  part.x1 < defect.toX && part.x2 > defect.fromX && part.y1 < defect.toY && part.y2 > defect.fromY;

/** All sums of up to the given number of each size, from each start, that are at most `most`; sorted. */
function sumsUpTo(sizes: readonly (readonly [size: number, count: number])[], most: number, starts: readonly number[]): Int32Array {
  const reached = new Uint8Array(most + 1);
  for (const start of starts) if (start >= 0 && start <= most) reached[start] = 1;
  for (const [size, count] of sizes) {
    // How many of this size the place was reached with: fewer leaves more to go on with.
    const used = new Uint16Array(most + 1);
    for (let at = size; at <= most; at += 1) {
      if (reached[at] === 1) continue;
      const before = at - size;
      if (reached[before] === 1 && (used[before] ?? 0) < count) {
        reached[at] = 1;
        used[at] = (used[before] ?? 0) + 1;
      }
    }
  }
  const sums: number[] = [];
  reached.forEach((is, at) => { if (is === 1) sums.push(at); });
  return Int32Array.from(sums);
}

/** The starts and sums of one piece, two, three from each start, as long as they are not too many. */
function sumsOfFew(sizes: readonly (readonly [size: number, count: number])[], most: number, starts: readonly number[]): Int32Array {
  const distinct = [...new Set(sizes.map(([size]) => size))];
  const sums = new Set(starts.filter((start) => start >= 0 && start <= most));
  let last = [...sums];
  while (last.length > 0) {
    const next = [...new Set(last.flatMap((sum) => distinct.map((size) => sum + size)))].filter((sum) => sum <= most && !sums.has(sum)).sort((a, b) => a - b);
    if (sums.size + next.length > FEW) break;
    for (const sum of next) sums.add(sum);
    last = next;
  }
  return Int32Array.from(sums).sort();
}

/**
 * Of all sums, those that come up when the whole is cut in two, the halves again, and so on: of two halves the
 * smaller is a sum, the larger is what is left, down to the next sum. The others are never looked up.
 */
function reachedByCutting(sums: Int32Array): Int32Array {
  const reached = new Set([0, sums.length - 1]);
  // A set is walked through in the order of adding, those added on the way included.
  for (const whole of reached) {
    const size = sums[whole] ?? 0;
    for (let half = 1; half < whole && 2 * (sums[half] ?? 0) <= size; half += 1) {
      reached.add(half);
      reached.add(rasterPlace(sums, size - (sums[half] ?? 0)));
    }
  }
  return Int32Array.from([...reached].map((place) => sums[place] ?? 0)).sort();
}

/** Place of the largest raster point that is at most `size`. */
export function rasterPlace(raster: Int32Array, size: number): number {
  let [low, high] = [0, raster.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((raster[middle] ?? 0) <= size) low = middle;
    else high = middle - 1;
  }
  return low;
}
