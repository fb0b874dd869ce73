import type { FlatPattern } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { legendMarks } from './legend.ts';
import { holeLegend } from './hole-marks.ts';
import type { Mark } from '../kit/marks.ts';
import { acrossFlap, creaseMarks, halfCutMarks, holeMarks, insideLineMarks, outlineMarks } from './panel-lines.ts';
import { flapStrip, notchCornerRing, punched, tabCornerRing } from './pattern-details.ts';
import { dimensionRoom, patternDimensions } from './pattern-dimensions.ts';
import { pens } from '../kit/pens.ts';
import type { Paper } from '../kit/svg.ts';
import { toPicture } from '../kit/svg.ts';
import type { Fit } from '../kit/fit.ts';
import { placeWhole, wholeMarks } from './whole.ts';

/** Paper of the pattern page's picture, mm. */
export const patternPaper: Paper = { width: 180, height: 230 };

const margin = 1.5;
/** Share of the height for the enlarged details below the whole view. */
const lowerShare = 0.48;
const lowerGap = 9;
const ringDiameter = 42;

/**
 * The whole flat pattern, inner face up: outline, creases, half-cuts, holes, inside lines, with overall sides,
 * notch and the lines of one flap dimensioned. Below it, enlarged: the notch's round corner, one flap with its
 * lines and pin holes, the tab's snip; and what each line means. Throws a RangeError when the paper is too small.
 */
export function patternPicture(pattern: FlatPattern, paper: Paper = patternPaper): DrawnPicture {
  return toPicture(paper, patternMarks(pattern, paper));
}

/** The marks of the picture, for the tests. */
export function patternMarks(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const lower = paper.height * lowerShare;
  const whole = placeWhole(pattern, upperBox(paper, lower));
  const y = paper.height - lower + lowerGap;
  const height = paper.height - margin - y;
  const left: Box = { x: margin, y, width: ringDiameter, height: ringDiameter };
  const right: Box = { ...left, x: paper.width - margin - ringDiameter };
  const below = { y: y + ringDiameter + 8, height: height - ringDiameter - 8 };
  return [
    wholeMarks(pattern, whole, true, panelMarks(pattern, whole.view)),
    ...patternDimensions(pattern, whole),
    ...notchCornerRing(pattern, whole, left),
    ...flapStrip(pattern, whole, { x: left.x + left.width, y, width: right.x - left.x - left.width, height }),
    ...tabCornerRing(pattern, whole, right),
    ...legendMarks(pattern, { x: left.x, width: ringDiameter + 8, ...below }),
    ...holeLegend(punched(pattern), pattern, { x: right.x - 1, y: below.y, width: right.width }),
  ];
}

function upperBox(paper: Paper, lower: number): Box {
  const { left, right, above } = dimensionRoom;
  return { x: margin + left, y: margin + above, width: paper.width - 2 * margin - left - right, height: paper.height - lower - margin - above };
}

/** Every line of the finished flat panel. */
function panelMarks(pattern: FlatPattern, view: Fit): readonly Mark[] {
  return [
    ...insideLineMarks(pattern, view, pens.inside),
    ...creaseMarks(pattern, view, pens.crease, acrossFlap),
    ...halfCutMarks(pattern, view, pens.halfCut, acrossFlap),
    ...holeMarks(pattern, view, pens.hole),
    ...outlineMarks(pattern, view, pens.cut),
  ];
}
