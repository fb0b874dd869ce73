import { real, whole } from './arrays.ts';
import type { Wholes } from './arrays.ts';

/** A grid of square cells over the view plane; each cell lists what reaches into it. */
export interface Grid {
  readonly x: number;
  readonly y: number;
  /** Side of a cell, in mm. */
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  /** Where each cell's list begins in `members`; one more entry than cells. */
  readonly starts: Int32Array;
  /** Items cell by cell, in the order in which they were put in. */
  readonly members: Int32Array;
}

/** A grid that is being filled. */
export interface OpenGrid extends Omit<Grid, 'starts' | 'members'> {
  /** Cell and item by turns, as far as `count`. */
  entries: Int32Array;
  count: number;
}

/** Enters an item in a cell. */
export function enter(grid: OpenGrid, cell: number, member: number): void {
  if (grid.count === grid.entries.length) grid.entries = larger(grid.entries);
  grid.entries[grid.count] = cell;
  grid.entries[grid.count + 1] = member;
  grid.count += 2;
}

function larger(entries: Int32Array): Int32Array {
  const grown = new Int32Array(2 * entries.length);
  grown.set(entries);
  return grown;
}

/** An empty grid over points (x y z by turns) with about one cell an item. */
export function gridOver(points: Float64Array, items: number): OpenGrid {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let p = 0; p < points.length; p += 3) {
    left = Math.min(left, real(points, p));
    right = Math.max(right, real(points, p));
    low = Math.min(low, real(points, p + 1));
    high = Math.max(high, real(points, p + 1));
  }
  const empty = { entries: new Int32Array(16 * Math.max(1, items)), count: 0 };
  if (!(right > left) && !(high > low)) return { x: 0, y: 0, cell: 1, columns: 1, rows: 1, ...empty };
  const [width, height] = [right - left, high - low];
  const cell = Math.max(Math.sqrt((width * height) / Math.max(1, items)), Math.max(width, height) / 1000);
  return { x: left, y: low, cell, columns: Math.floor(width / cell) + 1, rows: Math.floor(height / cell) + 1, ...empty };
}

/** The column or row in which a distance from the grid's corner lies, kept inside the grid. */
export function slot(distance: number, cell: number, slots: number): number {
  const k = Math.floor(distance / cell);
  return k < 0 ? 0 : k >= slots ? slots - 1 : k;
}

/** Enters a convex face in every cell that it may touch: row by row between its sides. `corners` are places in `points`. */
export function coverConvex(grid: OpenGrid, member: number, points: Float64Array, { values: corners, count }: Wholes): void {
  const { cell, y, rows } = grid;
  let [least, most, left, right] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let c = 0; c < count; c++) {
    const corner = whole(corners, c);
    left = Math.min(left, real(points, corner));
    right = Math.max(right, real(points, corner));
    least = Math.min(least, real(points, corner + 1));
    most = Math.max(most, real(points, corner + 1));
  }
  const top = slot(most - y, cell, rows);
  const bottom = slot(least - y, cell, rows);
  if (bottom === top) {
    enterRow(grid, member, top, left, right);
    return;
  }
  for (let row = bottom; row <= top; row++) {
    const low = y + (row - 1e-6) * cell;
    const high = y + (row + 1 + 1e-6) * cell;
    let [from, to] = [Infinity, -Infinity];
    for (let c = 0; c < count; c++) {
      const a = whole(corners, c);
      const b = whole(corners, c + 1 === count ? 0 : c + 1);
      const ax = real(points, a);
      const ay = real(points, a + 1);
      const bx = real(points, b);
      const by = real(points, b + 1);
      from = Math.min(from, leftWithin(ax, ay, bx, by, low, high));
      to = Math.max(to, -leftWithin(-ax, ay, -bx, by, low, high));
    }
    if (from <= to) enterRow(grid, member, row, from, to);
  }
}

function enterRow(grid: OpenGrid, member: number, row: number, left: number, right: number): void {
  const margin = 1e-6 * grid.cell;
  const last = slot(right + margin - grid.x, grid.cell, grid.columns);
  for (let column = slot(left - margin - grid.x, grid.cell, grid.columns); column <= last; column++) {
    enter(grid, row * grid.columns + column, member);
  }
}

/** Least x of the part of a side between two heights. */
function leftWithin(x0: number, y0: number, x1: number, y1: number, low: number, high: number): number {
  if ((y0 < low && y1 < low) || (y0 > high && y1 > high)) return Infinity;
  const slope = (x1 - x0) / (y1 - y0);
  const from = y0 < low ? x0 + (low - y0) * slope : y0 > high ? x0 + (high - y0) * slope : x0;
  const to = y1 < low ? x0 + (low - y0) * slope : y1 > high ? x0 + (high - y0) * slope : x1;
  return from < to ? from : to;
}

/** Sorts the entries by cell, keeping their order within each. */
export function sealGrid({ entries, count, ...grid }: OpenGrid): Grid {
  const starts = new Int32Array(grid.columns * grid.rows + 1);
  for (let e = 0; e < count; e += 2) {
    const cell = whole(entries, e) + 1;
    starts[cell] = whole(starts, cell) + 1;
  }
  for (let cell = 1; cell < starts.length; cell++) starts[cell] = whole(starts, cell) + whole(starts, cell - 1);
  const next = starts.slice();
  const members = new Int32Array(count / 2);
  for (let e = 0; e < count; e += 2) {
    const cell = whole(entries, e);
    const place = whole(next, cell);
    members[place] = whole(entries, e + 1);
    next[cell] = place + 1;
  }
  return { ...grid, starts, members };
}

/** The cells along a line, as `walkAlong` leaves them; one walk serves line after line. */
export interface Walk {
  /** As many of the following as count. */
  count: number;
  cells: Int32Array;
  /** Shares of the line, 0…1, between which it can be in each cell. */
  from: Float64Array;
  to: Float64Array;
}

/** A walk to be used again and again. */
export function newWalk(): Walk {
  return { count: 0, cells: new Int32Array(256), from: new Float64Array(256), to: new Float64Array(256) };
}

/** Finds every cell that a straight line may touch. */
export function walkAlong(walk: Walk, grid: Grid | OpenGrid, x0: number, y0: number, x1: number, y1: number): void {
  const dx = x1 - x0;
  const dy = y1 - y0;
  const flat = Math.abs(dx) >= Math.abs(dy);
  const start = flat ? x0 - grid.x : y0 - grid.y;
  const run = flat ? dx : dy;
  const slots = flat ? grid.columns : grid.rows;
  const side = flat ? y0 - grid.y : x0 - grid.x;
  const slope = flat ? dy : dx;
  const sideSlots = flat ? grid.rows : grid.columns;
  const margin = 1e-6 * grid.cell;
  const last = slot(Math.max(start, start + run) + margin, grid.cell, slots);
  walk.count = 0;
  for (let k = slot(Math.min(start, start + run) - margin, grid.cell, slots); k <= last; k++) {
    const one = run === 0 ? 0 : (k * grid.cell - margin - start) / run;
    const other = run === 0 ? 1 : ((k + 1) * grid.cell + margin - start) / run;
    const from = Math.max(0, Math.min(one, other));
    const to = Math.min(1, Math.max(one, other));
    if (from > to) continue;
    const p = side + from * slope;
    const q = side + to * slope;
    const end = slot(Math.max(p, q) + margin, grid.cell, sideSlots);
    for (let j = slot(Math.min(p, q) - margin, grid.cell, sideSlots); j <= end; j++) noteCell(walk, flat ? j * grid.columns + k : k * grid.columns + j, from, to);
  }
}

function noteCell(walk: Walk, cell: number, from: number, to: number): void {
  if (walk.count === walk.cells.length) lengthen(walk);
  walk.cells[walk.count] = cell;
  walk.from[walk.count] = from;
  walk.to[walk.count] = to;
  walk.count++;
}

function lengthen(walk: Walk): void {
  const { cells, from, to } = walk;
  walk.cells = new Int32Array(2 * cells.length);
  walk.from = new Float64Array(2 * cells.length);
  walk.to = new Float64Array(2 * cells.length);
  walk.cells.set(cells);
  walk.from.set(from);
  walk.to.set(to);
}
