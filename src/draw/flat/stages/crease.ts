import type { FlatPattern, Side } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { arrowhead, figure, line, orderRadius, ringedNumeral, toldWidth } from '../../kit/marks.ts';
import { acrossFlap, creaseMarks, flapOn, halfCutMarks, holeMarks, insideLineMarks, onFlap, outlineMarks, runsAlongX, sidesInOrder } from '../panel-lines.ts';
import { dented, dentOf } from '../dent.ts';
import { wheelMarks } from '../wheel.ts';
import { markedFace } from '../marked-face.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { Strip } from '../strip.ts';
import { stripMarks, stripSource, stripWidth, stripY } from '../strip.ts';
import type { Paper } from '../../kit/svg.ts';
import type { Fit } from '../../kit/fit.ts';
import { onPaper } from '../../kit/fit.ts';
import { wholeMarks } from '../whole.ts';
import { columnBox, noRoom, stripCount, wholeAndStrip } from './layout.ts';
import { tell } from '../../../scene/index.ts';

const insideShown = 20;
/** Paper between the strip and the section beside it, and for that. */
const sectionGap = 2;
const pressedColumn = 48;
const numeralColumn = 8;

/** Which side comes when, and the creases of a side pressed from the inside outwards, with a section beside it. */
export function creaseStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const span = stripWidth + numeralColumn + sectionGap + pressedColumn;
  const { whole, strip } = wholeAndStrip(pattern, paper, span, -insideShown, noRoom);
  return [
    wholeMarks(pattern, whole, true, [
      ...outlineMarks(pattern, whole.view, earlier(pens.cut)),
      ...insideLineMarks(pattern, whole.view, earlier(pens.inside)),
      ...halfCutMarks(pattern, whole.view, earlier(pens.halfCut), acrossFlap),
      ...holeMarks(pattern, whole.view, earlier(pens.hole)),
      ...creaseMarks(pattern, whole.view, pens.crease, acrossFlap),
    ]),
    ...sideOrder(pattern, whole.view),
    ...stripSource(pattern, strip, whole.view, 0.85),
    ...stripMarks(strip, { edge: earlier(pens.cut), inside: earlier(pens.inside), crease: pens.crease, halfCut: earlier(pens.halfCut) }),
    ...creaseNumbers(strip),
    ...pressed(pattern, { ...columnBox(paper, pressedColumn), height: strip.frame.y + strip.frame.height - 1.5 }),
    stripCount(strip, pattern.flaps.length),
  ];
}

/** The numerals of the left and right flaps stand this share of half the panel over its middle: the sign of the face is below. */
const OFF_SIGN = 0.3;

/** A ringed numeral on the panel beside each flap: shorter sides first, a side before its opposite. */
export function sideOrder(pattern: FlatPattern, view: Fit): readonly Mark[] {
  const radius = orderRadius(tell.number(1), capHeights.order);
  const room = Math.min(...pattern.inside) * view.scale - radius - 0.4;
  const inwards = Math.min(capHeights.order + 2.5, room) / view.scale;
  const along = (side: Side): number => (runsAlongX(side) ? 0 : pattern.inside[1] * OFF_SIGN);
  return sidesInOrder(pattern).map((side, index): Mark => ringedNumeral(tell.number(index + 1), onPaper(view, onFlap(pattern, side, along(side), -inwards)), capHeights.order, pens.edge));
}

/** 1, 2, 3 … beside the strip's creases, from the inside line outwards. */
function creaseNumbers(strip: Strip): readonly Mark[] {
  const x = strip.frame.x + strip.frame.width + numeralColumn / 2;
  return strip.flap.creases.map((at, index) => figure(tell.number(index + 1), [x, stripY(strip, at)], capHeights.step, 700));
}

/** Room over the panel for the wheel, mm of paper. */
const wheelRoom = 18;

/** The wheel pressed in from the marked face, at first lightly, then home: that skin is dented, the other one stays whole; and the panel afterwards with all creases of a flap, still flat. */
function pressed(pattern: FlatPattern, box: Box): readonly Mark[] {
  const wide = box.width - 2 * FIGURES;
  const room = (box.height - 2 * wheelRoom - 2 * ROW_GAP) / 2.5;
  const scale = Math.min(room / pattern.thickness, wide / (2.4 * pattern.thickness));
  const middle = box.x + box.width / 2;
  const high = pattern.thickness * scale;
  const light = box.y + wheelRoom;
  const top = light + high + ROW_GAP + wheelRoom;
  const bottom = top + high;
  const [left, right] = [middle - wide / 2, middle + wide / 2];
  const deep = dentOf(pattern);
  const dent = top + deep * scale;
  const flap = flapOn(pattern, 'back');
  const [first = 0, last = 0] = [flap.creases[0], flap.creases.at(-1)];
  const flat = (box.width - 4) / (last - first + 4 * deep);
  return [
    ...dented(pattern, { at: [middle, light], scale, half: wide / 2, dents: [0], deep: deep / 2 }), ...wheelMarks([middle, light + (deep * scale) / 2], wheelRoom - 2, 'light', scale),
    ...markedFace([right - 6, light]), line(pens.motion, [middle, light + high + 1.5], [middle, light + high + 3.5]), arrowhead([middle, light + high + 6], [0, 1], 3),
    ...dented(pattern, { at: [middle, top], scale, half: wide / 2, dents: [0] }), ...wheelMarks([middle, dent], wheelRoom - 2, 'home', scale),
    line(pens.dimension, [left - 5, dent], [middle, dent]),
    ...linearDimension({ axis: 'y', told: tell.mm(deep), ends: [dent, top], line: left - 4, feature: left, cap: capHeights.step, upright: true }),
    ...linearDimension({ axis: 'y', told: tell.mm(pattern.thickness), ends: [bottom, top], line: right + 3 + toldWidth(tell.mm(pattern.thickness), capHeights.step, 400) + 2, feature: right, cap: capHeights.step, upright: true }),
    ...markedFace([right - 6, top]),
    ...dented(pattern, { at: [middle, bottom + ROW_GAP], scale: flat, half: box.width / 2, dents: flap.creases.map((at) => at - (first + last) / 2) }),
  ];
}

/** Room beside the section for figures, mm of paper, and between a section and what is under it. */
const FIGURES = 12;
const ROW_GAP = 8;
