import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { figure, type Mark } from '../kit/marks.ts';
import type { Fit } from '../kit/fit.ts';
import { overlap } from './room.ts';
import type { Template } from './templates.ts';
import { boxWindow, isInside } from '../kit/clip.ts';
import { capHeights } from '../kit/lettering.ts';
import { onPaper } from '../kit/fit.ts';
import { clipMarks } from '../kit/clip-marks.ts';

/** One sheet of a drawing that is larger than a sheet. Rows count from the top, columns from the left. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** Row and column as they are printed: `B3`. */
  readonly label: string;
  /** From the drawing to the sheet, at true size. */
  readonly view: Fit;
  /** What the tile answers for: its window up to the middle of each overlap. On the sheet, mm. */
  readonly cell: Box;
  /** Which neighbours are printed; the sheet is cut where the right and the lower one follow. */
  readonly beside: Readonly<Record<'left' | 'right' | 'above' | 'below', boolean>>;
  /** Middles of the register marks, on the sheet, mm. */
  readonly register: readonly Vec2[];
}

/** A drawing cut into tiles; those without any line are left out. */
export interface Tiling {
  readonly template: Template;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
}

/** Where the grid of windows stands over the drawing: its upper left corner in model mm, and how often it repeats. */
interface Grid {
  readonly left: number;
  readonly top: number;
  readonly rows: number;
  readonly columns: number;
}

/** Paper beyond the drawing's edge, so that a line on the edge is printed whole, mm. */
const rim = 1;
/** Ways to shift the grid along either axis that are tried. */
const shifts = 8;
/** Where register marks stand along the middle of an overlap, as shares of a tile's pitch. */
const registerShares = [0.25, 0.75] as const;

/** Lays a drawing over as few sheets as possible whose window has the given place and size on the sheet, mm. */
export function tiled(template: Template, window: Box): Tiling {
  const found = gridsFor(template, window)
    .map((grid) => ({ grid, cells: cellsWithLines(template, window, grid) }))
    .reduce((best, next) => (next.cells.length < best.cells.length ? next : best));
  const { grid, cells } = found;
  const printed = (row: number, column: number): boolean => cells.some((cell) => cell[0] === row && cell[1] === column);
  return {
    template,
    rows: grid.rows,
    columns: grid.columns,
    tiles: cells.map(([row, column]) => tileAt(window, grid, row, column, printed)),
  };
}

/** The grids to try, the best centred first: of equally good ones it stays. */
function gridsFor({ extent: { min, max } }: Template, window: Box): readonly Grid[] {
  const along = (length: number, room: number): { readonly count: number; readonly starts: readonly number[] } => {
    const needed = length + 2 * rim;
    const count = Math.max(1, Math.ceil((needed - overlap) / (room - overlap) - 1e-9));
    const slack = count * (room - overlap) + overlap - needed;
    const shares = Array.from({ length: shifts + 1 }, (_, index) => index / shifts).sort((a, b) => Math.abs(a - 0.5) - Math.abs(b - 0.5) || a - b);
    return { count, starts: shares.map((share) => -rim - slack * share) };
  };
  const x = along(max[0] - min[0], window.width);
  const y = along(max[1] - min[1], window.height);
  return x.starts.flatMap((left) => y.starts.map((above) =>
    ({ left: min[0] + left, top: max[1] - above, rows: y.count, columns: x.count })));
}

function cellsWithLines(template: Template, window: Box, grid: Grid): readonly (readonly [number, number])[] {
  return Array.from({ length: grid.rows * grid.columns }, (_, index) => [Math.floor(index / grid.columns), index % grid.columns] as const)
    .filter(([row, column]) => clipMarks(template.draw(viewOf(window, grid, row, column)), boxWindow(cellOf(window, grid, row, column))).length > 0);
}

function viewOf(window: Box, grid: Grid, row: number, column: number): Fit {
  const left = grid.left + column * (window.width - overlap);
  const top = grid.top - row * (window.height - overlap);
  return { scale: 1, origin: [window.x - left, window.y + top] };
}

/** Up to the middle of each overlap, and to the window's edge where the grid ends. */
function cellOf({ x, y, width, height }: Box, { rows, columns }: Grid, row: number, column: number): Box {
  const cut = (isEnd: boolean): number => (isEnd ? 0 : overlap / 2);
  const [left, right] = [cut(column === 0), cut(column === columns - 1)];
  const [above, below] = [cut(row === 0), cut(row === rows - 1)];
  return { x: x + left, y: y + above, width: width - left - right, height: height - above - below };
}

function tileAt(window: Box, grid: Grid, row: number, column: number, printed: (row: number, column: number) => boolean): Tile {
  const beside = { left: printed(row, column - 1), right: printed(row, column + 1), above: printed(row - 1, column), below: printed(row + 1, column) };
  return {
    row, column, beside,
    label: `${rowLetter(row)}${column + 1}`,
    view: viewOf(window, grid, row, column),
    cell: cellOf(window, grid, row, column),
    register: registerOf(window, beside),
  };
}

/** Throws a RangeError beyond the alphabet: no panel of a kit file is that long. */
export function rowLetter(row: number): string {
  const letter = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'[row];
  if (letter === undefined) throw new RangeError(`a drawing takes ${row + 1} rows of sheets; at most 26 have a letter`);
  return letter;
}

function registerOf({ x, y, width, height }: Box, beside: Tile['beside']): readonly Vec2[] {
  const half = overlap / 2;
  const across = registerShares.map((share) => x + half + share * (width - overlap));
  const down = registerShares.map((share) => y + half + share * (height - overlap));
  return [
    ...(beside.left ? down.map((at): Vec2 => [x + half, at]) : []),
    ...(beside.right ? down.map((at): Vec2 => [x + width - half, at]) : []),
    ...(beside.above ? across.map((at): Vec2 => [at, y + half]) : []),
    ...(beside.below ? across.map((at): Vec2 => [at, y + height - half]) : []),
  ];
}

/** The drawing's lines in a tile's window, and the figures whose places the tile answers for. */
export const tileLines = (template: Template, { view, cell }: Tile, window: Box): readonly Mark[] => [
  ...clipMarks(template.draw(view), boxWindow(window)),
  ...template.figures.flatMap(({ at, told }) => {
    const place = onPaper(view, at);
    return isInside(place, boxWindow(cell)) ? [figure(told, place, capHeights.step)] : [];
  }),
];
