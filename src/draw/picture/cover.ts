import type { Vec2 } from '../../model/index.ts';
import type { Box, LineDrawing } from '../types.ts';
import type { Fit } from '../kit/fit.ts';
import { apart, minus } from '../kit/geometry.ts';
import type { Paint, Paints } from './looks.ts';

/** A grid of square cells over the view plane, from its least corner. */
interface Grid {
  readonly min: Vec2;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
}

/** What lies at each cell: 0 nothing, else a paint's number; `lines` where a stroke runs. */
interface Cells extends Grid {
  readonly paint: Uint8Array;
  readonly lines: Uint8Array;
}

/**
 * What the drawing covers. Each table holds, for a corner of the grid, how many cells below and left of
 * it are covered (a summed-area table), so that a box of any size costs four look-ups.
 */
export interface Cover extends Grid {
  readonly fresh: Int32Array;
  readonly body: Int32Array;
  readonly lines: Int32Array;
}

/** How much of a place on the picture is taken, each 0…1. */
export interface Taken {
  readonly fresh: number;
  readonly body: number;
  readonly lines: number;
}

const cellsAcross = 320;
const paintNumber: Record<Paint, number> = { white: 1, tint: 2, pale: 3, floor: 4, ink: 1, dark: 1 };

export function coverOf(drawing: LineDrawing, paints: Paints): Cover {
  const { min, max } = drawing.bounds;
  const cell = Math.max((max[0] - min[0]) / cellsAcross, (max[1] - min[1]) / cellsAcross, 1e-6);
  const columns = Math.ceil((max[0] - min[0]) / cell) + 1;
  const rows = Math.ceil((max[1] - min[1]) / cell) + 1;
  const cells = { min, cell, columns, rows, paint: new Uint8Array(columns * rows), lines: new Uint8Array(columns * rows) };
  for (const region of drawing.regions) fillRings(cells, region.rings, paintNumber[paints.get(region.body) ?? 'white']);
  for (const stroke of drawing.strokes) markLine(cells, stroke.points);
  return {
    min,
    cell,
    columns,
    rows,
    fresh: summed(cells, cells.paint, paintNumber.tint),
    body: summed(cells, cells.paint, paintNumber.white),
    lines: summed(cells, cells.lines, 1),
  };
}

function summed({ columns, rows }: Grid, cells: Uint8Array, covered: number): Int32Array {
  const wide = columns + 1;
  const table = new Int32Array(wide * (rows + 1));
  for (let row = 0; row < rows; row++) {
    let inRow = 0;
    for (let column = 0; column < columns; column++) {
      if (cells[row * columns + column] === covered) inRow += 1;
      table[(row + 1) * wide + column + 1] = (table[row * wide + column + 1] ?? 0) + inRow;
    }
  }
  return table;
}

/** Even-odd, row by row through the cells' middles. */
function fillRings(cover: Cells, rings: readonly (readonly Vec2[])[], value: number): void {
  const crossings = new Map<number, number[]>();
  for (const ring of rings) {
    ring.forEach((from, i) => addCrossings(cover, crossings, from, ring[(i + 1) % ring.length] ?? from));
  }
  for (const [row, xs] of crossings) {
    xs.sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const first = Math.max(0, Math.ceil((xs[i] ?? 0) - 0.5));
      const last = Math.min(cover.columns - 1, Math.floor((xs[i + 1] ?? 0) - 0.5));
      if (first <= last) cover.paint.fill(value, row * cover.columns + first, row * cover.columns + last + 1);
    }
  }
}

function addCrossings(cover: Grid, crossings: Map<number, number[]>, from: Vec2, to: Vec2): void {
  const [x0, y0] = inCells(cover, from);
  const [x1, y1] = inCells(cover, to);
  const first = Math.max(0, Math.ceil(Math.min(y0, y1) - 0.5));
  const last = Math.min(cover.rows - 1, Math.ceil(Math.max(y0, y1) - 0.5) - 1);
  for (let row = first; row <= last; row++) {
    const x = x0 + ((row + 0.5 - y0) / (y1 - y0)) * (x1 - x0);
    const xs = crossings.get(row);
    if (xs) xs.push(x);
    else crossings.set(row, [x]);
  }
}

function markLine(cover: Cells, points: readonly Vec2[]): void {
  points.slice(1).forEach((to, i) => {
    const [x0, y0] = inCells(cover, points[i] ?? to);
    const [x1, y1] = inCells(cover, to);
    const steps = Math.ceil(Math.hypot(x1 - x0, y1 - y0) / 0.7) || 1;
    for (let step = 0; step <= steps; step++) {
      const index = cellIndex(cover, x0 + ((x1 - x0) * step) / steps, y0 + ((y1 - y0) * step) / steps);
      if (index >= 0) cover.lines[index] = 1;
    }
  });
}

function inCells(cover: Grid, [x, y]: Vec2): Vec2 {
  return [(x - cover.min[0]) / cover.cell, (y - cover.min[1]) / cover.cell];
}

function cellIndex(cover: Grid, x: number, y: number): number {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  return column >= 0 && column < cover.columns && row >= 0 && row < cover.rows ? row * cover.columns + column : -1;
}

/** What lies under a box of the paper. */
export function takenBy(cover: Cover, fit: Fit, { x, y, width, height }: Box): Taken {
  const taken = { fresh: 0, body: 0, lines: 0 };
  addTaken(taken, cover, fit, x, y, width, height, 1);
  return taken;
}

/** Adds what lies under one of `count` boxes of which the mean is wanted. Runs some hundred thousand times a picture, hence no lists, objects or closures. */
function addTaken(sums: { -readonly [What in keyof Taken]: number }, cover: Cover, fit: Fit, x: number, y: number, width: number, height: number, count: number): void {
  const perCell = 1 / (fit.scale * cover.cell);
  const left = Math.floor((x - fit.origin[0]) * perCell - cover.min[0] / cover.cell);
  const right = Math.ceil((x + width - fit.origin[0]) * perCell - cover.min[0] / cover.cell);
  const low = Math.floor((fit.origin[1] - y - height) * perCell - cover.min[1] / cover.cell);
  const high = Math.ceil((fit.origin[1] - y) * perCell - cover.min[1] / cover.cell);
  if (right <= 0 || high <= 0 || left >= cover.columns || low >= cover.rows) return;
  const x0 = Math.max(0, left);
  const x1 = Math.min(cover.columns, right);
  const wide = cover.columns + 1;
  const row0 = wide * Math.max(0, low);
  const row1 = wide * Math.min(cover.rows, high);
  const share = 1 / Math.max(1, (right - left) * (high - low));
  sums.fresh += (share * sumOf(cover.fresh, row0, row1, x0, x1)) / count;
  sums.body += (share * sumOf(cover.body, row0, row1, x0, x1)) / count;
  sums.lines += (share * sumOf(cover.lines, row0, row1, x0, x1)) / count;
}

function sumOf(table: Int32Array, row0: number, row1: number, x0: number, x1: number): number {
  return (table[row1 + x1] ?? 0) - (table[row1 + x0] ?? 0) - (table[row0 + x1] ?? 0) + (table[row0 + x0] ?? 0);
}

/** Places of the boxes that fill a disc, from its middle, in sides of a box. */
const HALF_DISC = 8;
const DISC: readonly Vec2[] = Array.from({ length: 2 * HALF_DISC + 1 }, (_, i) => i - HALF_DISC).flatMap((i, _, all) =>
  all.filter((j) => i * i + j * j <= HALF_DISC * HALF_DISC).map((j): Vec2 => [i, j]));

/** What lies under a disc of the paper: the mean of boxes that fill it. */
export function takenByDisc(cover: Cover, fit: Fit, centre: Vec2, radius: number): Taken {
  const side = (2 * radius) / (2 * HALF_DISC + 1);
  const taken = { fresh: 0, body: 0, lines: 0 };
  for (const [i, j] of DISC) addTaken(taken, cover, fit, centre[0] + i * side - side / 2, centre[1] + j * side - side / 2, side, side, DISC.length);
  return taken;
}

/** Side of a box under a line, and how far apart such boxes are, mm. */
const LINE_BOX = 0.5;
const LINE_STEP = 1.5;

/** What lies along a line of the paper: the mean of small boxes on it. */
export function takenAlong(cover: Cover, fit: Fit, from: Vec2, to: Vec2): Taken {
  const steps = Math.max(1, Math.round(apart(from, to) / LINE_STEP));
  const [wayX, wayY] = minus(to, from);
  const taken = { fresh: 0, body: 0, lines: 0 };
  for (let i = 0; i < steps; i++) {
    const share = (i + 0.5) / steps;
    addTaken(taken, cover, fit, from[0] + wayX * share - LINE_BOX / 2, from[1] + wayY * share - LINE_BOX / 2, LINE_BOX, LINE_BOX, steps);
  }
  return taken;
}
