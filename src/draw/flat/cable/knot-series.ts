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
import { besideLoop, drawnTight, hitchesTight, hitchLoose, roundStud } from './hitches.ts';
import { hungMass } from './hung-mass.ts';
import { knotBegun, knottedLoose, laidBack, loopTight, placed, secondLoose, secondTight, type Frame } from './knots.ts';

/** A frame with its share of its row's width; one that is the wrong way of the one before it has no number. */
interface Shown {
  readonly frame: Frame;
  readonly wide?: number;
  readonly isWrong?: boolean;
}

interface Row {
  readonly height: number;
  readonly frames: readonly Shown[];
}

/** The loop at the end, and the second loop at its place. */
const loops = ({ doubled, between }: CableCut): readonly Row[] => [
  { height: 52, frames: [{ frame: laidBack(doubled) }, { frame: knotBegun }, { frame: knottedLoose }] },
  { height: 54, frames: [{ frame: loopTight }, { frame: placed(between) }, { frame: secondLoose }] },
];

/** The second loop drawn home, the end made fast at the stud, and how tight is looked at. */
const hitches = ({ test }: CableCut): readonly Row[] => [
  { height: 68, frames: [{ frame: secondTight, wide: 1.25 }, { frame: roundStud }, { frame: drawnTight }, { frame: besideLoop, isWrong: true }] },
  { height: 82, frames: [{ frame: hitchLoose, wide: 1.25 }, { frame: hitchesTight, wide: 1.25 }, { frame: hungMass(test), wide: 1.9 }] },
];

/** Marks with the height that they take, mm. */
interface Drawn {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** How the loops of a cord are tied, and how its end is made fast and looked at: two pictures, one after the other. */
export const knotSeries = (cable: CableCut, { width }: Paper): readonly DrawnPicture[] =>
  knotMarks(cable, width).map(({ marks, height }) => toPicture({ width, height }, marks));

/** The marks of the pictures, for the tests. */
export const knotMarks = (cable: CableCut, width: number): readonly Drawn[] =>
  [inRows(loops(cable), FRAMES.first, width), inRows(hitches(cable), FRAMES.tight, width)];

function inRows(rows: readonly Row[], first: number, width: number): Drawn {
  const heights = rows.map(({ height }) => height);
  const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);
  let number = first;
  const marks = rows.flatMap(({ frames, height }, row) => {
    const unit = width / sum(frames.map(({ wide = 1 }) => wide));
    const top = sum(heights.slice(0, row));
    return frames.flatMap(({ frame, wide = 1, isWrong = false }, place): readonly Mark[] => {
      const left = unit * sum(frames.slice(0, place).map((before) => before.wide ?? 1));
      const numbered: readonly Mark[] = isWrong ? [] : [ringedNumeral(tell.number(number), [left + 4.5, top + 5.5], capHeights.order, pens.edge)];
      if (!isWrong) number += 1;
      return [...numbered, ...frame([left + (wide * unit) / 2 + 1, top + height / 2 + 1])];
    });
  });
  return { marks, height: sum(heights) };
}

/** Height of a reminder, mm of paper. */
const REMINDER = 70;

/** Where the series was shown, and what is this cord's own in it: where its second loop comes, and how far it may give way. */
export const knotReminder = (cable: CableCut, step: number, { width }: Paper): DrawnPicture =>
  toPicture({ width, height: REMINDER }, reminderMarks(cable, step, width));

/** The marks of the picture, for the tests. */
export function reminderMarks(cable: CableCut, step: number, width: number): readonly Mark[] {
  const unit = width / 6;
  const [first, middle] = [unit * 0.5 + 1, REMINDER / 2];
  const ring = (number: number, at: Vec2): Mark => ringedNumeral(tell.number(number), at, capHeights.order, pens.edge);
  return [
    ...eye([first, middle - 15], 16), figure(tell.number(step), [first, middle - 2], capHeights.count * 1.5, 700),
    ring(FRAMES.first, [first - 8.5, middle + 10]), line(pens.motion, [first - 3.2, middle + 10], [first + 3, middle + 10]), ring(FRAMES.test, [first + 8.5, middle + 10]),
    ring(FRAMES.placed, [unit * 1.2 + 4.5, 5.5]), ...placed(cable.between)([unit * 2.2 + 1, middle]),
    ring(FRAMES.test, [unit * 3.25 + 4.5, 5.5]), ...hungMass(cable.test)([unit * 4.66, middle + 0.5]),
  ];
}
