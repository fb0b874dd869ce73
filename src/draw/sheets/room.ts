import type { Box } from '../types.ts';
import type { Paper } from '../kit/svg.ts';

/** White at every edge of a sheet, mm: more than the quarter inch that office printers leave (common practice, no source). */
export const sheetWhite = 6.5;
/** Above the window: check bar, label, map. Left of it: the upright check bar. mm. */
const topBand = 19;
export const leftBand = 9;
/** How far the windows of neighbouring sheets overlap, mm. */
export const overlap = 10;

/** What is printed of a sheet, without its white, and the window in it that shows a part of the drawing. mm. */
export interface SheetRoom {
  readonly width: number;
  readonly height: number;
  readonly window: Box;
}

/** The room on a sheet of a size in mm. */
export function sheetRoom(sheet: Paper): SheetRoom {
  const [width, height] = [sheet.width - 2 * sheetWhite, sheet.height - 2 * sheetWhite];
  return { width, height, window: { x: leftBand, y: topBand, width: width - leftBand, height: height - topBand } };
}
