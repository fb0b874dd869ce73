import type { FlatPattern } from '../../model/index.ts';
import type { Box, Picture } from '../types.ts';
import { linearDimension, runningDimension, runningReach } from './dimension.ts';
import { legendMarks } from './legend.ts';
import { capHeights, lengthText, textWidth } from './lettering.ts';
import type { Mark } from './marks.ts';
import { area, arrowhead, figure, line } from './marks.ts';
import {
  acrossFlap, creaseMarks, detailCorner, flapOn, halfCutMarks, holeMarks, insideLineMarks, notchHole, notchInner, outlineMarks, snips,
} from './panel-lines.ts';
import { panelTint, pens } from './pens.ts';
import type { RingDetail } from './ring.ts';
import { ringMarks, ringView } from './ring.ts';
import { placeStrip, stripDimensions, stripMarks, stripSource, stripSpan } from './strip.ts';
import type { Paper } from './svg.ts';
import { toPicture } from './svg.ts';
import type { View } from './view.ts';
import { allOnPaper, fittingScale, onPaper } from './view.ts';
import type { Whole } from './whole.ts';
import { placeWhole, wholeMarks } from './whole.ts';

/** Paper of the pattern page's picture, mm. */
export const patternPaper: Paper = { width: 180, height: 230 };

const cap = capHeights.pattern;
const margin = 1.5;
/** Between the panel and the first and second row of dimensions. */
const nearRow = 6;
const overallGap = 3;
const insideShown = 80;
const ringRadius = 21;

/**
 * The whole flat pattern, inner face up: outline, creases, half-cuts, holes, inside lines; overall and running
 * dimensions, the notch; below it one flap enlarged with its lines and pin holes, the notch's round corner and
 * the tab's snip in rings, and the meaning of the lines. Throws a RangeError when the paper is too small.
 */
export function patternPicture(pattern: FlatPattern, paper: Paper = patternPaper): Picture {
  return toPicture('pattern', paper, patternMarks(pattern, paper));
}

/** The marks of the picture, for the tests. */
export function patternMarks(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const lower = Math.max(78, paper.height * 0.44);
  const upper: Box = { x: margin, y: margin, width: paper.width - 2 * margin, height: paper.height - lower - 2 * margin };
  const whole = placeWhole(pattern, mainBox(pattern, upper));
  const low: Box = { x: margin, y: paper.height - lower, width: paper.width - 2 * margin, height: lower - margin };
  return [
    wholeMarks(pattern, whole, true, panelMarks(pattern, whole.view)),
    ...runningAlongX(pattern, whole),
    ...runningAlongY(pattern, whole),
    ...overall(pattern, whole),
    ...notchSize(pattern, whole),
    ...flapStrip(pattern, whole, low),
    ...rings(pattern, whole, low),
    ...legendMarks(pattern, { x: low.x + low.width - 52, y: low.y + low.height / 2 + 2, width: 52, height: low.height / 2 - 4 }),
  ];
}

/** Every line of the finished flat panel. */
export function panelMarks(pattern: FlatPattern, view: View): readonly Mark[] {
  return [
    ...insideLineMarks(pattern, view, pens.inside),
    ...creaseMarks(pattern, view, pens.crease, acrossFlap),
    ...halfCutMarks(pattern, view, pens.halfCut, acrossFlap),
    ...holeMarks(pattern, view, pens.hole),
    ...outlineMarks(pattern, view, pens.cut),
  ];
}

/** Lines of a flap that are measured from its inside line. */
function flapPlaces(pattern: FlatPattern, side: 'right' | 'back'): readonly number[] {
  const flap = flapOn(pattern, side);
  return [...flap.creases, flap.halfCut, flap.edge];
}

function longestFigure(pattern: FlatPattern): readonly string[] {
  return flapPlaces(pattern, 'back').map(lengthText);
}

const runningRoom = (pattern: FlatPattern): number => nearRow + runningReach(longestFigure(pattern), cap);

function mainBox(pattern: FlatPattern, box: Box): Box {
  const room = runningRoom(pattern) + overallGap + cap + 2;
  const top = nearRow + cap + 2;
  return { x: box.x + room, y: box.y + top, width: box.width - room - top, height: box.height - room - top };
}

/** Right flap, below the panel. */
function runningAlongX(pattern: FlatPattern, { view, blank }: Whole): readonly Mark[] {
  const x = (outwards: number) => onPaper(view, [pattern.inside[0] + outwards, 0])[0];
  const low = onPaper(view, [0, flapOn(pattern, 'right').from])[1];
  const corner = onPaper(view, [0, flapOn(pattern, 'right').from + flapOn(pattern, 'right').corner])[1];
  const edge = flapOn(pattern, 'right').edge;
  return runningDimension({
    axis: 'x', datum: x(0), line: blank.y + blank.height + nearRow, feature: low, cap,
    stations: flapPlaces(pattern, 'right').map((at) => ({ at: x(at), text: lengthText(at), feature: at === edge ? corner : low })),
  });
}

/** Back flap, left of the panel. */
function runningAlongY(pattern: FlatPattern, { view, blank }: Whole): readonly Mark[] {
  const y = (outwards: number) => onPaper(view, [0, pattern.inside[1] + outwards])[1];
  const left = onPaper(view, [flapOn(pattern, 'back').from, 0])[0];
  const corner = onPaper(view, [flapOn(pattern, 'back').from + flapOn(pattern, 'back').corner, 0])[0];
  const edge = flapOn(pattern, 'back').edge;
  return runningDimension({
    axis: 'y', datum: y(0), line: blank.x - nearRow, feature: left, cap,
    stations: flapPlaces(pattern, 'back').map((at) => ({ at: y(at), text: lengthText(at), feature: at === edge ? corner : left })),
  });
}

/** Sides of the blank, outside the running dimensions. */
function overall(pattern: FlatPattern, { blank }: Whole): readonly Mark[] {
  const away = runningRoom(pattern) + overallGap + cap;
  const [right, bottom] = [blank.x + blank.width, blank.y + blank.height];
  return [
    ...linearDimension({ axis: 'x', text: lengthText(pattern.blank[0]), ends: [blank.x, right], line: bottom + away, feature: bottom, cap }),
    ...linearDimension({ axis: 'y', text: lengthText(pattern.blank[1]), ends: [bottom, blank.y], line: blank.x - away + cap, feature: blank.x, cap }),
  ];
}

/** The notch's sides, above and on the right of the panel. */
function notchSize(pattern: FlatPattern, { view, blank }: Whole): readonly Mark[] {
  const [x, y] = onPaper(view, notchInner(pattern, detailCorner));
  const right = blank.x + blank.width;
  return [
    ...linearDimension({ axis: 'x', text: lengthText(pattern.notch[0]), ends: [x, right], line: blank.y - nearRow + 2, feature: blank.y, cap }),
    ...linearDimension({ axis: 'y', text: lengthText(pattern.notch[1]), ends: [y, blank.y], line: right + nearRow - 2 + cap, feature: right, cap }),
  ];
}

/** The back flap's strip with its lines on one side and its pin holes, measured from the tab's edge. */
function flapStrip(pattern: FlatPattern, whole: Whole, low: Box): readonly Mark[] {
  const flap = flapOn(pattern, 'back');
  const places = flapPlaces(pattern, 'back');
  const strip = placeStrip(flap, { ...low, x: low.x + 2, width: stripSpan(places.map(lengthText), cap) }, -insideShown);
  return [
    ...stripMarks(strip, { edge: pens.cut, inside: pens.inside, crease: pens.crease, halfCut: pens.halfCut }),
    ...stripDimensions(strip, 0, places, cap),
    ...stripSource(pattern, strip, whole.view, 0.1),
  ];
}

/** The round corner of the notch and the snip of the tab. */
function rings(pattern: FlatPattern, whole: Whole, low: Box): readonly Mark[] {
  const details = ringDetails(pattern, low);
  return [
    ...details.flatMap((detail) => ringMarks(detail, whole.view, (view) => [
      area(panelTint, allOnPaper(view, pattern.outline)),
      ...panelMarks(pattern, view),
    ])),
    ...radiusFigure(pattern, details[0]),
    ...snipFigure(pattern, details[1]),
  ];
}

function ringDetails(pattern: FlatPattern, low: Box): readonly [RingDetail, RingDetail] {
  const corner = [1, -1] as const;
  const [from, to] = snips(pattern, corner)[0];
  const snip = Math.abs(to[0] - from[0]);
  const y = low.y + ringRadius + 2;
  const scaleFor = (size: number) => fittingScale([size, size], [ringRadius * 0.6, ringRadius * 0.6], true);
  return [
    { name: 'notch-corner', at: notchHole(pattern, corner), centre: [low.x + low.width - 3.4 * ringRadius, y], radius: ringRadius, scale: scaleFor(pattern.notchRadius) },
    { name: 'tab-corner', at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], centre: [low.x + low.width - ringRadius, y], radius: ringRadius, scale: scaleFor(snip) },
  ];
}

/** The notch's inside radius: an arrow from its middle to the round corner (ISO 129-1: R before the figure). */
function radiusFigure(pattern: FlatPattern, detail: RingDetail): readonly Mark[] {
  const view = ringView(detail);
  const middle = onPaper(view, detail.at);
  const reach = pattern.notchRadius * view.scale * Math.SQRT1_2;
  const text = `R${lengthText(pattern.notchRadius)}`;
  const tip = [middle[0] - reach, middle[1] - reach] as const;
  return [
    line(pens.dimension, tip, middle),
    arrowhead(tip, [-1, -1]),
    figure(text, [middle[0] + 1.5 + textWidth(text, cap, 400) / 2, middle[1] + cap / 2 + 1], cap),
  ];
}

function snipFigure(pattern: FlatPattern, detail: RingDetail): readonly Mark[] {
  const view = ringView(detail);
  const [from, to] = snips(pattern, [1, -1])[0].map((point) => onPaper(view, point));
  if (!from || !to) return [];
  const text = lengthText(flapOn(pattern, 'right').corner);
  return linearDimension({ axis: 'x', text, ends: [from[0], to[0]], line: from[1] + 4.5, feature: from[1], cap });
}
