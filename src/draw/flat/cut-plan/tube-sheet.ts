import type { TubeSheet } from '../../../cut/index.ts';
import type { Vec2 } from '../../../model/index.ts';
import type { DrawnPicture } from '../../types.ts';
import { runningDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, figure, labelBoxes, line, orderRadius, outline, type Mark, ringedNumeral } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture } from '../../kit/svg.ts';
import { fittingScale } from '../../kit/fit.ts';
import { damageMarks, offCutMarks } from './damage.ts';
import { tell } from '../../kit/told.ts';

const cap = capHeights.step;
const letterCap = 5;
const barHeight = 16;
const margin = 5;
/** Above the bar the order numerals of the cuts, below it the dimension line and turned figures. */
const above = 17;
const dimensionGap = 6;

/** Width of a tube's cut plan, mm of paper: the page's main column. Its height follows from its figures. */
const paperWidth = 165;

/** A cut closer to the tube's end than this is not made, mm. */
const NO_CUT = 0.5;

/**
 * How a tube is sawn: its pieces with their letters, the cuts numbered in the order they are made, their places
 * counted from the sound end, the off-cut hatched, a damaged end crossed out.
 */
export function tubeSheetPicture(sheet: TubeSheet): DrawnPicture {
  const marks = tubeSheetMarks(sheet);
  const lowest = Math.max(above + barHeight, ...labelBoxes(marks).map(({ y, height }) => y + height));
  return toPicture({ width: paperWidth, height: Math.ceil(lowest + 2) }, marks);
}

/** The marks of the picture, for the tests. */
function tubeSheetMarks(sheet: TubeSheet): readonly Mark[] {
  const scale = fittingScale([sheet.length, 0], [paperWidth - 2 * margin, above]);
  const x = (at: number): number => margin + at * scale;
  const [top, bottom] = [above, above + barHeight];
  const box = (from: number, to: number): readonly Vec2[] => [[x(from), top], [x(to), top], [x(to), bottom], [x(from), bottom]];
  const last = sheet.ends.at(-1) ?? 0;
  const sawn = sheet.ends.filter((end) => end < sheet.usable - NO_CUT || sheet.usable < sheet.length);
  return [
    { mark: 'view', name: 'tube', scale, marks: [
      area('panel', box(0, last)),
      ...(last < sheet.usable - NO_CUT ? offCutMarks(box(last, sheet.usable)) : []),
      ...(sheet.usable < sheet.length ? damageMarks(box(sheet.usable, sheet.length)) : []),
      outline(pens.cut, box(0, sheet.length)),
      ...sawn.map((end) => line(pens.cut, [x(end), top - 2.5], [x(end), bottom + 2])),
    ] },
    ...sheet.pieces.map((letter, index): Mark => figure(tell.letters(letter), [(x(sheet.ends[index - 1] ?? 0) + x(sheet.ends[index] ?? 0)) / 2, (top + bottom) / 2], letterCap, 700)),
    ...orderMarks(sawn.map(x), top),
    ...runningDimension({
      axis: 'x', datum: margin, line: bottom + dimensionGap, feature: bottom, cap, bounds: [0.5, paperWidth - 0.5],
      stations: sawn.map((end) => ({ at: x(end), told: tell.mm(end) })),
    }),
  ];
}

/** A ringed numeral over each cut; where cuts are close together every other one stands higher. */
function orderMarks(places: readonly number[], top: number): readonly Mark[] {
  const radius = orderRadius(tell.number(10), capHeights.order);
  const raised = places.reduce<readonly boolean[]>((rows, place, index) =>
    [...rows, place - (places[index - 1] ?? -Infinity) < 2 * radius + 0.5 && rows[index - 1] !== true], []);
  return places.map((place, index): Mark => ringedNumeral(tell.number(index + 1), [place, top - 2.5 - radius * (raised[index] === true ? 3.1 : 1)], capHeights.order, pens.edge));
}
