import type { FlatPattern } from '../../../model/index.ts';
import { capHeights } from '../lettering.ts';
import type { Mark } from '../marks.ts';
import { area, arrowhead, figure, line, outline } from '../marks.ts';
import { acrossFlap, creaseMarks, halfCutMarks, holeMarks, insideLineMarks, onFlap, outlineMarks, sidesInOrder } from '../panel-lines.ts';
import { coreTint, earlier, pens } from '../pens.ts';
import type { Strip } from '../strip.ts';
import { stripMarks, stripSource, stripWidth } from '../strip.ts';
import type { Paper } from '../svg.ts';
import type { View } from '../view.ts';
import { allOnPaper, onPaper } from '../view.ts';
import { wholeMarks } from '../whole.ts';
import { noRoom, stripCount, wholeAndStrip } from './layout.ts';

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
export function sideOrder(pattern: FlatPattern, view: View): readonly Mark[] {
  const inwards = (capHeights.order + 2.5) / view.scale;
  return sidesInOrder.map((side, index): Mark => ({
    mark: 'order', text: String(index + 1), centre: onPaper(view, onFlap(pattern, side, 0, -inwards)), cap: capHeights.order, pen: pens.edge,
  }));
}

/** 1, 2, 3 … beside the strip's creases, from the inside line outwards. */
function creaseNumbers({ view, frame, flap }: Strip): readonly Mark[] {
  const x = frame.x + frame.width + numeralColumn / 2;
  return flap.creases.map((at, index) => figure(String(index + 1), [x, onPaper(view, [0, at])[1]], capHeights.step, 700));
}

/** The panel's section along the strip, inner face towards the numerals, dented where each crease is pressed. */
function pressedSection({ thickness }: FlatPattern, { view, frame, flap, start }: Strip): readonly Mark[] {
  const face = frame.x + frame.width + numeralColumn + arrowLength;
  const deep = thickness * view.scale;
  const dent = Math.min(deep * 0.35, 1.6);
  const section: View = { scale: view.scale, origin: [face, view.origin[1]] };
  const half = dent / view.scale;
  const ring = allOnPaper(section, [
    [0, start],
    ...flap.creases.flatMap((at): [number, number][] => [[0, at - half], [half, at], [0, at + half]]),
    [0, flap.edge], [thickness, flap.edge], [thickness, start],
  ]);
  return [
    area(coreTint, ring),
    outline(pens.cut, ring),
    ...flap.creases.flatMap((at) => {
      const [x, y] = onPaper(section, [half, at]);
      return [line(pens.motion, [x - arrowLength + 1, y], [x - 2, y]), arrowhead([x, y], [1, 0], 3)];
    }),
  ];
}
