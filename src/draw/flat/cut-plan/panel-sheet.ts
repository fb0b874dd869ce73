import { loosePieces, numberedCuts, type NumberedCut, type PanelSheet, type Rectangle } from '../../../cut/index.ts';
import type { Vec2 } from '../../../model/index.ts';
import type { DrawnPicture } from '../../types.ts';
import { runningDimension, runningReach } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, labelBoxes, line, orderRadius, outline, toldWidth, type Mark, ringedNumeral } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture } from '../../kit/svg.ts';
import { allOnPaper, boxOnPaper, fittingScale, onPaper, type Fit } from '../../kit/fit.ts';
import { damageMarks, offCutMarks } from './damage.ts';
import { orderPlaces } from './order-places.ts';
import { tell } from '../../../scene/index.ts';

const cap = capHeights.step;
const letterCap = 5;
const margin = 1.5;
const dimensionGap = 7;
/** Cut lines run out past the panel's edge to their numerals. */
const pastEdge = 3;
/** Places closer than this are one station, mm. */
const SAME = 0.25;

/** Width of a panel's cut plan, mm of paper: the page's main column. Its height follows from the panel and its figures. */
const paperWidth = 165;
const mostHeight = 150;

/** The corner all places are counted from: the first that is whole. */
export interface Datum {
  readonly right: boolean;
  readonly upper: boolean;
}

function soundCorner({ length, width, defects }: PanelSheet): Datum {
  const corners: readonly Datum[] = [{ right: false, upper: false }, { right: true, upper: false }, { right: false, upper: true }, { right: true, upper: true }];
  const whole = ({ right, upper }: Datum): boolean => !defects.some(({ x, y, width: wide, height: high }) =>
    (right ? x + wide >= length - SAME : x <= SAME) && (upper ? y + high >= width - SAME : y <= SAME));
  return corners.find(whole) ?? { right: false, upper: false };
}

/**
 * How a panel is cut: its pieces with their letters, the cuts from edge to edge numbered in the order they are made,
 * the letter of a pattern ringed, every place counted from one sound corner, off-cuts hatched, damage crossed out.
 */
export function panelSheetPicture(sheet: PanelSheet): DrawnPicture {
  const marks = panelSheetMarks(sheet);
  const lowest = Math.max(...labelBoxes(marks).map(({ y, height }) => y + height), panelView(sheet).low);
  return toPicture({ width: paperWidth, height: Math.ceil(lowest + 2) }, marks);
}

/** The marks of the picture, for the tests. */
function panelSheetMarks(sheet: PanelSheet): readonly Mark[] {
  const { length, width } = sheet;
  const cuts = numberedCuts(sheet.cuts);
  const datum = soundCorner(sheet);
  const { view } = panelView(sheet);
  const box = boxOnPaper(view, { min: [0, 0], max: [length, width] });
  const order = orderCap(cuts);
  const ring = (part: Rectangle): readonly Vec2[] => allOnPaper(view, [[part.x, part.y], [part.x + part.width, part.y], [part.x + part.width, part.y + part.height], [part.x, part.y + part.height]]);
  return [
    { mark: 'view', name: 'panel', scale: view.scale, marks: [
      ...sheet.pieces.map((piece) => area('panel', ring(piece))),
      ...sheet.offCuts.flatMap(({ region }) => offCutMarks(ring(region))),
      ...sheet.defects.flatMap((defect) => damageMarks(ring(defect))),
      outline(pens.cut, ring({ x: 0, y: 0, width: length, height: width })),
      ...cuts.map((cut) => cutLine(cut, view, sheet)),
      ...loosePieces(sheet.cuts).map((lies) => outline(pens.cut, ring(lies))),
    ] },
    ...letters(sheet, view),
    ...orderPlaces(cuts, sheet, view, { pastEdge, cap: order }).map(({ cut, at }): Mark => ringedNumeral(tell.number(cut.number), at, order, pens.edge)),
    ...corner(datum, box),
    ...stations(cuts, datum, sheet, view),
    ...(sheet.grain === null ? [] : grainArrow(sheet.grain, [box.x + box.width, box.y])),
  ];
}

/** Many cuts get smaller numerals. */
const orderCap = (cuts: readonly NumberedCut[]): number => (cuts.length > 9 ? 2.6 : capHeights.order);

/** Where the panel lies on the paper: as large as the column lets it, close to the top; `low` is its lower edge. */
function panelView({ length, width, cuts }: PanelSheet): { readonly view: Fit; readonly low: number } {
  const heights = [...numberedCuts(cuts).filter(({ axis }) => axis === 'y').map(({ at }) => at), ...loosePieces(cuts).flatMap(({ y, height }) => [y, y + height])].map(tell.mm);
  const left = margin + (heights.length === 0 ? 0 : dimensionGap + runningReach(heights, cap));
  const numerals = margin + pastEdge + 2 * orderRadius(tell.number(10), capHeights.order);
  const scale = fittingScale([length, width], [paperWidth - left - numerals, mostHeight]);
  const low = numerals + width * scale;
  return { view: { scale, origin: [left + (paperWidth - left - numerals - length * scale) / 2, low] }, low };
}

/** A cut as far as it runs; where it meets the panel's upper or right edge it runs out to its numeral. */
function cutLine({ axis, at, from, to }: NumberedCut, view: Fit, { length, width }: PanelSheet): Mark {
  const past = pastEdge / view.scale;
  return axis === 'x'
    ? line(pens.cut, onPaper(view, [at, from]), onPaper(view, [at, to > width - SAME ? to + past : to]))
    : line(pens.cut, onPaper(view, [from, at]), onPaper(view, [to > length - SAME ? to + past : to, at]));
}

/** The ring of a pattern's letter, as a share of the letter's height or width, whichever is more. */
const ringShare = 1.1;

/** The letter in the middle of each piece, smaller in a small one; ringed where the piece is the pattern of others. */
function letters({ pieces }: PanelSheet, view: Fit): readonly Mark[] {
  return pieces.flatMap(({ x, y, width, height, letter, isPattern }) => {
    const room = Math.min(width, height) * view.scale;
    const size = Math.max(2.5, Math.min(letterCap, room * 0.5, (letterCap * width * view.scale * 0.8) / toldWidth(tell.letters(letter), letterCap, 700)));
    const at = onPaper(view, [x + width / 2, y + height / 2]);
    const ring = ringShare * Math.max(size, toldWidth(tell.letters(letter), size, 700));
    return [...(isPattern ? [circle(at, ring, pens.cut, 'white')] : []), figure(tell.letters(letter), at, size, 700)];
  });
}

/** A filled quarter disc in the corner that all places are counted from. */
function corner({ right, upper }: Datum, box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }): readonly Mark[] {
  const at: Vec2 = [right ? box.x + box.width : box.x, upper ? box.y : box.y + box.height];
  const [sx, sy] = [right ? -1 : 1, upper ? 1 : -1];
  const turn = Array.from({ length: 13 }, (_, index): Vec2 => {
    const angle = (index / 12) * (Math.PI / 2);
    return [at[0] + sx * 4.5 * Math.cos(angle), at[1] + sy * 4.5 * Math.sin(angle)];
  });
  return [area('ink', [at, ...turn]), circle(at, 0.6, null, 'white')];
}

/** Every place of a cut, counted from the sound corner: those along the length below, those along the width on the left. */
function stations(cuts: readonly NumberedCut[], { right, upper }: Datum, { length, width, cuts: cutPart }: PanelSheet, view: Fit): readonly Mark[] {
  const box = boxOnPaper(view, { min: [0, 0], max: [length, width] });
  const bottom = box.y + box.height;
  const loose = loosePieces(cutPart);
  const places = (axis: 'x' | 'y'): readonly number[] => [
    ...cuts.filter((cut) => cut.axis === axis).map(({ at }) => at),
    ...loose.flatMap((lies) => (axis === 'x' ? [lies.x, lies.x + lies.width] : [lies.y, lies.y + lies.height])),
  ].filter((at) => at > SAME && at < (axis === 'x' ? length : width) - SAME).sort((a, b) => a - b).filter((at, index, all) => index === 0 || at - (all[index - 1] ?? at) > SAME);
  const [xs, ys] = [places('x'), places('y')];
  return [
    ...(xs.length === 0 ? [] : runningDimension({
      axis: 'x', datum: right ? box.x + box.width : box.x, line: bottom + dimensionGap, feature: bottom, cap, bounds: [0.5, paperWidth - 0.5],
      stations: xs.map((at) => ({ at: onPaper(view, [at, 0])[0], told: tell.mm(right ? length - at : at) })),
    })),
    ...(ys.length === 0 ? [] : runningDimension({
      axis: 'y', datum: upper ? box.y : bottom, line: box.x - dimensionGap, feature: box.x, cap, bounds: [0.5, bottom + 2],
      stations: ys.map((at) => ({ at: onPaper(view, [0, at])[1], told: tell.mm(upper ? width - at : at) })),
    })),
  ];
}

/** The direction of the grain, over the panel's right end. */
function grainArrow(grain: 'length' | 'width', [right, top]: Vec2): readonly Mark[] {
  const [from, to]: readonly [Vec2, Vec2] = grain === 'length' ? [[right - 22, top - 8], [right - 2, top - 8]] : [[right + 8, top + 22], [right + 8, top + 2]];
  return [line(pens.motion, from, to), arrowhead(to, [to[0] - from[0], to[1] - from[1]], 4), arrowhead(from, [from[0] - to[0], from[1] - to[1]], 4)];
}
