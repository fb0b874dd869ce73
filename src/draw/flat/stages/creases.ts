import type { FlatPattern } from '../../../model/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { acrossBlank, blankMarks, creaseMarks, flapOn, halfCutMarks, insideMarks } from '../panel-lines.ts';
import { earlier, pens } from '../../kit/pens.ts';
import { stripDimensions, stripMarks, stripSource, stripSpan } from '../strip.ts';
import type { Paper } from '../../kit/svg.ts';
import { wholeMarks } from '../whole.ts';
import { noRoom, stripCount, wholeAndStrip } from './layout.ts';
import { tell } from '../../../scene/index.ts';

const cap = capHeights.step;
/** Panel shown inside the inside line, mm. */
const insideShown = 20;
/** Where along the flap the strip is taken from. */
const takenAt = 0.9;

/** Creases and half-cut of every flap, each measured from the inside line. */
export function creasesStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const flap = flapOn(pattern, 'back');
  const places = [...flap.creases, flap.halfCut];
  const { whole, strip } = wholeAndStrip(pattern, paper, stripSpan(places.map(tell.mm), cap), -insideShown, noRoom);
  return [
    wholeMarks(pattern, whole, false, [
      ...blankMarks(pattern, whole.view, earlier(pens.cut)),
      ...insideMarks(pattern, whole.view, earlier(pens.inside)),
      ...creaseMarks(pattern, whole.view, pens.crease, acrossBlank),
      ...halfCutMarks(pattern, whole.view, pens.halfCut, acrossBlank),
    ]),
    ...stripSource(pattern, strip, whole.view, takenAt),
    ...stripMarks(strip, { edge: earlier(pens.cut), inside: pens.inside, crease: pens.crease, halfCut: pens.halfCut }),
    ...stripDimensions(strip, 0, places, cap),
    stripCount(strip, pattern.flaps.length),
  ];
}
