import type { Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { figure, line, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { eye } from '../eye.ts';
import type { CableCut } from './cut-picture.ts';
import { FRAMES } from './frames.ts';
import { endBefore, endBehind, endUnder, hitchesTight, roundOne, secondHitch } from './hitches.ts';
import { hungMass, hungOnEach } from './hung-mass.ts';
import { foldedAtMark, knotBegun, knotDrawn, knottedLoose, laidBack, loopTight, loopWrong, secondBegun, secondLoose, secondTight, type Frame } from './knots.ts';
import { besideLoop, drawnTight, roundStud } from './round-peg.ts';

/** A frame with its share of its row's width; one that is the wrong way of the one before it has no number. */
interface Shown {
  readonly frame: Frame;
  readonly wide?: number;
  readonly isWrong?: boolean;
  /** From the frame's left edge to the middle of its number, mm of paper. */
  readonly numberAt?: number;
}

/** Frames beside each other: the number of the first, and the height that they take, mm of paper. */
interface Row {
  readonly first: number;
  readonly height: number;
  readonly frames: readonly Shown[];
}

/** Marks with the height that they take, mm. */
interface Drawn {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** The loop at the cord's end, from the end laid back to the loop that goes over its peg. */
const loopRows = ({ loop }: CableCut): readonly Row[] => [
  { first: FRAMES.first, height: 48, frames: [{ frame: laidBack(loop.doubled) }, { frame: knotBegun }, { frame: knottedLoose }] },
  { first: FRAMES.first + 3, height: 48, frames: [{ frame: knotDrawn }, { frame: loopTight(loop), wide: 1.1 }, { frame: loopWrong(loop), isWrong: true, wide: 0.9 }] },
];

/** The second hitch is tied as the first is. */
const againBelow: Frame = ([x, y]) => [...secondHitch([x, y]), ...numbers([FRAMES.hitch, FRAMES.hitched], [x + 8, y + 30])];

/** The second loop at its mark; the end round the lower peg, up through that loop, made fast and looked at. */
const tyingRows = ({ loop, test, count }: CableCut): readonly Row[] => [
  { first: FRAMES.second, height: 52, frames: [{ frame: foldedAtMark(loop.doubled) }, { frame: secondBegun }, { frame: secondLoose }] },
  { first: FRAMES.second + 3, height: 72, frames: [{ frame: secondTight(loop), wide: 1.25 }, { frame: roundStud, wide: 0.925, numberAt: 4 }, { frame: drawnTight }, { frame: besideLoop, isWrong: true, wide: 0.95 }] },
  { first: FRAMES.hitch, height: 80, frames: [{ frame: endBehind }, { frame: endBefore }] },
  { first: FRAMES.hitched, height: 80, frames: [{ frame: endUnder }, { frame: roundOne, isWrong: true }] },
  { first: FRAMES.hitched + 1, height: 80, frames: [{ frame: againBelow }, { frame: hitchesTight }] },
  { first: FRAMES.test, height: 76, frames: [{ frame: hungOnEach }, { frame: hungMass({ ...test, count }) }] },
];

/** How the loop at a cord's end is tied, a picture a row. */
export const loopSeries = (cable: CableCut, { width }: Paper): readonly DrawnPicture[] => drawn(loopMarks(cable, width), width);

/** How its second loop is tied, and how its end is made fast and looked at, a picture a row. */
export const tyingSeries = (cable: CableCut, { width }: Paper): readonly DrawnPicture[] => drawn(tyingMarks(cable, width), width);

/** The marks of the pictures, for the tests. */
export const loopMarks = (cable: CableCut, width: number): readonly Drawn[] => loopRows(cable).map((row) => inRow(row, width));
export const tyingMarks = (cable: CableCut, width: number): readonly Drawn[] => tyingRows(cable).map((row) => inRow(row, width));

const drawn = (rows: readonly Drawn[], width: number): readonly DrawnPicture[] => rows.map(({ marks, height }) => toPicture({ width, height }, marks));

const ring = (number: number, at: Vec2): Mark => ringedNumeral(tell.number(number), at, capHeights.order, pens.edge);

function inRow({ first, height, frames }: Row, width: number): Drawn {
  const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);
  const unit = width / sum(frames.map(({ wide = 1 }) => wide));
  const marks = frames.flatMap(({ frame, wide = 1, isWrong = false, numberAt = 4.5 }, place): readonly Mark[] => {
    const before = frames.slice(0, place);
    const left = unit * sum(before.map((each) => each.wide ?? 1));
    const number = first + before.filter((each) => each.isWrong !== true).length;
    return [...(isWrong ? [] : [ring(number, [left + numberAt, 5.5])]), ...frame([left + (wide * unit) / 2 + 1, height / 2 + 1])];
  });
  return { marks, height };
}

/** Heights of the reminders, mm of paper. */
const REMINDER = { loop: 13, test: 76 } as const;

/** Where the loop at the end was shown: the step, and the numbers there. */
export const loopReminder = (step: number, { width }: Paper): DrawnPicture => toPicture({ width, height: REMINDER.loop }, loopReminderMarks(step));

/** Where the rest was shown, and how far these cords may give way. */
export const tyingReminder = (cable: CableCut, step: number, { width }: Paper): DrawnPicture => toPicture({ width, height: REMINDER.test }, tyingReminderMarks(cable, step, width));

/** The marks of the pictures, for the tests. */
export const loopReminderMarks = (step: number): readonly Mark[] => lookAt(step, [FRAMES.first, FRAMES.looped], [10, REMINDER.loop / 2]);
export const tyingReminderMarks = ({ test, count }: CableCut, step: number, width: number): readonly Mark[] => [
  ...lookAt(step, [FRAMES.second, FRAMES.test], [10, REMINDER.test / 2]), ring(FRAMES.test + 1, [width * 0.76 - 38, 5.5]), ...hungMass({ ...test, count })([width * 0.76, REMINDER.test / 2 + 0.5]),
];

/** Look at a step, from a number there to another. */
const lookAt = (step: number, [from, to]: Vec2, [x, y]: Vec2): readonly Mark[] => [
  ...eye([x, y], 16), figure(tell.number(step), [x + 18, y], capHeights.count * 1.5, 700),
  ...numbers([from, to], [x + 34, y]),
];

/** From a number to another. */
const numbers = ([from, to]: Vec2, [x, y]: Vec2): readonly Mark[] => [ring(from, [x, y]), line(pens.motion, [x + 6.5, y], [x + 13, y]), ring(to, [x + 19.5, y])];
