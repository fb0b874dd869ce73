import type { FlatPattern } from '../../../model/index.ts';
import { runningDimension, runningReach } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import { toldWidth, type Mark } from '../../kit/marks.ts';
import { blankMarks, flapOn, insideMarks } from '../panel-lines.ts';
import { earlier, pens } from '../../kit/pens.ts';
import type { Paper } from '../../kit/svg.ts';
import { onPaper } from '../../kit/fit.ts';
import { placeWhole, wholeMarks } from '../whole.ts';
import { mainBox, noRoom } from './layout.ts';
import { tell } from '../../../scene/index.ts';

const cap = capHeights.step;
const dimensionGap = 6;

/** Where its lines lie along the blank's sides, mm from its left and its lower edge. */
export const insidePlaces = (pattern: FlatPattern): readonly [readonly number[], readonly number[]] => [
  [flapOn(pattern, 'left').edge, pattern.blank[0] - flapOn(pattern, 'right').edge],
  [flapOn(pattern, 'front').edge, pattern.blank[1] - flapOn(pattern, 'back').edge],
];

/** The inside rectangle, marked from the blank's left and lower edges; last on each side the blank's own size, so that it is seen which way it lies. */
export function insideStage(pattern: FlatPattern, paper: Paper): readonly Mark[] {
  const [width, depth] = pattern.blank;
  const [across, upwards] = insidePlaces(pattern);
  const room = {
    ...noRoom,
    left: dimensionGap + runningReach([...upwards, depth].map(tell.mm), cap),
    top: cap / 2 + 0.5,
    right: toldWidth(tell.mm(width), cap, 400) / 2,
    bottom: dimensionGap + runningReach([...across, width].map(tell.mm), cap),
  };
  const whole = placeWhole(pattern, mainBox(paper, 0, room));
  const { view, blank } = whole;
  const x = (at: number) => onPaper(view, [at - width / 2, 0])[0];
  const y = (at: number) => onPaper(view, [0, at - depth / 2])[1];
  return [
    wholeMarks(pattern, whole, false, [
      ...blankMarks(pattern, view, earlier(pens.cut)),
      ...insideMarks(pattern, view, pens.newInside),
    ], 'new'),
    ...runningDimension({
      axis: 'x', datum: x(0), line: blank.y + blank.height + dimensionGap, feature: blank.y + blank.height, cap,
      stations: [...across.map((at) => ({ at: x(at), told: tell.mm(at), feature: y(upwards[0] ?? 0) })), { at: x(width), told: tell.mm(width) }],
    }),
    ...runningDimension({
      axis: 'y', datum: y(0), line: blank.x - dimensionGap, feature: blank.x, cap,
      stations: [...upwards.map((at) => ({ at: y(at), told: tell.mm(at), feature: x(across[0] ?? 0) })), { at: y(depth), told: tell.mm(depth) }],
    }),
  ];
}
