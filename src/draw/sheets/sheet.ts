import type { Box, DrawnPicture } from '../types.ts';
import { figure, line, toldWidth, ringedNumeral, upwards } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { pictogram, type PictogramName } from '../pictograms/index.ts';
import { toPicture } from '../kit/svg.ts';
import { barLength, checkBars, measurePlaces } from './check-bars.ts';
import { tilingMap, stripMap } from './maps.ts';
import { registerMark, scissors } from './paper-marks.ts';
import { overlap, type SheetRoom } from './room.ts';
import { segmentBoxes, segmentMarks, type Segment } from './segments.ts';
import { tileLines, type Tile, type Tiling } from './tiles.ts';
import { pens } from '../kit/pens.ts';
import { tell } from '../../scene/index.ts';
import { toldText } from '../kit/told-text.ts';

/** Where label and map stand in the band over the window, from its right end, mm. */
const mapWidth = 46;
const labelRoom = 36;
/** Size of the small print, mm. */
const printCap = 2.6;

/** What every sheet of a set says besides its drawing. */
export interface SheetFrame {
  readonly room: SheetRoom;
  /** From 1, and how many there are. */
  readonly sheet: number;
  readonly of: number;
  /** Revision and content mark in figures and letters a to f, as on the booklets. */
  readonly print: string;
}

/** A pictogram on a sheet; `turned` reads from the right like the upright bar's figure. */
export interface PlacedPictogram {
  readonly name: PictogramName;
  readonly box: Box;
  readonly turned?: boolean;
}

/** A sheet with one tile of a drawing. */
export function tileSheet(frame: SheetFrame, tiling: Tiling, tile: Tile, number: number): DrawnPicture {
  const { window } = frame.room;
  const { min, max } = tiling.template.extent;
  const size = toldText(tell.sides(max[0] - min[0], max[1] - min[1]));
  return sheetPicture({ ...frame, print: `${frame.print} · ${size}` }, [
    ...tileLines(tiling.template, tile, window),
    ...trims(tile, window),
    ...tile.register.flatMap(registerMark),
    ...label(frame.room, number, tile.label),
    ...tilingMap(tiling, window, mapBox(frame.room), tile),
  ]);
}

/** A sheet with pieces of strips side by side. */
export function stripSheet(frame: SheetFrame, pieces: readonly Segment[], all: readonly (readonly Segment[])[]): DrawnPicture {
  const boxes = segmentBoxes(pieces, frame.room.window);
  const map = mapBox(frame.room);
  const pitch = map.height / all.length;
  return sheetPicture(frame, [
    ...pieces.flatMap((piece, index) => segmentMarks(piece, boxes[index] ?? frame.room.window)),
    ...all.flatMap((strip, index) => stripMap(strip, { ...map, y: map.y + index * pitch + 0.4, height: pitch - 0.8 }, pieces, false)),
  ]);
}

/** Marks in their frame: bars in both directions with the pictures that say "measure me", the sheet's number, the print. */
export function sheetPicture(frame: SheetFrame, marks: readonly Mark[], glyphs: readonly PlacedPictogram[] = []): DrawnPicture {
  const { room: { width, height, window }, sheet, of, print } = frame;
  const measure = measurePlaces(window);
  const said = tell.letters(print);
  const picture = toPicture({ width, height }, [
    ...marks,
    ...checkBars(window),
    figure(tell.outOf(sheet, of), [width - mapWidth - labelRoom / 2, 15], 3.5),
    figure(said, [2.6, window.y + barLength + 11 + toldWidth(said, printCap, 400) / 2], printCap, 400, upwards),
  ]);
  const tape: readonly PlacedPictogram[] = [
    { name: 'tape', box: measure.level },
    { name: 'look', box: { ...measure.level, x: measure.level.x + measure.level.width + 2 } },
    { name: 'tape', box: measure.upright, turned: true },
  ];
  return { ...picture, svg: withPictograms(picture.svg, [...tape, ...glyphs]) };
}

const mapBox = ({ width }: SheetRoom): Box => ({ x: width - mapWidth - 0.5, y: 0.5, width: mapWidth, height: 17 });

/** The drawing's numeral in a ring, and row and column. */
function label({ width }: SheetRoom, number: number, text: string): readonly Mark[] {
  const middle = width - mapWidth - labelRoom / 2;
  return [
    ringedNumeral(tell.number(number), [middle - 9, 6], 4, pens.tick),
    figure(tell.letters(text), [middle + 6, 6], 6, 700),
  ];
}

/** Where the sheet is cut before it is laid over its right and its lower neighbour, with scissors at the line's start. */
function trims({ beside }: Tile, { x, y, width, height }: Box): readonly Mark[] {
  const [right, below] = [x + width - overlap / 2, y + height - overlap / 2];
  return [
    ...(beside.right ? [line(pens.trim, [right, y - 1], [right, y + height]), ...scissors([right, y - 3], 'down')] : []),
    ...(beside.below ? [line(pens.trim, [x - 1, below], [x + width, below]), ...scissors([x - 3, below], 'right')] : []),
  ];
}

function withPictograms(svg: string, glyphs: readonly PlacedPictogram[]): string {
  const drawn = glyphs.map(({ name, box, turned }) => {
    const glyph = pictogram(name);
    const scale = Math.round((1000 * box.height) / glyph.height) / 1000;
    const place = turned === true ? `translate(${rounded(box.x)} ${rounded(box.y + box.width)}) rotate(-90)` : `translate(${rounded(box.x)} ${rounded(box.y)})`;
    return `<g data-pictogram="${name}" transform="${place} scale(${scale})">${glyph.svg}</g>`;
  });
  return svg.replace(/<\/svg>$/, `${drawn.join('')}</svg>`);
}

const rounded = (value: number): number => Math.round(value * 100) / 100;
