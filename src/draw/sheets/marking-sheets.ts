import type { Model } from '../../model/index.ts';
import { pictureAs } from '../picture-of.ts';
import type { Picture } from '../types.ts';
import type { Paper } from '../kit/svg.ts';
import { overviewSheet } from './overview.ts';
import { sheetRoom, type SheetRoom } from './room.ts';
import { segmentSheets, segmentsOf, type Segment } from './segments.ts';
import { stripSheet, tileSheet, type SheetFrame } from './sheet.ts';
import { stripsOf } from './strips.ts';
import { panelTemplate, plateTemplate } from './templates.ts';
import { tiled, type Tiling } from './tiles.ts';

/** All that is printed at true size for one item and size, and how it is laid on sheets. */
export interface MarkingSheets {
  readonly room: SheetRoom;
  /** The flat pattern, then each kind of flat panel; numbered from 1. */
  readonly tilings: readonly Tiling[];
  /** The pieces of each strip; numbered on after the tilings. */
  readonly strips: readonly (readonly Segment[])[];
  /** The pieces on each sheet of strips. */
  readonly stripSheets: readonly (readonly Segment[])[];
}

/** Lays the templates and gauges of an item on sheets of a size in mm. */
export function laidOut(model: Model, sheet: Paper): MarkingSheets {
  const room = sheetRoom(sheet);
  const tilings = [panelTemplate(model.pattern), ...model.plates.map(plateTemplate)].map((template) => tiled(template, room.window));
  const strips = stripsOf(model).map((strip, index) => segmentsOf(strip, tilings.length + index + 1, room.window.height));
  return { room, tilings, strips, stripSheets: segmentSheets(strips.flat(), room.window) };
}

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
