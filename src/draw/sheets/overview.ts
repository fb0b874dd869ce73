import type { Model, Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { legendMarks } from '../flat/legend.ts';
import type { Mark } from '../kit/marks.ts';
import { joinSheets, measureFirst, stripUse } from './how-to.ts';
import type { MarkingSheets } from './laid-out.ts';
import { parting, stripMap, tilingMap } from './maps.ts';
import { sheetPicture, type SheetFrame } from './sheet.ts';
import { ringedNumeral } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { tell } from '../kit/told.ts';

/** Heights of the rows, mm: measuring, joining, what the lines mean, then a row a strip at the foot. */
const measureRow = 22;
const joinRow = 36;
const legendRow = 42;
const stripRow = 14;
const numeralColumn = 12;
const useColumn = 32;
/** Least height of a drawing's map; the first takes a larger share. */
const plateShare = 0.45;

/** The first sheet: measure, join, what the lines mean, and which sheets make up which drawing. */
export function overviewSheet(frame: SheetFrame, laid: MarkingSheets, model: Model): DrawnPicture {
  const { window } = frame.room;
  const x = window.x + 2;
  const right = window.x + window.width;
  const rows = { measure: window.y + 4, join: window.y + 4 + measureRow, legend: window.y + 4 + measureRow + joinRow };
  const [measured, join] = [measureFirst(x, rows.measure), joinSheets(x, rows.join)];
  const strips = window.y + window.height - stripRow * laid.strips.length;
  const maps: Box = { x, y: rows.legend + legendRow + 3, width: right - x, height: strips - rows.legend - legendRow - 6 };
  return sheetPicture(frame, [
    ...measured.marks,
    parting(rows.join - 5, x, right),
    ...join.marks,
    parting(rows.legend - 4, x, right),
    ...legendMarks(model.pattern, { x: x + numeralColumn, y: rows.legend, width: 90, height: legendRow - 3 }),
    parting(rows.legend + legendRow, x, right),
    ...tilingRows(laid, maps),
    parting(strips - 2, x, right),
    ...laid.strips.flatMap((pieces, index) => stripRowMarks(pieces, { x, y: strips + index * stripRow, width: right - x, height: stripRow })),
  ], [...measured.glyphs, ...join.glyphs]);
}

/** The maps of the drawings: the panel above, flat panels side by side under it. */
function tilingRows({ tilings, room: { window } }: MarkingSheets, box: Box): readonly Mark[] {
  const [panel, ...plates] = tilings;
  const low = plates.length === 0 ? 0 : box.height * plateShare;
  const width = box.width / Math.max(1, plates.length);
  return [
    ...(panel ? mapWithNumeral(panel, 1, window, { ...box, height: box.height - low }) : []),
    ...plates.flatMap((plate, index) => mapWithNumeral(plate, index + 2, window, { x: box.x + index * width, y: box.y + box.height - low + 4, width: width - 6, height: low - 4 })),
  ];
}

const mapWithNumeral = (tiling: MarkingSheets['tilings'][number], number: number, window: Box, box: Box): readonly Mark[] => [
  ringed(number, [box.x + 5, box.y + 6]),
  ...tilingMap(tiling, window, { ...box, x: box.x + numeralColumn, width: box.width - numeralColumn }, null),
];

function stripRowMarks(pieces: MarkingSheets['strips'][number], { x, y, width }: Box): readonly Mark[] {
  const [first] = pieces;
  if (first === undefined) return [];
  const bar: Box = { x: x + numeralColumn + useColumn, y: y + 3, width: width - numeralColumn - useColumn - 2, height: 6 };
  return [
    ringed(first.number, [x + 5, y + 6]),
    ...stripUse(first.strip.kind, x + numeralColumn, y + 1),
    ...stripMap(pieces, bar, [], true),
  ];
}

const ringed = (number: number, centre: Vec2): Mark => ringedNumeral(tell.number(number), centre, 4, pens.tick);

