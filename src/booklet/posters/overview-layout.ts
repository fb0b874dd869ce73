import { posterMargin, posterSheets, type PosterPaper } from './sheet.ts';
import type { Extent } from './wall-layout.ts';

/** Measures of the overview, mm. */
export const overview = {
  head: 16,
  gap: 3,
  /** The line of a cell with its numeral and its pictogram. */
  line: 9,
  /** A numeral's height: 14 pt of type; 3 mm are asked for. */
  numeral: 3.5,
  glyph: 8,
  /** Share of its cell that the pictogram of work on the bench takes, so that it looks no weightier than a thumbnail. */
  bench: 0.78,
} as const;

/** How the cells stand on the page. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly cell: Extent;
}

/** The grid in which the thumbnails of `count` cells, all of the shape of `thumb`, come out largest. */
export function overviewGrid(count: number, paper: PosterPaper, thumb: Extent): Grid {
  const grids = Array.from({ length: Math.max(1, count) }, (_, index) => gridOf(index + 1, count, paper));
  return grids.reduce((best, grid) => (thumbScale(grid, thumb) > thumbScale(best, thumb) + 1e-9 ? grid : best));
}

function gridOf(columns: number, count: number, paper: PosterPaper): Grid {
  const { width, height } = posterSheets[paper];
  const rows = Math.max(1, Math.ceil(count / columns));
  const each = (room: number, cells: number): number => Math.floor(((room - overview.gap * (cells - 1)) / cells) * 100) / 100;
  return { columns, rows, cell: { width: each(width - 2 * posterMargin, columns), height: each(height - 2 * posterMargin - overview.head, rows) } };
}

/** Size of a thumbnail in its cell against its own. */
export function thumbScale({ cell }: Grid, thumb: Extent): number {
  return Math.max(0, Math.floor(Math.min(cell.width / thumb.width, (cell.height - overview.line) / thumb.height) * 1000) / 1000);
}
