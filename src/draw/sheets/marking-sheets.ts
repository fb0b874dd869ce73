import type { Model } from '../../model/index.ts';
import { pictureAs } from '../picture-of.ts';
import type { Picture } from '../types.ts';
import type { Paper } from '../kit/svg.ts';
import { laidOut } from './laid-out.ts';
import { overviewSheet } from './overview.ts';
import { stripSheet, tileSheet, type SheetFrame } from './sheet.ts';

/**
 * The marking sheets of an item at true size: an overview, the tiles of each drawing, the gauges. Each picture is a
 * sheet without its white (`sheetWhite` all round). `print` is revision and content mark.
 */
export function markingSheets(model: Model, sheet: Paper, print: string): readonly Picture[] {
  const laid = laidOut(model, sheet);
  const tiles = laid.tilings.flatMap((tiling, index) => tiling.tiles.map((tile) => ({ tiling, tile, number: index + 1 })));
  const of = 1 + tiles.length + laid.stripSheets.length;
  const frame = (number: number): SheetFrame => ({ room: laid.room, sheet: number, of, print });
  return [
    overviewSheet(frame(1), laid, model),
    ...tiles.map(({ tiling, tile, number }, index) => tileSheet(frame(index + 2), tiling, tile, number)),
    ...laid.stripSheets.map((pieces, index) => stripSheet(frame(tiles.length + index + 2), pieces, laid.strips)),
  ].map((drawn, place) => pictureAs({ what: 'marking-sheet', place }, drawn));
}
