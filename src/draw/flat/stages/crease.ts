import type { FlatPattern, Vec2 } from '../../../model/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { area, arrowhead, figure, line, orderRadius, outline, ringedNumeral } from '../../kit/marks.ts';
import { acrossFlap, creaseMarks, halfCutMarks, holeMarks, insideLineMarks, onFlap, outlineMarks, sidesInOrder } from '../panel-lines.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { Strip } from '../strip.ts';
import { stripMarks, stripSource, stripWidth, stripY } from '../strip.ts';
import type { Paper } from '../../kit/svg.ts';
import type { Fit } from '../../kit/fit.ts';
import { onPaper } from '../../kit/fit.ts';
import { wholeMarks } from '../whole.ts';
import { noRoom, stripCount, wholeAndStrip } from './layout.ts';
import { tell } from '../../kit/told.ts';

const insideShown = 20;
/** Paper between the strip and the section beside it, and for the pressing arrows. */
const sectionGap = 3;
const arrowLength = 7;
const numeralColumn = 8;

/** Which side comes when, and the creases of a side pressed from the inside outwards, with a section beside the strip. */
export function creaseStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const span = stripWidth + numeralColumn + arrowLength + sectionGap + pattern.thickness * 0.6 + 3;
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
    ...pressedSection(pattern, strip),
    stripCount(strip, pattern.flaps.length),
  ];
}

/** A ringed numeral on the panel beside each flap: shorter sides first, a side before its opposite. */
export function sideOrder(pattern: FlatPattern, view: Fit): readonly Mark[] {
  const radius = orderRadius(tell.number(1), capHeights.order);
  const room = Math.min(...pattern.inside) * view.scale - radius - 0.4;
  const inwards = Math.min(capHeights.order + 2.5, room) / view.scale;
  return sidesInOrder(pattern).map((side, index): Mark => ringedNumeral(tell.number(index + 1), onPaper(view, onFlap(pattern, side, 0, -inwards)), capHeights.order, pens.edge));
}

/** 1, 2, 3 … beside the strip's creases, from the inside line outwards. */
function creaseNumbers(strip: Strip): readonly Mark[] {
  const x = strip.frame.x + strip.frame.width + numeralColumn / 2;
  return strip.flap.creases.map((at, index) => figure(tell.number(index + 1), [x, stripY(strip, at)], capHeights.step, 700));
}

/** The panel's section along the strip, inner face towards the numerals, dented where each crease is pressed. */
function pressedSection({ thickness }: FlatPattern, strip: Strip): readonly Mark[] {
  const { frame, flap, start, scale } = strip;
  const face = frame.x + frame.width + numeralColumn + arrowLength;
  const deep = thickness * scale;
  const dent = Math.min(deep * 0.35, 1.6);
  const y = (outwards: number) => stripY(strip, outwards);
  const ring: readonly Vec2[] = [
    [face, y(start)],
    ...flap.creases.flatMap((at): Vec2[] => [[face, y(at) + dent], [face + dent, y(at)], [face, y(at) - dent]]),
    [face, y(flap.edge)], [face + deep, y(flap.edge)], [face + deep, y(start)],
  ];
  return [
    area('core', ring),
    outline(pens.cut, ring),
    ...flap.creases.flatMap((at) => [
      line(pens.motion, [face + dent - arrowLength + 1, y(at)], [face + dent - 2, y(at)]),
      arrowhead([face + dent, y(at)], [1, 0], 3),
    ]),
  ];
}
