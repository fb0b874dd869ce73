import type { BracedFace, Vec2 } from '../../../model/index.ts';
import { tell } from '../../../scene/index.ts';
import { boxRound } from '../../kit/geometry.ts';
import { capHeights } from '../../kit/lettering.ts';
import { circle, figure, line, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { toPicture, type Paper } from '../../kit/svg.ts';
import type { DrawnPicture } from '../../types.ts';
import { eye } from '../eye.ts';
import { personMarks } from '../person.ts';
import type { CableCut } from './cut-picture.ts';
import { enlarged } from './enlarged.ts';
import { bayOf, crossedCords, faceIn, pegsOf, workedCord } from './face.ts';
import { FRAMES } from './frames.ts';
import { endBefore, endBehind, endUnder, hitchesTight, roundOne, secondHitch } from './hitches.ts';
import { bottleAside } from './bottle-aside.ts';
import { bottleTold } from './bottle.ts';
import { andThen, drawnCords, type DrawnCords } from './drawn-together.ts';
import { doesLie, ladenFace, sagAtCrossing } from './hung-mass.ts';
import { foldedAtMark, knotBegun, knotDrawn, knottedLoose, laidBack, loopTight, loopWrong, secondBegun, secondLoose, secondTight, type Frame } from './knots.ts';
import { slungBottle } from './slung-bottle.ts';
import { besideLoop, drawnTight, roundStud } from './round-peg.ts';

/** A frame with its share of its row's width; one that is the wrong way of the one before it has no number. */
interface Shown {
  readonly frame: Frame;
  readonly wide?: number;
  readonly isWrong?: boolean;
  /** Goes on with the number of the one before. */
  readonly isNext?: boolean;
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

/** How much larger the frames are in which a cord goes over and under. */
const LARGE = 1.36;

/** The loop at the cord's end, from the end laid back to the loop that goes over its peg. */
const loopRows = ({ loop }: CableCut): readonly Row[] => [
  { first: FRAMES.first, height: 60, frames: [{ frame: enlarged(laidBack(loop.doubled), 1.2) }, { frame: enlarged(knotBegun, LARGE) }] },
  { first: FRAMES.first + 2, height: 62, frames: [{ frame: enlarged(knottedLoose, LARGE) }, { frame: enlarged(knotDrawn, LARGE) }] },
  { first: FRAMES.looped, height: 46, frames: [{ frame: loopTight(loop) }, { frame: loopWrong(loop), isWrong: true }] },
];

/** The second hitch is tied as the first is. */
const againBelow: Frame = ([x, y]) => [...secondHitch([x, y]), ...numbers([FRAMES.hitch, FRAMES.hitched], [x + 8, y + 30])];

/** So is the other cord: both in their face, the ends ringed where these hitches are. */
const onBoth = (face: BracedFace): Frame => ([x, y]) => {
  const cords = crossedCords(face)[0]?.cords ?? [];
  const drawn = faceIn(bayOf(face), boxRound([x + 27, y + 22], 22, 26));
  return [
    ...hitchesTight([x - 13, y]), ...drawn.bars, ...cords.flatMap(({ low, high }) => workedCord(drawn.at(low), drawn.at(high))), ...pegsOf(drawn, cords),
    ...cords.map(({ low }) => circle(drawn.at(low), 2.8, pens.detail)),
  ];
};

/** The second loop at its mark; the end round the lower peg and up through that loop; both cords of a face drawn tight; then each made fast and looked at. */
const tyingRows = ({ loop, face }: CableCut): readonly Row[] => [
  { first: FRAMES.second, height: 66, frames: [{ frame: enlarged(foldedAtMark(loop.doubled), 1.2) }, { frame: enlarged(secondBegun, LARGE) }] },
  { first: FRAMES.second + 2, height: 68, frames: [{ frame: enlarged(secondLoose, LARGE) }, { frame: secondTight(loop) }] },
  { first: FRAMES.around, height: 86, frames: [{ frame: enlarged(roundStud, 1.25), wide: 0.8 }, { frame: enlarged(drawnTight, 1.25), wide: 1.15 }, { frame: enlarged(besideLoop, 1.25), isWrong: true }] },
  { first: FRAMES.drawn, height: 66, frames: pulls(face) },
  { first: FRAMES.hitch, height: 80, frames: [{ frame: byBoth(endBehind) }, { frame: endBefore }] },
  { first: FRAMES.hitched, height: 80, frames: [{ frame: endUnder }, { frame: roundOne, isWrong: true }] },
  { first: FRAMES.hitched + 1, height: 80, frames: [{ frame: againBelow }, { frame: onBoth(face) }] },
];

/** How each cord of a face is tried. */
const tryingRows = ({ test, face }: CableCut): readonly Row[] => [
  { first: FRAMES.hung, height: 76, frames: [{ frame: tiedAsBefore(slungBottle(face), doesLie(face)), wide: 0.8 }, ...hungRow(face, test, [53, 62])] },
  // One that stands in its sling is near no bar.
  ...(doesLie(face) ? [{ first: FRAMES.hung, height: 44, frames: [{ frame: bottleAside(true), isNext: true }, { frame: bottleAside(false), isWrong: true }] }] : []),
  { first: FRAMES.sag, height: 66, frames: [{ frame: moved(sagAtCrossing(face, test, { isTaut: true, by: 1.35 })) }, { frame: moved(sagAtCrossing(face, test, { isTaut: false, by: 1.35 })), isWrong: true }] },
];

/** A frame a little higher and further left, where it has something under it and on its right. */
const moved = (frame: Frame): Frame => ([x, y]) => frame([x - 4, y - 3]);

/** The cords of a face hung and drawn by hand, one after the other, from which number to which; and then both together, a person at each. */
function pulls(face: BracedFace): readonly Shown[] {
  const shown: readonly DrawnCords[] = [{ has: [0], pulls: [0], how: 'first' }, { has: [0, 1], pulls: [1], how: 'first' }, { has: [0, 1], pulls: [0, 1], how: 'together' }];
  return shown.map((cords, place) => ({
    ...(place === 0 ? {} : { isNext: true }),
    frame: ([x, y]) => [
      ...drawnCords(face, cords, boxRound([x + 1, y - 4], 32, 44)), ...(cords.how === 'together' ? [] : numbers([FRAMES.hooked, FRAMES.through], [x - 9.5, y + 25.5])), ...(place === 0 ? [] : andThen([x - 26, y + 6])),
    ],
  }));
}

/** The sling's knots are tied as the loop at a cord's end is: under a bottle that lies, beside one that stands. */
const tiedAsBefore = (frame: Frame, lies: boolean): Frame => ([x, y]) => {
  if (lies) return [...frame([x, y]), ...eye([x - 19, y + 32], 8), ...numbers([FRAMES.first, FRAMES.looped], [x - 9, y + 32])];
  const [left, first, last] = [x - 16, y + 10, y + 26];
  return [...frame([x, y]), ...eye([left, y - 1], 8), ring(FRAMES.first, [left, first]), line(pens.motion, [left, first + 5.5], [left, last - 5.5]), ring(FRAMES.looped, [left, last])];
};

/** Each of the two people makes his own cord fast. */
const byBoth = (frame: Frame): Frame => ([x, y]) => [...frame([x, y]), ...personMarks([x - 29, y + 24], 1), ...personMarks([x - 22, y + 24], 2)];

/** A full bottle hung on one cord, then on the other, after how it hangs. */
const hungRow = (face: BracedFace, { mass }: CableCut['test'], [wide, high]: Vec2): readonly Shown[] => ([0, 1] as const).map((which) => ({
  isNext: true,
  frame: ([x, y]) => [...ladenFace(face, which, boxRound([x, y - 3], wide, high)), ...(which === 0 ? bottleTold(mass, [x, y + high / 2 + 2], capHeights.step) : [...andThen([x - wide / 2 - 4, y]), ...oftenIn(face, [x, y + high / 2 + 2])])],
}));

/** In how many bays cords cross, where there are several: as many times it is all done. */
const oftenIn = (face: BracedFace, at: Vec2): readonly Mark[] => {
  const bays = crossedCords(face).length;
  return bays > 1 ? [figure(tell.times(bays), at, capHeights.count, 700)] : [];
};

/** How the loop at a cord's end is tied, a picture a row. */
export const loopSeries = (cable: CableCut, { width }: Paper): readonly DrawnPicture[] => drawn(loopMarks(cable, width), width);

/** How its second loop is tied, and how its end is made fast and looked at, a picture a row. */
export const tyingSeries = (cable: CableCut, { width }: Paper): readonly DrawnPicture[] => drawn(tyingMarks(cable, width), width);

/** The marks of the pictures, for the tests. */
export const loopMarks = (cable: CableCut, width: number): readonly Drawn[] => loopRows(cable).map((row) => inRow(row, width));
export const tyingMarks = (cable: CableCut, width: number): readonly Drawn[] => [...tyingRows(cable).map((row) => inRow(row, width)), ...tryingMarks(cable, width)];
export const tryingMarks = (cable: CableCut, width: number): readonly Drawn[] => tryingRows(cable).map((row) => inRow(row, width));

const drawn = (rows: readonly Drawn[], width: number): readonly DrawnPicture[] => rows.map(({ marks, height }) => toPicture({ width, height }, marks));

const ring = (number: number, at: Vec2): Mark => ringedNumeral(tell.number(number), at, capHeights.order, pens.edge);

function inRow({ first, height, frames }: Row, width: number): Drawn {
  const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);
  const unit = width / sum(frames.map(({ wide = 1 }) => wide));
  const marks = frames.flatMap(({ frame, wide = 1, isWrong = false, isNext = false, numberAt = 4.5 }, place): readonly Mark[] => {
    const before = frames.slice(0, place);
    const left = unit * sum(before.map((each) => each.wide ?? 1));
    const number = first + before.filter((each) => each.isWrong !== true && each.isNext !== true).length;
    return [...(isWrong || isNext ? [] : [ring(number, [left + numberAt, 5.5])]), ...frame([left + (wide * unit) / 2 + 1, height / 2 + 1])];
  });
  return { marks, height };
}

/** Heights of the reminders, mm of paper. */
const REMINDER = { loop: 13, test: 78 } as const;

/** Where the loop at the end was shown: the step, and the numbers there. */
export const loopReminder = (step: number, { width }: Paper): DrawnPicture => toPicture({ width, height: REMINDER.loop }, loopReminderMarks(step));

/** Where the rest was shown, and how the cords of this face are tried. */
export const tyingReminder = (cable: CableCut, step: number, { width }: Paper): DrawnPicture => toPicture({ width, height: REMINDER.test }, tyingReminderMarks(cable, step, width));

/** The marks of the pictures, for the tests. */
export const loopReminderMarks = (step: number): readonly Mark[] => lookAt(step, [FRAMES.first, FRAMES.looped], [10, REMINDER.loop / 2]);
export function tyingReminderMarks({ test, face }: CableCut, step: number, width: number): readonly Mark[] {
  const [unit, low] = [width / 10, 43];
  const hung = ([0, 1] as const).flatMap((which) => ladenFace(face, which, boxRound([unit * (1 + 2 * which) + 1, low], 2 * unit - 3.5, 50)));
  const near = (isTaut: boolean, at: number): readonly Mark[] => sagAtCrossing(face, test, { isTaut, by: 0.8 })([at, low - 2]);
  return [
    ...lookAt(step, [FRAMES.second, FRAMES.last], [10, 6.5]), ring(FRAMES.hung, [4.5, 17]), ...hung, ...bottleTold(test.mass, [unit * 2, 74], capHeights.step), ...oftenIn(face, [unit * 5, 74]),
    ring(FRAMES.sag, [unit * 4 + 6, 17]), ...near(true, unit * 5), ...near(false, width - 32),
  ];
}

/** Look at a step, from a number there to another. */
const lookAt = (step: number, [from, to]: Vec2, [x, y]: Vec2): readonly Mark[] => [
  ...eye([x, y], 16), figure(tell.number(step), [x + 18, y], capHeights.count * 1.5, 700),
  ...numbers([from, to], [x + 34, y]),
];

/** From a number to another. */
const numbers = ([from, to]: Vec2, [x, y]: Vec2): readonly Mark[] => [ring(from, [x, y]), line(pens.motion, [x + 6.5, y], [x + 13, y]), ring(to, [x + 19.5, y])];
