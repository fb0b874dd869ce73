import type { Model } from '../../model/index.ts';
import { foldedPanels } from '../folded-panels.ts';
import type { Paper } from '../kit/svg.ts';
import { sheetRoom, type SheetRoom } from './room.ts';
import { segmentSheets, segmentsOf, type Segment } from './segments.ts';
import { stripsOf } from './strips.ts';
import { foldedTemplate, panelTemplate, plateTemplate } from './templates.ts';
import { tiled, type Tiling } from './tiles.ts';

/** All that is printed at true size for one item and size, and how it is laid on sheets. */
export interface MarkingSheets {
  readonly room: SheetRoom;
  /** Each pattern that is folded, then each kind of flat panel; numbered from 1. */
  readonly tilings: readonly Tiling[];
  /** The pieces of each strip; numbered on after the tilings. */
  readonly strips: readonly (readonly Segment[])[];
  /** The pieces on each sheet of strips. */
  readonly stripSheets: readonly (readonly Segment[])[];
}

/** Lays the templates and gauges of an item on sheets of a size in mm. */
export function laidOut(model: Model, sheet: Paper): MarkingSheets {
  const room = sheetRoom(sheet);
  const folded = foldedPanels(model).map(({ full, pattern }) => (full === null ? foldedTemplate(pattern) : panelTemplate(full)));
  const tilings = [...folded, ...model.plates.map(plateTemplate)].map((template) => tiled(template, room.window));
  const strips = stripsOf(model).map((strip, index) => segmentsOf(strip, tilings.length + index + 1, room.window.height));
  return { room, tilings, strips, stripSheets: segmentSheets(strips.flat(), room.window) };
}
