import type { FlatPattern, Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { area, outline } from '../../kit/marks.ts';
import type { Reach } from '../panel-lines.ts';
import { acrossBlank, blankMarks, corners, creaseMarks, detailCorner, halfCutMarks, insideMarks, notchSides, panelLine, snips } from '../panel-lines.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { RingDetail } from '../ring.ts';
import { ringMarks, ringView } from '../ring.ts';
import type { Paper } from '../../kit/svg.ts';
import type { Fit } from '../../kit/fit.ts';
import { allOnPaper, onPaper } from '../../kit/fit.ts';
import { placeWhole, wholeMarks } from '../whole.ts';
import { columnBox, countMark, mainBox, noRoom, oneRow } from './layout.ts';
import { tell } from '../../../scene/index.ts';

const cap = capHeights.step;
const column = 44;
const dimensionGap = 4.5;
/** Length of the snip's leg over the ring's radius: long enough for its figure. */
const legShare = 0.85;

/** The notches, measured from the blank's corner, and the snips off the tabs beside them. */
export function notchesStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const whole = placeWhole(pattern, mainBox(paper, column, { ...noRoom, top: oneRow, left: oneRow }));
  const detail = snipDetail(pattern, columnBox(paper, column));
  return [
    wholeMarks(pattern, whole, false, [
      ...drawnBefore(pattern, whole.view, acrossBlank),
      ...corners.flatMap((corner) => notchAndSnips(pattern, whole.view, corner)),
    ]),
    ...notchDimensions(pattern, whole.view, whole.blank),
    ...ringMarks(detail, whole.view, (view) => cornerMarks(pattern, view)),
    ...snipDimensions(pattern, detail),
    countMark(2 * corners.length, detail.centre[0], detail.centre[1] + detail.radius + 4 + capHeights.count / 2),
  ];
}

/** The blank with what has been marked on it so far. */
export function drawnBefore(pattern: FlatPattern, view: Fit, reach: Reach): readonly Mark[] {
  return [
    ...blankMarks(pattern, view, earlier(pens.cut)),
    ...insideMarks(pattern, view, earlier(pens.inside)),
    ...creaseMarks(pattern, view, earlier(pens.crease), reach),
    ...halfCutMarks(pattern, view, earlier(pens.halfCut), reach),
  ];
}

function notchAndSnips(pattern: FlatPattern, view: Fit, corner: Vec2): readonly Mark[] {
  return [...notchSides(pattern, corner), ...snips(pattern, corner)].map((ends) => panelLine(view, pens.cut, ends));
}

/** What the ring shows: the blank's edge, the marks of the corner and the half-cut of the tab. */
function cornerMarks(pattern: FlatPattern, view: Fit): readonly Mark[] {
  const [x, y] = [pattern.blank[0] / 2, pattern.blank[1] / 2];
  const edge = allOnPaper(view, [[-x, -y], [x, -y], [x, y], [-x, y]]);
  return [area('panel', edge), outline(earlier(pens.cut), edge), ...notchAndSnips(pattern, view, detailCorner)];
}

/** The notch's sides: one measured above the upper right corner of the blank, one beside the upper left corner. */
function notchDimensions(pattern: FlatPattern, view: Fit, blank: Box): readonly Mark[] {
  const [x] = onPaper(view, [pattern.blank[0] / 2 - pattern.notch[0], 0]);
  const y = onPaper(view, [0, pattern.blank[1] / 2 - pattern.notch[1]])[1];
  return [
    ...linearDimension({ axis: 'x', told: tell.mm(pattern.notch[0]), ends: [x, blank.x + blank.width], line: blank.y - dimensionGap, feature: blank.y, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(pattern.notch[1]), ends: [y, blank.y], line: blank.x - dimensionGap, feature: blank.x, cap }),
  ];
}

/** The corner of the right flap's tab, in a ring in the column. */
function snipDetail(pattern: FlatPattern, box: Box): RingDetail {
  const [start, end] = snips(pattern, detailCorner)[0];
  const size = Math.abs(end[0] - start[0]);
  const radius = box.width / 2 - 3;
  return {
    name: 'tab-corner',
    at: [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2],
    centre: [box.x + box.width / 2, box.y + box.height / 2],
    radius,
    scale: (radius * legShare) / size,
  };
}

/** Both legs of the snip, inside the ring. */
function snipDimensions(pattern: FlatPattern, detail: RingDetail): readonly Mark[] {
  const view = ringView(detail);
  const [start, end] = snips(pattern, detailCorner)[0];
  const high = onPaper(view, start);
  const low = onPaper(view, end);
  const told = tell.mm(Math.abs(end[0] - start[0]));
  return [
    ...linearDimension({ axis: 'x', told, ends: [high[0], low[0]], line: high[1] - 3, feature: high[1], cap }),
    ...linearDimension({ axis: 'y', told, ends: [low[1], high[1]], line: low[0] + 3 + cap, feature: low[0], cap }),
  ];
}
