import type { FlatPattern, Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { area, arrowhead, circle, line, outline, ringedNumeral } from '../../kit/marks.ts';
import { acrossFlap, corners, creaseMarks, detailCorner, halfCutMarks, holeMarks, insideLineMarks, notchHole, notchInner, notchRing, notchSides, outlineMarks, snips } from '../panel-lines.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { Paper } from '../../kit/svg.ts';
import type { Fit } from '../../kit/fit.ts';
import { allOnPaper, fitToScale, onPaper } from '../../kit/fit.ts';
import { placeWhole, wholeMarks } from '../whole.ts';
import { columnBox, countMark, gap, mainBox, noRoom } from './layout.ts';
import { tell } from '../../../scene/index.ts';
import { boxWindow } from '../../kit/clip.ts';
import { clipMarks } from '../../kit/clip-marks.ts';
import { hatching } from '../../kit/hatching.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { boardUnder } from '../cut-on-board.ts';
import { keptSign } from '../kept-sign.ts';

const column = 62;
/** How far the waste is moved away from its place, mm of paper. */
const apart = 5;
/** The enlarged corner's frame on the whole view rises this far over the waste. */
const sourceRoom = 6.5;
const hatchPitch = 2.2;

/** The waste of the four corners taken off, and the knife's paths in their order at one corner, enlarged; the sign of the step that needs what falls off, where one does. */
export function notchesCutStage(pattern: FlatPattern, paper: Paper, keptFor: readonly number[] = []): readonly Mark[] {
  const whole = placeWhole(pattern, mainBox(paper, column, { ...noRoom, left: apart, right: apart, top: apart + sourceRoom, bottom: apart }));
  const frame = cornerFrame(columnBox(paper, column));
  const corner = cornerView(pattern, frame);
  return [
    wholeMarks(pattern, whole, true, [
      ...insideLineMarks(pattern, whole.view, earlier(pens.inside)),
      ...creaseMarks(pattern, whole.view, earlier(pens.crease), acrossFlap),
      ...halfCutMarks(pattern, whole.view, earlier(pens.halfCut), acrossFlap),
      ...holeMarks(pattern, whole.view, earlier(pens.hole)),
      ...outlineMarks(pattern, whole.view, pens.cut),
      ...corners.flatMap((at) => wasteMarks(pattern, whole.view, at)),
    ]),
    ...source(whole.view, corner, frame),
    ...clipMarks(underCorner(pattern, corner, frame), boxWindow(frame)),
    { mark: 'view', name: 'corner', scale: corner.scale, marks: clipMarks(cornerMarks(pattern, corner), boxWindow(frame)) },
    outline(pens.ring, cornersOf(frame)),
    ...paths(pattern, corner), ...(keptFor.length === 0 ? [] : keptSign(wasteOnPaper(pattern, corner), keptFor)),
    countMark(corners.length, frame.x + frame.width / 2, frame.y + frame.height + 3 + capHeights.count / 2),
  ];
}

function cornerFrame(box: Box): Box {
  const side = Math.min(box.width, box.height - capHeights.count - 6);
  return { x: box.x, y: box.y + (box.height - side - capHeights.count - 3) / 2, width: side, height: side };
}

/** Upper right corner of the blank from a little inside the notch to a little past the blank's corner. */
function cornerView(pattern: FlatPattern, frame: Box): Fit {
  const [x, y] = notchInner(pattern, detailCorner);
  const inside = pattern.notch[0] * 0.24;
  const outside = pattern.notch[0] * 0.13;
  return fitToScale({
    min: [x - inside, y - inside],
    max: [pattern.blank[0] / 2 + outside, pattern.blank[1] / 2 + outside],
  }, frame);
}

/** The enlarged waste: past the cuts, up to the blank's corner. */
function wasteOnPaper(pattern: FlatPattern, view: Fit): Box {
  const [[x, low], [right, top]] = [onPaper(view, notchInner(pattern, detailCorner)), onPaper(view, [pattern.blank[0] / 2, pattern.blank[1] / 2])];
  return { x: x + AT_PATHS, y: top, width: right - x - AT_PATHS, height: low - top - AT_PATHS };
}

/** The knife's ways and their numbers take so much beside the cuts, mm of paper. */
const AT_PATHS = 9;

/** A board under the cuts, past the blank's edges. */
function underCorner(pattern: FlatPattern, view: Fit, frame: Box): readonly Mark[] {
  const [x, y] = onPaper(view, notchInner(pattern, detailCorner));
  return boardUnder({ x: x - 4, y: frame.y + 1.4, width: frame.x + frame.width - 1.4 - x + 4, height: y + 4 - frame.y - 1.4 });
}

function wasteMarks(pattern: FlatPattern, view: Fit, corner: Vec2): readonly Mark[] {
  const ring = allOnPaper(view, notchRing(pattern, corner, 6))
    .map(([x, y]): Vec2 => [x + corner[0] * apart, y - corner[1] * apart]);
  return [
    area('core', ring),
    ...hatching(ring, hatchPitch).map(([from, to]) => line(earlier(pens.edge), from, to)),
    outline(pens.cut, ring),
  ];
}

function snipRings(pattern: FlatPattern, corner: Vec2): readonly (readonly Vec2[])[] {
  const inner = notchInner(pattern, corner);
  const [onX, onY] = snips(pattern, corner);
  return [
    [onX[0], onX[1], [onX[1][0], inner[1]]],
    [onY[0], onY[1], [inner[0], onY[1][1]]],
  ];
}

/** The uncut corner: waste hatched, cut lines thick, the punched hole in the notch's inner corner. */
function cornerMarks(pattern: FlatPattern, view: Fit): readonly Mark[] {
  const blank: Vec2 = [pattern.blank[0] / 2, pattern.blank[1] / 2];
  const ground = allOnPaper(view, [[-blank[0], -blank[1]], [blank[0], -blank[1]], blank, [-blank[0], blank[1]]]);
  const waste = [notchRing(pattern, detailCorner, 12), ...snipRings(pattern, detailCorner)].map((ring) => allOnPaper(view, ring));
  return [
    area('panel', ground),
    ...creaseMarks(pattern, view, earlier(pens.crease), acrossFlap),
    ...halfCutMarks(pattern, view, earlier(pens.halfCut), acrossFlap),
    ...insideLineMarks(pattern, view, earlier(pens.inside)),
    ...waste.flatMap((ring) => [
      area('core', ring),
      ...hatching(ring, hatchPitch).map(([from, to]) => line(earlier(pens.edge), from, to)),
    ]),
    outline(earlier(pens.cut), ground),
    ...[...notchSides(pattern, detailCorner), ...snips(pattern, detailCorner)].map(([from, to]) => line(pens.cut, ...allOnPaper(view, [from, to]))),
    circle(onPaper(view, notchHole(pattern, detailCorner)), pattern.notchRadius * view.scale, pens.cut, 'white'),
  ];
}

/** The knife's ways: from the round hole out to both edges, then the snips; numbered in order. */
function paths(pattern: FlatPattern, view: Fit): readonly Mark[] {
  const [alongX, alongY] = notchSides(pattern, detailCorner);
  const [snipX, snipY] = snips(pattern, detailCorner);
  const off = 4.6;
  return [
    ...path(1, onPaper(view, alongX[0]), onPaper(view, alongX[1]), [0, -off]),
    ...path(2, onPaper(view, alongY[0]), onPaper(view, alongY[1]), [off, 0]),
    ...snipPath(3, onPaper(view, snipX[0]), onPaper(view, snipX[1]), [-1, 1]),
    ...snipPath(4, onPaper(view, snipY[0]), onPaper(view, snipY[1]), [-1, 1]),
  ];
}

/** An arrow beside a cut, on its waste side, with its number in the middle. */
function path(number: number, from: Vec2, to: Vec2, beside: Vec2): readonly Mark[] {
  const at = (share: number): Vec2 => [from[0] + (to[0] - from[0]) * share + beside[0], from[1] + (to[1] - from[1]) * share + beside[1]];
  return [
    line(pens.motion, at(0.2), at(0.66)),
    arrowhead(at(0.7), [to[0] - from[0], to[1] - from[1]], 4),
    order(number, at(0.4)),
  ];
}

/** A snip is short: its number stands inside the panel with a leader to the cut; an arrow's head would hide it. */
function snipPath(number: number, from: Vec2, to: Vec2, way: Vec2): readonly Mark[] {
  const middle: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const far = 9;
  const centre: Vec2 = [middle[0] + way[0] * far * 0.75, middle[1] + way[1] * far * 0.75];
  return [line(pens.dimension, centre, middle), order(number, centre)];
}

function order(number: number, centre: Vec2): Mark {
  return ringedNumeral(tell.number(number), centre, capHeights.order, pens.edge);
}

/** The frame's place on the whole view and a leader to it. */
function source(whole: Fit, corner: Fit, frame: Box): readonly Mark[] {
  const model = (x: number, y: number): Vec2 => [(x - corner.origin[0]) / corner.scale, -(y - corner.origin[1]) / corner.scale];
  const points = cornersOf(frame).map(([x, y]) => onPaper(whole, model(x, y)));
  const right = Math.max(...points.map(([x]) => x)) + apart;
  const top = Math.min(...points.map(([, y]) => y)) - apart;
  const left = Math.min(...points.map(([x]) => x));
  const bottom = Math.max(...points.map(([, y]) => y));
  const level = Math.min(Math.max(top, frame.y), frame.y + frame.height);
  return [
    outline(pens.ring, [[left, top], [right, top], [right, bottom], [left, bottom]]),
    line(pens.ring, [right, Math.min(Math.max(level, top), bottom)], [Math.min(frame.x, right + gap * 2), level]),
  ];
}
