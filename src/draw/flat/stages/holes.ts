import { flatHoles, type FlatPattern } from '../../../model/index.ts';
import { runningDimension, runningReach } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { acrossBlank, corners, flapOn, holeLines, holeMarks, notchHole, notchSides, panelLine, runsAlongX, snips } from '../panel-lines.ts';
import { cornerMark } from '../hole-marks.ts';
import { earlier, pens } from '../../kit/pens.ts';
import { stripDimensions, stripHoles, stripMarks, stripSource, stripSpan } from '../strip.ts';
import type { Paper } from '../../kit/svg.ts';
import { onPaper } from '../../kit/fit.ts';
import type { Whole } from '../whole.ts';
import { placeWhole, wholeMarks } from '../whole.ts';
import { mainBox, noRoom, stripCount, wholeAndStrip } from './layout.ts';
import { drawnBefore } from './notches.ts';
import { tell } from '../../../scene/index.ts';

const cap = capHeights.step;
const dimensionGap = 5;
/** Panel shown inside the innermost hole, mm. */
const insideShown = 18;

/** Where to punch: along each side from the blank's edges; across each flap from the tab's edge, where pin holes are punched in the flat panel. */
export function holesStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const across = holeLines(pattern).map(({ outwards }) => outwards);
  const alongX = alongPlaces(pattern, 0);
  const alongY = alongPlaces(pattern, 1);
  const room = { ...noRoom, left: dimensionGap + runningReach(alongY.map(tell.mm), cap), bottom: dimensionGap + runningReach(alongX.map(tell.mm), cap) };
  if (across.length === 0) {
    const whole = placeWhole(pattern, mainBox(paper, 0, room));
    return [placesMarks(pattern, whole), ...alongDimensions(pattern, whole, alongX, alongY)];
  }
  const flap = flapOn(pattern, 'back');
  const { whole, strip } = wholeAndStrip(pattern, paper, stripSpan(across.map((at) => tell.mm(flap.edge - at)), cap), Math.min(...across) - insideShown, room);
  return [
    placesMarks(pattern, whole),
    ...alongDimensions(pattern, whole, alongX, alongY),
    ...stripSource(pattern, strip, whole.view, pinShare(pattern)),
    ...stripMarks(strip, { edge: earlier(pens.cut), inside: earlier(pens.inside), crease: earlier(pens.crease), halfCut: earlier(pens.halfCut) }, stripHoles(strip, pattern)),
    ...stripDimensions(strip, flap.edge, across, cap),
    stripCount(strip, pattern.flaps.length),
  ];
}

/** The whole panel as it is marked, with all that is punched. */
const placesMarks = (pattern: FlatPattern, whole: Whole): Mark => wholeMarks(pattern, whole, false, [
  ...drawnBefore(pattern, whole.view, acrossBlank),
  ...corners.flatMap((corner) => [...notchSides(pattern, corner), ...snips(pattern, corner)].map((ends) => panelLine(whole.view, earlier(pens.cut), ends))),
  ...holeMarks(pattern, whole.view, { ...pens.hole, width: 0.5 }),
  ...corners.map((corner) => cornerMark(onPaper(whole.view, notchHole(pattern, corner)))),
]);

/** Distances of punch places from the blank's left (0) or lower (1) edge: pins of the sides that run that way, and notch corners. */
function alongPlaces(pattern: FlatPattern, axis: 0 | 1): readonly number[] {
  const half = pattern.blank[axis] / 2;
  const pins = flatHoles(pattern).filter(({ side }) => runsAlongX(side) === (axis === 0)).map(({ at }) => at[axis]);
  const notches = corners.map((corner) => notchHole(pattern, corner)[axis]);
  const rounded = [...pins, ...notches].map((at) => Math.round((at + half) * 1000) / 1000);
  return [...new Set(rounded)].sort((a, b) => a - b);
}

function alongDimensions(pattern: FlatPattern, { view, blank }: Whole, alongX: readonly number[], alongY: readonly number[]): readonly Mark[] {
  const [width, depth] = pattern.blank;
  const x = (at: number) => onPaper(view, [at - width / 2, 0])[0];
  const y = (at: number) => onPaper(view, [0, at - depth / 2])[1];
  return [
    ...runningDimension({
      axis: 'x', datum: x(0), line: blank.y + blank.height + dimensionGap, feature: blank.y + blank.height, cap,
      stations: alongX.map((at) => ({ at: x(at), told: tell.mm(at) })),
    }),
    ...runningDimension({
      axis: 'y', datum: y(0), line: blank.x - dimensionGap, feature: blank.x, cap,
      stations: alongY.map((at) => ({ at: y(at), told: tell.mm(at) })),
    }),
  ];
}

/** The share of the back flap's length at which its last pin stands: the strip is taken there. */
function pinShare(pattern: FlatPattern): number {
  const { pins, from, to } = flapOn(pattern, 'back');
  return (Math.max(...pins) - from) / (to - from);
}
