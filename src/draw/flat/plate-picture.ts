import type { FlatPanel, PlateHole, Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension, runningDimension, runningReach } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth } from '../kit/marks.ts';
import { holeMark, type HoleKind } from './hole-marks.ts';
import { faceSign, pennant } from './marked-face.ts';
import type { PanelArea } from '../../cut/index.ts';
import { cornersOf } from '../kit/geometry.ts';
import { onStock, orderRoom, stockCuts, stockMarks, WASTE, type Kept } from './on-stock.ts';
import { earlier, pens } from '../kit/pens.ts';
import type { Paper } from '../kit/svg.ts';
import { toPicture } from '../kit/svg.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper, boxOnPaper, fitToScale, onPaper } from '../kit/fit.ts';
import { tell, type Told } from '../../scene/index.ts';

/** Paper of a flat panel's picture, mm. */
export const platePaper: Paper = { width: 165, height: 105 };

const cap = capHeights.step;
const margin = 1.5;
/** Width of the column with the stock panel, and of the arrow from there to the panel's own drawing. */
const stockColumn = 42;
const arrowLength = 9;
const dimensionGap = 5;
/** From the panel to the dimension of a whole side. */
const sideGap = 4;
const sideRoom = sideGap + cap + 3;
/** Half the length of the cross through a hole, and the least radius a hole is drawn with. */
const crossReach = 2.2;
const leastRadius = 0.9;

/** An off-cut of a stock panel, and the pieces that were cut from that before. */
export interface LeftOver {
  readonly area: PanelArea;
  readonly taken: readonly PanelArea[];
}

/** Width of the column where it shows an off-cut, and the room for that one's sides. */
const leftColumn = 66;
const leftFigures = 9;

/**
 * A flat panel: on the left where it is cut, from a corner of a stock panel of the given sides (mm), how many holes
 * it has and how many such panels there are; on the right the panel itself with its sides and with its holes
 * measured from its lower left corner. Throws a RangeError when it does not fit on the stock or the paper is too small.
 */
export function platePicture(plate: FlatPanel, stock: Vec2, count: number | null, paper: Paper = platePaper, left: LeftOver | null = null, kept: Kept = WASTE): DrawnPicture {
  return toPicture(paper, plateMarks(plate, stock, count, paper, left, kept));
}

/** The marks of the picture, for the tests. */
export function plateMarks(plate: FlatPanel, stock: Vec2, count: number | null, paper: Paper, left: LeftOver | null = null, kept: Kept = WASTE): readonly Mark[] {
  const column: Box = { x: margin, y: margin, width: left === null ? stockColumn : leftColumn, height: paper.height - 2 * margin };
  const x = margin + column.width;
  const view = plateView(plate, { x: x + arrowLength, y: margin, width: paper.width - margin - x - arrowLength, height: column.height });
  const beside = left === null ? 0 : leftFigures;
  const stockView = fitToScale({ min: [0, 0], max: stock }, { x: column.x + beside, y: column.y + orderRoom, width: column.width - orderRoom - beside, height: column.height * (left === null ? 0.5 : 0.55) - orderRoom });
  const low = onPaper(stockView, [0, 0])[1];
  const arrowAt = (low + onPaper(stockView, [0, stock[1]])[1]) / 2 + orderRoom;
  return [
    ...(left === null ? wholeStock(plate, stock, stockView, kept) : leftOver(plate, stock, left, stockView, kept)),
    line(pens.motion, [x + 0.5, arrowAt], [x + arrowLength - 3, arrowAt]),
    arrowhead([x + arrowLength - 1, arrowAt], [1, 0], 4),
    ...counts(plate, count, { ...column, y: low + 8 + beside, height: column.y + column.height - low - 8 - beside }),
    { mark: 'view', name: 'plate', scale: view.scale, marks: ownMarks(plate, view) },
    ...dimensions(plate, view),
  ];
}

function wholeStock(plate: FlatPanel, stock: Vec2, view: Fit, kept: Kept): readonly Mark[] {
  const side = onStock('flat panel', [plate.width, plate.height], stock);
  return [{ mark: 'view', name: 'stock', scale: view.scale, marks: stockMarks(view, side, stock, kept) }, ...stockCuts(view, side, stock)];
}

/** The stock panel as earlier pieces have left it, what they have taken dashed; the piece in the corner of the off-cut, whose sides are told. */
function leftOver({ width, height }: FlatPanel, stock: Vec2, { area: { at, sides }, taken }: LeftOver, view: Fit, kept: Kept): readonly Mark[] {
  const own: Fit = { scale: view.scale, origin: onPaper(view, at) };
  const side = onStock('flat panel', [width, height], sides);
  const box = boxOnPaper(view, { min: at, max: [at[0] + sides[0], at[1] + sides[1]] });
  const sheet = boxOnPaper(view, { min: [0, 0], max: stock });
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  return [
    { mark: 'view', name: 'stock', scale: view.scale, marks: [
      ...[{ at: [0, 0] as const, sides: stock }, ...taken].map((piece) => outline(goneLine, cornersOf(boxOnPaper(view, { min: piece.at, max: [piece.at[0] + piece.sides[0], piece.at[1] + piece.sides[1]] })))),
      ...stockMarks(own, side, sides, kept), outline(pens.cut, cornersOf(box)),
    ] },
    ...stockCuts(own, side, sides),
    ...linearDimension({ axis: 'x', told: tell.mm(sides[0]), ends: [box.x, right], line: sheet.y + sheet.height + leftFigures - 3, feature: bottom, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(sides[1]), ends: [bottom, box.y], line: sheet.x - 3, feature: box.x, cap }),
  ];
}

/** What is no longer there. */
const goneLine = { ...earlier(pens.paperFold), width: 0.35 };

/** The panel in the middle of a box, with room for its dimensions. */
function plateView(plate: FlatPanel, box: Box): Fit {
  const left = dimensionGap + runningReach(stationsOf(plate, 1).map(tell.mm), cap);
  const below = dimensionGap + runningReach(stationsOf(plate, 0).map(tell.mm), cap);
  return fitToScale({ min: [0, 0], max: [plate.width, plate.height] }, {
    x: box.x + left, y: box.y + sideRoom, width: box.width - left - sideRoom, height: box.height - sideRoom - below,
  });
}

/** Every place of a hole along x (0) or y (1), each once, rising. */
function stationsOf({ holes }: FlatPanel, axis: 0 | 1): readonly number[] {
  const rounded = holes.map(({ at }) => Math.round(at[axis] * 1000) / 1000);
  return [...new Set(rounded)].sort((a, b) => a - b);
}

function ownMarks({ width, height, holes }: FlatPanel, view: Fit): readonly Mark[] {
  const ring = allOnPaper(view, [[0, 0], [width, 0], [width, height], [0, height]]);
  return [
    area('panel', ring),
    ...holes.flatMap((hole) => {
      const kind = kindOf(hole);
      const [x, y] = onPaper(view, hole.at);
      const reach = Math.max(crossReach, (hole.diameter / 2) * view.scale + 1);
      return [
        ...holeMark(kind, [x, y], Math.max(leastRadius, (kind.diameter / 2) * view.scale), { ...pens.hole, width: 0.5 }, 'white'),
        line(pens.hole, [x - reach, y], [x + reach, y]),
        line(pens.hole, [x, y - reach], [x, y + reach]),
      ];
    }),
    outline(pens.cut, ring),
    ...plateSign({ width, height, holes }, view),
  ];
}

/** From the edges to the sign of the marked face, mm of paper: drawn small on a small panel. */
const signAway = 3;

function plateSign({ width, height, holes }: Pick<FlatPanel, 'width' | 'height' | 'holes'>, view: Fit): readonly Mark[] {
  const size = Math.max(0.6, Math.min(1, (height * view.scale - 2 * signAway) / pennant.mast));
  const [left, bottom] = onPaper(view, [0, 0]);
  const right = left + width * view.scale;
  const foot = (x: number): Vec2 => [x, bottom - signAway];
  const isClear = (x: number): boolean => holes.every(({ at, diameter }) => {
    const [hx, hy] = onPaper(view, at);
    const reach = (diameter / 2) * view.scale + crossReach + 1;
    return hx < x - reach || hx > x + pennant.out * size + reach || hy < bottom - signAway - pennant.mast * size - reach || hy > bottom - signAway + reach;
  });
  const places = Array.from({ length: 12 }, (_, index) => left + signAway + ((right - left - 2 * signAway - pennant.out) * index) / 12);
  return faceSign(foot(places.find(isClear) ?? left + signAway), 'new', size);
}

/** The holes from the lower left corner, below and on the left; the sides above and on the right. */
function dimensions(plate: FlatPanel, view: Fit): readonly Mark[] {
  const box = boxOnPaper(view, { min: [0, 0], max: [plate.width, plate.height] });
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const hole = (axis: 0 | 1, place: number): Vec2 => onPaper(view, axis === 0 ? [place, 0] : [0, place]);
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(plate.width), ends: [box.x, right], line: box.y - sideGap, feature: box.y, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(plate.height), ends: [bottom, box.y], line: right + sideGap + cap + 1, feature: right, cap }),
    ...(plate.holes.length === 0 ? [] : runningDimension({
      axis: 'x', datum: box.x, line: bottom + dimensionGap, feature: bottom, cap,
      stations: stationsOf(plate, 0).map((at) => ({ at: hole(0, at)[0], told: tell.mm(at) })),
    })),
    ...(plate.holes.length === 0 ? [] : runningDimension({
      axis: 'y', datum: bottom, line: box.x - dimensionGap, feature: box.x, cap,
      stations: stationsOf(plate, 1).map((at) => ({ at: hole(1, at)[1], told: tell.mm(at) })),
    })),
  ];
}

/** How many holes of which diameter in a panel, and how many panels, each beside its sign; blind holes are told by sections of their own. */
const counts = (plate: FlatPanel, count: number | null, box: Box): readonly Mark[] => signs(plate.holes.some(({ depth }) => depth !== undefined) ? [] : holeRow(plate), count, box);

function signs(holes: readonly Row[], count: number | null, box: Box): readonly Mark[] {
  const rows = [...holes, ...(count === null ? [] : [{ sign: panelSign, size: null, count }])];
  const pitch = Math.min(12, box.height / Math.max(1, rows.length));
  return rows.flatMap(({ sign, size, count: each }, index) => {
    const times = tell.times(each);
    const y = box.y + (index + 0.5) * pitch;
    const start = box.x + 9;
    const width = size === null ? 0 : toldWidth(size, cap, 400) + 3;
    return [
      ...sign([box.x + 3.5, y]),
      ...(size === null ? [] : [figure(size, [start + (width - 3) / 2, y], cap)]),
      figure(times, [start + width + toldWidth(times, capHeights.count, 700) / 2, y], capHeights.count, 700),
    ];
  });
}

interface Row {
  readonly sign: (at: Vec2) => readonly Mark[];
  readonly size: Told | null;
  readonly count: number;
}

/** A hole of a flat panel as its drawing shows it: from the marked face, from which a blind one is made. */
const kindOf = ({ diameter, depth }: PlateHole): HoleKind => ({ diameter, depth: depth ?? null, face: 'drawn' });

/** One row for each diameter. */
function holeRow({ holes }: FlatPanel): readonly Row[] {
  const diameters = [...new Set(holes.map(({ diameter }) => diameter))].sort((a, b) => a - b);
  return diameters.map((diameter): Row =>
    ({ sign: (at) => [circle(at, 1.6, pens.motion)], size: tell.diameter(diameter), count: holes.filter((hole) => hole.diameter === diameter).length }));
}

function panelSign([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x - 3.5, y - 2.4], [x + 3.5, y - 2.4], [x + 3.5, y + 2.4], [x - 3.5, y + 2.4]];
  return [area('panel', ring), outline(pens.cut, ring), ...[-1.8, 1.8].map((away) => circle([x + away, y], 0.5, earlier(pens.hole)))];
}
