import { flatHoles, type Pattern } from '../../../model/index.ts';
import type { Box, DrawnPicture } from '../../types.ts';
import { linearDimension, runningReach } from '../../kit/dimension.ts';
import { allOnPaper, boxOnPaper, fitToScale } from '../../kit/fit.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import { patternPaper } from '../pattern-picture.ts';
import { tell } from '../../../scene/index.ts';
import { bendMarks, blankSides, patternHoles, patternOutline, firstMarks } from './bend-lines.ts';
import { coordinateGap, coordinateMarks, outlinePlaces, punchedFlat } from './coordinates.ts';
import { flapKinds } from './flap-kinds.ts';
import { holeLegend, legendHeight } from '../hole-marks.ts';
import { kindNumerals, kindStrips } from './kind-strip.ts';
import { snipSign } from './snip-sign.ts';

const cap = capHeights.pattern;
const margin = 1.5;
/** Share of the height for the strips below the whole view. */
const lowerShare = 0.42;
const sideGap = 4;
const sideRoom = sideGap + cap + 3;
const snipHeight = 10;
/** Share of the width for the legend of the holes; the rest is for the snip. */
const holesShare = 0.6;

/**
 * The whole flat pattern of any panel that is folded, inner face up: every line, its overall sides, its edges measured from
 * the blank's lower left corner, the kinds of its flaps numbered. Below it a strip for each kind with all its lines, the
 * holes by size, the snip of the tabs. Throws a RangeError when the paper is too small.
 */
export function foldedPatternPicture(pattern: Pattern, paper: Paper = patternPaper): DrawnPicture {
  return toPicture(paper, foldedPatternMarks(pattern, paper));
}

/** The marks of the picture, for the tests. */
export function foldedPatternMarks(pattern: Pattern, paper: Paper): readonly Mark[] {
  const lower = paper.height * lowerShare;
  const holesWide = (paper.width - 2 * margin) * (snipSign(pattern) ? holesShare : 1);
  const signsHeight = Math.max(snipHeight, legendHeight(punchedFlat(pattern), holesWide) + 1);
  const kinds = flapKinds(pattern);
  const extent = { min: pattern.min, max: pattern.max };
  const places = outlinePlaces(pattern);
  const view = fitToScale(extent, wholeBox(places.map((each) => each.map(tell.mm)), paper, lower));
  const blank = boxOnPaper(view, extent);
  const signs = paper.height - margin - signsHeight;
  return [
    { mark: 'view', name: 'whole', scale: view.scale, marks: [
      area('panel', allOnPaper(view, pattern.outline)),
      ...firstMarks(pattern, view, pens.inside), ...bendMarks(pattern, 'crease', view, pens.crease), ...bendMarks(pattern, 'half-cut', view, pens.halfCut),
      ...patternHoles(flatHoles(pattern), view, pens.hole), patternOutline(pattern, view, pens.cut),
    ] },
    ...sides(pattern, blank),
    ...coordinateMarks(pattern, places, view, blank, cap, { x: [0.5, paper.width - 0.5], y: [0.5, paper.height - lower] }),
    ...kindNumerals(kinds, view),
    ...kindStrips(kinds, 'mark', pattern.thickness, { x: margin, y: paper.height - lower + 4, width: paper.width - 2 * margin, height: lower - signsHeight - 6 }),
    ...holeLegend(punchedFlat(pattern), pattern, { x: margin, y: signs + 1, width: holesWide }),
    ...(snipSign(pattern)?.(paper.width * 0.62, signs + 1) ?? []),
  ];
}

function wholeBox([xs, ys]: readonly (readonly ReturnType<typeof tell.mm>[])[], paper: Paper, lower: number): Box {
  const left = coordinateGap + runningReach(ys ?? [], cap);
  const below = coordinateGap + runningReach(xs ?? [], cap);
  return { x: margin + left, y: margin + sideRoom, width: paper.width - 2 * margin - left - sideRoom, height: paper.height - lower - margin - sideRoom - below };
}

/** The blank's sides above it and on its right. */
function sides(pattern: Pattern, blank: Box): readonly Mark[] {
  const [width, height] = blankSides(pattern);
  const [right, bottom] = [blank.x + blank.width, blank.y + blank.height];
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(width), ends: [blank.x, right], line: blank.y - sideGap, feature: blank.y, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(height), ends: [bottom, blank.y], line: right + sideGap + cap + 1, feature: right, cap }),
  ];
}
