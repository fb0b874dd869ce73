import { flatHoles, type FlatPattern, type Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { linearDimension, runningReach } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { area, arrowhead, figure, line, toldWidth } from '../kit/marks.ts';
import type { HoleKind } from './hole-marks.ts';
import { corners, flapOn, holeLines, notchHole, notchRing, outlineMarks, rectangle, snips } from './panel-lines.ts';
import { flapPlaces } from './pattern-dimensions.ts';
import { pens } from '../kit/pens.ts';
import type { RingDetail } from './ring.ts';
import { ringMarks, ringView } from './ring.ts';
import { placeStrip, stripDimensions, stripHoles, stripMarks, stripSource, stripSpan } from './strip.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper, onPaper } from '../kit/fit.ts';
import type { Whole } from './whole.ts';
import { tell } from '../../scene/index.ts';

const cap = capHeights.pattern;
/** Panel shown inside the innermost hole, mm. */
const insideShown = 15;
const arcSteps = 24;
/** Size of the feature over the ring's radius. */
const sizeShare = 0.62;

/** The front flap enlarged: lines measured from the inside line on its right, pin holes from the tab's edge on its left. */
export function flapStrip(pattern: FlatPattern, whole: Whole, box: Box): readonly Mark[] {
  const flap = flapOn(pattern, 'front');
  const places = flapPlaces(pattern, 'front');
  const holes = holeLines(pattern).map(({ outwards }) => outwards);
  const onLeft = 5 + runningReach(holes.map((at) => tell.mm(flap.edge - at)), cap);
  const span = onLeft + stripSpan(places.map(tell.mm), cap);
  const strip = placeStrip(flap, { ...box, x: box.x + (box.width - span) / 2 + onLeft, width: span - onLeft }, Math.min(0, ...holes) - insideShown);
  return [
    ...stripSource(pattern, strip, whole.view, 0.5),
    ...stripMarks(strip, { edge: pens.cut, inside: pens.inside, crease: pens.crease, halfCut: pens.halfCut }, stripHoles(strip, pattern)),
    ...stripDimensions(strip, 0, places, cap),
    ...(holes.length === 0 ? [] : stripDimensions(strip, flap.edge, holes, cap, 'left')),
  ];
}

/** The notch's round inner corner, from the lower left of the panel, in a ring at the top of a box. */
export function notchCornerRing(pattern: FlatPattern, whole: Whole, box: Box): readonly Mark[] {
  const corner: Vec2 = [-1, -1];
  const detail = ringAt('notch-corner', box, notchHole(pattern, corner), pattern.notchRadius);
  const view = ringView(detail);
  const middle = onPaper(view, detail.at);
  const reach = pattern.notchRadius * view.scale * Math.SQRT1_2;
  const tip: Vec2 = [middle[0] + reach, middle[1] - reach];
  const told = tell.radius(pattern.notchRadius);
  return [
    ...ringMarks(detail, whole.view, (inRing) => roundCorner(pattern, inRing, corner)),
    line(pens.dimension, tip, middle),
    arrowhead(tip, [1, -1]),
    figure(told, [middle[0] - 1.5 - toldWidth(told, cap, 400) / 2, middle[1] + cap / 2 + 1], cap),
  ];
}

function roundCorner(pattern: FlatPattern, view: Fit, corner: Vec2): readonly Mark[] {
  const notch = allOnPaper(view, notchRing(pattern, corner, arcSteps));
  return [
    area('panel', allOnPaper(view, rectangle([pattern.blank[0] / 2, pattern.blank[1] / 2]))),
    area('white', notch),
    line(pens.cut, ...notch.slice(0, -1)),
  ];
}

/** The snip of a tab's corner, from the lower right of the panel, in a ring at the top of a box. */
export function tabCornerRing(pattern: FlatPattern, whole: Whole, box: Box): readonly Mark[] {
  const [from, to] = snips(pattern, [1, -1])[0];
  const detail = ringAt('tab-corner', box, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], flapOn(pattern, 'right').corner);
  const view = ringView(detail);
  const [start, end] = [onPaper(view, from), onPaper(view, to)];
  return [
    ...ringMarks(detail, whole.view, (inRing) => [area('panel', allOnPaper(inRing, pattern.outline)), ...outlineMarks(pattern, inRing, pens.cut)]),
    ...linearDimension({ axis: 'x', told: tell.mm(flapOn(pattern, 'right').corner), ends: [start[0], end[0]], line: start[1] + cap + 3, feature: start[1], cap }),
  ];
}

function ringAt(name: string, box: Box, at: Vec2, size: number): RingDetail {
  const radius = Math.min(box.width, box.height) / 2;
  return { name, at, centre: [box.x + box.width / 2, box.y + radius], radius, scale: (radius * sizeShare) / size };
}

/** Everything that is punched in the flat panel: the pins' holes, and the round corners of the notches. */
export const punched = (pattern: FlatPattern): readonly HoleKind[] =>
  [...flatHoles(pattern), ...corners.map((): HoleKind => ({ diameter: 2 * pattern.notchRadius, depth: null, face: 'drawn' }))];
