import type { FlatPattern, Side, Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { area, arrowhead, figure, line, orderRadius, outline, ringedNumeral, toldWidth } from '../../kit/marks.ts';
import { acrossFlap, creaseMarks, halfCutMarks, holeMarks, insideLineMarks, onFlap, outlineMarks, runsAlongX, sidesInOrder } from '../panel-lines.ts';
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

/** Room over the panel for the wheel, and how far the section reaches to either side of the crease, mm of paper. */
const wheelRoom = 24;
/** Half of the wheel's rim, mm of paper. */
const rim = 1.6;

/** The wheel pressed in from the marked face: that skin is dented, the other one stays whole; and the panel afterwards, still flat. */
function pressed(pattern: FlatPattern, box: Box): readonly Mark[] {
  const high = box.height * 0.62;
  const wide = box.width - 2 * FIGURES;
  const scale = Math.min((high - wheelRoom) / pattern.thickness, wide / (2.4 * pattern.thickness));
  const middle = box.x + box.width / 2;
  const top = box.y + wheelRoom;
  const flat = wide / (2.4 * pattern.thickness * flatShare);
  const bottom = top + pattern.thickness * scale;
  const [left, right] = [middle - wide / 2, middle + wide / 2];
  const dent = top + dentOf(pattern) * scale;
  const often = tell.times(PASSES);
  return [
    ...dented(pattern, { at: [middle, top], scale, half: wide / 2, dents: [0] }),
    ...wheel([middle, dent]),
    figure(often, [middle - rim - 8 - toldWidth(often, capHeights.count, 700) / 2, top - wheelRoom + 7], capHeights.count, 700),
    line(pens.dimension, [left - 5, dent], [middle, dent]),
    ...linearDimension({ axis: 'y', told: tell.mm(dentOf(pattern)), ends: [dent, top], line: left - 4, feature: left, cap: capHeights.step, upright: true }),
    ...linearDimension({ axis: 'y', told: tell.mm(pattern.thickness), ends: [bottom, top], line: right + 3 + toldWidth(tell.mm(pattern.thickness), capHeights.step, 400) + 2, feature: right, cap: capHeights.step, upright: true }),
    ...markedFace([middle + wide / 2 - 6, top]),
    ...dented(pattern, { at: [middle, box.y + high + 8], scale: flat, half: wide / 2, dents: [-1, 0, 1].map((place) => place * pattern.thickness * 0.9) }),
  ];
}

/** The panel afterwards is drawn so much smaller. */
const flatShare = 2.2;

/** Room beside the section for figures, mm of paper. */
const FIGURES = 12;
/** A line is rolled so often: lightly along the rule, then home (common practice, no source). */
const PASSES = 2;

/** Depth of the dent, mm: about a third of the panel, well into the core, and far from the other skin (common practice, no source; the kit tells no figure). */
export const dentOf = ({ thickness }: Pick<FlatPattern, 'thickness'>): number => Math.max(0.5, Math.round((2 * thickness) / 3) / 2);

interface Dented {
  /** Paper place of the middle of the marked face. */
  readonly at: Vec2;
  readonly scale: number;
  /** Half of the width, mm of paper. */
  readonly half: number;
  /** Places of the dents along the face from the middle, mm of panel. */
  readonly dents: readonly number[];
}

/** A flat panel's section, the marked face up and dented; its skins are lines. */
function dented(pattern: FlatPattern, { at: [x, y], scale, half, dents }: Dented): readonly Mark[] {
  const deep = dentOf(pattern) * scale;
  const bottom = y + pattern.thickness * scale;
  const face = (under: number): readonly Vec2[] => [
    [x - half, y + under],
    ...dents.flatMap((place): Vec2[] => [[x + place * scale - deep, y + under], [x + place * scale, y + deep + under], [x + place * scale + deep, y + under]]),
    [x + half, y + under],
  ];
  const ring: readonly Vec2[] = [...face(0), [x + half, bottom], [x - half, bottom]];
  const skin = pattern.skin * scale;
  return [
    area('core', ring), outline(pens.cut, ring), line(pens.edge, ...face(skin)),
    line(pens.edge, [x - half, bottom - skin], [x + half, bottom - skin]),
  ];
}

/** The rim of the creasing wheel, seen along the crease, its point in the dent, and the way it is pressed. */
function wheel([x, y]: Vec2): readonly Mark[] {
  const up = y - wheelRoom + 2;
  const ring: readonly Vec2[] = [[x, y], [x + rim, y - 2.6], [x + rim, up], [x - rim, up], [x - rim, y - 2.6]];
  return [
    area('white', ring), outline(pens.cut, ring),
    line(pens.motion, [x - rim - 5, up], [x - rim - 5, y - 9]),
    arrowhead([x - rim - 5, y - 6.5], [0, 1], 3.5),
  ];
}
