import { luminance } from './colour.ts';
import { paint, type Shape } from './painter.ts';

/** A pictogram as dots, row by row with a rim of paper; true is dark. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  /** Dots in one unit of the pictograms' grid. */
  readonly perUnit: number;
  readonly dark: Uint8Array;
}

/** Colours darker than this print as ink, lighter ones as ground: panel tint and safety yellow are ground, safety red and blue are ink. */
const middle = 0.4;
/** Paper round a pictogram, units. */
const rim = 3;

/** A drawing of `width` × `height` units at so many dots a unit. */
export function raster(shapes: readonly Shape[], width: number, height: number, perUnit: number): Raster {
  const [columns, rows, edge] = [Math.round(width * perUnit), Math.round(height * perUnit), Math.round(rim * perUnit)];
  const cells = paint(shapes, columns / perUnit, rows / perUnit, 1 / perUnit);
  const [wide, high] = [columns + 2 * edge, rows + 2 * edge];
  const dark = new Uint8Array(wide * high);
  cells.forEach((cell, index) => {
    if (cell === null || luminance(cell) > middle) return;
    dark[(Math.floor(index / columns) + edge) * wide + (index % columns) + edge] = 1;
  });
  return { width: wide, height: high, perUnit, dark };
}

/** Where something is too narrow: square units of it, and one of its dots in units. */
export interface Narrow {
  readonly area: number;
  readonly x: number;
  readonly y: number;
}

/** Each piece of `of` (1 ink, 0 ground) in which no disc of that diameter (units) has room. */
export function tooNarrow({ width, height, perUnit, dark }: Raster, of: 0 | 1, diameter: number): readonly Narrow[] {
  const radius = (diameter / 2) * perUnit;
  const own = dark.map((dot) => (dot === of ? 1 : 0));
  const away = distances(own, width, height);
  const kernel = away.map((distance) => (distance >= radius ? 0 : 1));
  const toKernel = distances(kernel, width, height);
  const narrow = own.map((dot, index) => (dot === 1 && (toKernel[index] ?? 0) > radius ? 1 : 0));
  return pieces(narrow, width, height).map(({ count, start }) => ({ area: count / perUnit ** 2, x: (start % width) / perUnit - rim, y: Math.floor(start / width) / perUnit - rim }));
}

/** Distance of each dot that is set to the nearest one that is not, in dots; 0 for one that is not. Exact, by Felzenszwalb and Huttenlocher's method (from memory). */
function distances(set: ArrayLike<number>, width: number, height: number): Float64Array {
  const far = 1e9;
  const squares = Float64Array.from({ length: width * height }, (_, index) => (set[index] ? far : 0));
  for (let x = 0; x < width; x += 1) line(squares, x, width, height);
  for (let y = 0; y < height; y += 1) line(squares, y * width, 1, width);
  return squares.map(Math.sqrt);
}

/** One row or column of squared distances: the lower envelope of parabolas. */
function line(squares: Float64Array, start: number, step: number, count: number): void {
  const values = Float64Array.from({ length: count }, (_, index) => squares[start + index * step] ?? 0);
  const at: number[] = [0];
  const from: number[] = [-Infinity];
  const meets = (q: number, p: number): number => (((values[q] ?? 0) + q * q) - ((values[p] ?? 0) + p * p)) / (2 * q - 2 * p);
  for (let q = 1; q < count; q += 1) {
    let s = meets(q, at.at(-1) ?? 0);
    while (s <= (from.at(-1) ?? -Infinity)) { at.pop(); from.pop(); s = meets(q, at.at(-1) ?? 0); }
    at.push(q);
    from.push(s);
  }
  let k = 0;
  for (let q = 0; q < count; q += 1) {
    while ((from[k + 1] ?? Infinity) < q) k += 1;
    const p = at[k] ?? 0;
    squares[start + q * step] = (q - p) ** 2 + (values[p] ?? 0);
  }
}

/** Each connected piece (by sides): its number of dots and its first. */
function pieces(set: ArrayLike<number>, width: number, height: number): readonly { readonly count: number; readonly start: number }[] {
  const seen = new Uint8Array(width * height);
  const found: { count: number; start: number }[] = [];
  for (let start = 0; start < set.length; start += 1) {
    if (!set[start] || seen[start]) continue;
    let count = 0;
    const open = [start];
    seen[start] = 1;
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      count += 1;
      for (const next of [at - 1, at + 1, at - width, at + width]) {
        if (next < 0 || next >= set.length || !set[next] || seen[next]) continue;
        seen[next] = 1;
        open.push(next);
      }
    }
    found.push({ count, start });
  }
  return found;
}
