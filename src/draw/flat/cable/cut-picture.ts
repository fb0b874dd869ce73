import type { CableEnds, Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { linearDimension } from '../../kit/dimension.ts';
import { cornersOf } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { earlier, pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { FRAMES } from './frames.ts';
import { round, smooth, thinCord as cord } from './rope.ts';

/** Cables of one length: how many, how they are cut and tied. Lengths in mm. */
export interface CableCut extends CableEnds {
  readonly count: number;
  /** How far each gives way under a mass when it is taut. */
  readonly test: { readonly mass: number; readonly most: number };
}

const cap = capHeights.step;
/** Height of the rows of one length of cable, mm of paper. */
const ROW = 62;
/** Places of a length's straight cord and of the tied one under its upper edge. */
const LINE = { cut: 19, tied: 40 } as const;

/** Each length measured, marked and cut, the ends told by numbers; and under it how much lies between the loops, and between loop and stud. */
export function cableCutPicture(cables: readonly CableCut[], { width }: Paper): DrawnPicture {
  const paper = { width, height: ROW * cables.length };
  return toPicture(paper, cableCutMarks(cables, paper));
}

/** The marks of the picture, for the tests. */
export const cableCutMarks = (cables: readonly CableCut[], { width }: Paper): readonly Mark[] => cables.flatMap((cable, index) => {
  const top = ROW * index;
  return [figure(tell.times(cable.count), [9, top + LINE.cut], capHeights.count, 700), ...straight(cable, top + LINE.cut, width), ...tied(cable, top + LINE.tied, width)];
});

/** Left end of cords, and the least share of the stretches next to a stud. */
const LEFT = 26;
const LEAST = 0.16;

/** Where the straight cord is cut, and the tied one's stud, left of the paper's right edge. */
const RIGHT = 40;

/** The tape along the cord, the pencil at its length, the knife on the mark. */
function straight(cable: CableCut, y: number, width: number): readonly Mark[] {
  const [mark, end] = [width - RIGHT, width - 22];
  const tape = cornersOf({ x: LEFT, y: y - 4.8, width: mark - LEFT, height: 3.4 });
  const ticks = Array.from({ length: Math.floor((mark - LEFT) / 4) + 1 }, (_, index) => LEFT + 4 * index);
  return [
    ...cord([LEFT, y], [end, y]), line(earlier(pens.motion), [end + 1, y], [width - 6, y]),
    area('white', tape), outline(pens.edge, tape), ...ticks.map((x, index) => line(pens.edge, [x, y - 1.4], [x, y - (index % 5 === 0 ? 3.6 : 2.6)])),
    ...linearDimension({ axis: 'x', told: tell.mm(cable.cut), ends: [LEFT, mark], line: y - 9, feature: y - 4.8, cap }),
    step(1, [LEFT + 12, y - 13]),
    line({ ...pens.motion, width: 0.8 }, [mark, y - 1.2], [mark, y + 1.2]), ...pencilAt([mark, y - 1]), step(2, [mark + 14, y - 11.5]),
    ...knifeAt([mark, y + 1]), step(3, [mark + 18, y + 9]),
  ];
}

/** Where the second loop stands on the tied cord. */
const loopAt = ({ before, length }: Pick<CableCut, 'before' | 'length'>, to: number): number => to - Math.max(LEAST, before / length) * (to - LEFT);

const step = (place: number, at: Vec2): Mark => ringedNumeral(tell.number(place), at, capHeights.order, pens.edge);

/** A pencil whose point is on a place, leaning to the right. */
function pencilAt([x, y]: Vec2): readonly Mark[] {
  const ring: readonly Vec2[] = [[x, y], [x + 1, y - 3.4], [x + 5.6, y - 11.2], [x + 7.8, y - 10], [x + 3.1, y - 2.2]];
  return [area('white', ring), outline(pens.cut, ring), area('ink', [[x, y], [x + 0.4, y - 1.5], [x + 1.3, y - 0.9]])];
}

/** A blade on the mark from below, its handle to the right. */
function knifeAt([x, y]: Vec2): readonly Mark[] {
  const [blade, handle]: readonly (readonly Vec2[])[] = [
    [[x, y], [x + 1.8, y], [x + 7.6, y + 5.4], [x + 6.2, y + 7.2]], [[x + 7.6, y + 5.4], [x + 13, y + 10.6], [x + 11, y + 12.8], [x + 6.2, y + 7.2]],
  ];
  return [area('white', blade ?? []), outline(pens.cut, blade ?? []), area('ink', handle ?? [])];
}

/** The cord between its two studs: the loop at its end on the one, the second loop, and the stretch from there round the other and back. */
function tied(cable: CableCut, y: number, width: number): readonly Mark[] {
  const to = width - RIGHT;
  const loop = loopAt(cable, to);
  return [
    ...cord([LEFT, y], [loop, y]), ...endLoop([LEFT, y]),
    ...back([loop, y], to), ...stud([LEFT, y]), ...stud([to, y]), ...secondLoop([loop, y]),
    step(FRAMES.placed, [LEFT - 5, y + 9.5]),
    ...linearDimension({ axis: 'x', told: tell.mm(cable.between), ends: [LEFT, loop], line: y + 11, feature: [y, y - TIP], cap }),
    ...linearDimension({ axis: 'x', told: tell.mm(cable.before), ends: [loop, to], line: y + 11, feature: [y - TIP, y], cap }),
    ...linearDimension({ axis: 'x', told: tell.measure(cable.length), ends: [LEFT, to], line: y + 18.5, feature: y + 12.5, cap }),
    ...([[LEFT, y], [loop, y - TIP], [to, y]] as const).map((at) => circle(at, MEASURED, null, 'ink')),
  ];
}

/** The inside of the second loop's tip over the cord, and the radius of the dot on a measured place, mm of paper. */
const TIP = 6;
const MEASURED = 0.7;

const stud = (at: Vec2): readonly Mark[] => [circle(at, 2.6, pens.cut, 'panel'), circle(at, 1.3, pens.edge, 'core')];

/** The loop round its stud, the knot beside it. */
const endLoop = ([x, y]: Vec2): readonly Mark[] => [...cord(...round([x, y], 3.6, 0, 2 * Math.PI)), ...home([x + 5.6, y])];

/** The second loop stands out from the cord, its inside at its place. */
const secondLoop = ([x, y]: Vec2): readonly Mark[] => [
  ...cord(...smooth([x - 1.4, y], [x + 2.6, y - 4.4], [x + 0.4, y - 7.2], [x - 2.6, y - 5], [x - 1.6, y])), ...home([x - 1.6, y]),
];

const home = ([x, y]: Vec2): readonly Mark[] => {
  const ring = round([x, y], 1.9, 0, 2 * Math.PI);
  return [area('white', ring), outline(pens.cut, ring), line(pens.edge, [x - 1, y + 1.4], [x + 1, y - 1.4])];
};

/** Round the stud and back to the second loop. */
const back = ([x, y]: Vec2, to: number): readonly Mark[] => [
  ...cord([x, y], [to - 3, y + 2.6]), ...cord(...smooth([to - 3, y + 2.6], [to + 1, y + 3.4], [to + 3.6, y], [to + 1, y - 3.4], [to - 3, y - 3.6], [x + 3, y - 5], [x + 0.4, y - 5])),
  ...freeEnd([x, y]),
];

const freeEnd = ([x, y]: Vec2): readonly Mark[] => [...cord(...smooth([x + 0.4, y - 5], [x - 1.6, y - 8], [x + 5, y - 10], [x + 12, y - 9])), arrowhead([x + 17, y - 9], [1, 0], 3.5)];
