import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { textBox } from '../kit/lettering.ts';
import { area, figure, line, outline } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper } from '../kit/fit.ts';
import { overlap } from './room.ts';
import type { Segment } from './segments.ts';
import type { Tile, Tiling } from './tiles.ts';
import { pens } from '../kit/pens.ts';
import { tell } from '../kit/told.ts';

/** Size of a tile's name and the white round it, mm. */
const nameCap = 3;
const nameRim = 0.6;

/** The drawing small, with the tiles that are printed; one may be marked, or all named. The box is on the sheet, mm. */
export function tilingMap(tiling: Tiling, window: Box, box: Box, marked: Tile | null): readonly Mark[] {
  const { pitch, size, left, top } = gridOf(tiling, window);
  const scale = Math.min(box.width / size[0], box.height / size[1]);
  const view: Fit = {
    scale,
    origin: [box.x + (box.width - size[0] * scale) / 2 - left * scale, box.y + (box.height - size[1] * scale) / 2 + top * scale],
  };
  const ringOf = ({ row, column }: Tile): readonly Vec2[] => {
    const [x, y] = [left + column * pitch[0], top - row * pitch[1]];
    return allOnPaper(view, [[x, y], [x + pitch[0], y], [x + pitch[0], y - pitch[1]], [x, y - pitch[1]]]);
  };
  return [
    ...(marked === null ? [] : [area('here', ringOf(marked))]),
    ...tiling.tiles.map((tile) => outline(pens.cell, ringOf(tile))),
    outline(pens.map, allOnPaper(view, tiling.template.edge)),
    ...(marked === null ? tiling.tiles.flatMap((tile) => named(tile, ringOf(tile))) : []),
  ];
}

/** The grid's cells in model mm: their pitch, the size of all of them, and their upper left corner. */
function gridOf({ tiles: [first], rows, columns }: Tiling, window: Box): { readonly pitch: Vec2; readonly size: Vec2; readonly left: number; readonly top: number } {
  if (first === undefined) throw new RangeError('a drawing without any line has no map');
  const pitch: Vec2 = [window.width - overlap, window.height - overlap];
  const { origin } = first.view;
  return {
    pitch,
    size: [pitch[0] * columns, pitch[1] * rows],
    left: window.x + overlap / 2 - origin[0] - first.column * pitch[0],
    top: origin[1] - window.y - overlap / 2 + first.row * pitch[1],
  };
}

/** A tile's name in the middle of its cell, on white where the drawing's edge runs through. */
function named({ label }: Tile, ring: readonly Vec2[]): readonly Mark[] {
  const middle: Vec2 = [0, 1].map((axis) => ring.reduce((sum, point) => sum + (point[axis] ?? 0), 0) / ring.length) as [number, number];
  const { x, y, width, height } = textBox(label, middle, nameCap, 400, 0);
  const [left, top, right, bottom] = [x - nameRim, y - nameRim, x + width + nameRim, y + height + nameRim];
  return [area('white', [[left, top], [right, top], [right, bottom], [left, bottom]]), figure(tell.letters(label), middle, nameCap)];
}

/** A strip as a bar of its pieces; those of the sheet in hand are filled, or all are named. */
export function stripMap(pieces: readonly Segment[], box: Box, held: readonly Segment[], names: boolean): readonly Mark[] {
  const length = pieces[0]?.strip.length ?? 1;
  const at = (along: number): number => box.x + (along / length) * box.width;
  return pieces.flatMap((piece) => {
    const [from, to] = [at(piece.from + (piece.joined.before ? overlap / 2 : 0)), at(piece.to - (piece.joined.after ? overlap / 2 : 0))];
    const ring: readonly Vec2[] = [[from, box.y], [to, box.y], [to, box.y + box.height], [from, box.y + box.height]];
    return [
      ...(held.includes(piece) ? [area('here', ring)] : []),
      outline(pens.map, ring),
      ...(names ? [figure(tell.letters(piece.letter), [(from + to) / 2, box.y + box.height / 2], 3)] : []),
    ];
  });
}

/** A thin line that parts what stands on a sheet. */
export const parting = (y: number, from: number, to: number): Mark => line(pens.cell, [from, y], [to, y]);
