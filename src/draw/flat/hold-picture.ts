import type { Vec2 } from '../../model/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { handDown } from './hands.ts';
import { tapeRoll } from './tape-roll.ts';
import { numbered, onwards } from './trial.ts';
import { turnedRound } from './turned-round.ts';

/** Height of the picture, mm of paper. */
const HIGH = 44;
/** A tube and its socket, mm of paper, to no scale: half of the tube, how deep the socket is, its wall and bottom, how long the tube is from its end. */
const FIT = { half: 4.2, deep: 13, wall: 1.6, bottom: 3, long: 31 } as const;
/** How far a loose tube has come out, mm of paper. */
const SLIPPED = 6;
/** Tape round the tube's end: from its end, and how wide, mm of paper. */
const TAPE = { from: 2, wide: 7, out: 0.5 } as const;
/** Where the columns begin, and the axes of the tubes, mm of paper. */
const COLUMNS = { firm: 70, loose: 110 } as const;
const ROWS = { tried: 22, outcome: 13, next: 34 } as const;

/** Numbers of the picture, and of the one in which the tube is pushed home. */
export interface HoldNumbers {
  readonly own: number;
  readonly pushed: number;
}

/**
 * Whether a tube that is home holds in its socket: it is pulled and turned by hand. Where it stays, the work goes on; where it comes out or turns,
 * one turn of tape is wound round its end, it is pushed home and tried again: common practice, no source.
 */
export const holdPicture = (numbers: HoldNumbers, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, holdMarks(numbers, width));

/** The marks of the picture, for the tests. */
export function holdMarks({ own, pushed }: HoldNumbers, width: number): readonly Mark[] {
  const [firm, loose] = [COLUMNS.firm, COLUMNS.loose].map((x) => (x * width) / WIDE) as [number, number];
  const taped: Vec2 = [loose + 10, ROWS.next];
  return [
    ...numbered([[4.5, 4.6]], own), ...inSocket([8, ROWS.tried], 0, TRIED), ...handDown([30, ROWS.tried - FIT.half]), ...pulledAndTurned([TRIED, ROWS.tried]),
    line(pens.edge, [firm, 1], [firm, HIGH - 1]), ...inSocket([firm + 6, ROWS.outcome], 0), ...ticked([firm + 20, ROWS.next - 2], 1.5),
    line(pens.edge, [loose, 1], [loose, HIGH - 1]), ...inSocket([loose + 6, ROWS.outcome], SLIPPED, loose + 6 + FIT.long), ...crossed([width - 4.5, ROWS.outcome], 1.4),
    ...onwards([loose + 2, ROWS.next]), ...tapedEnd(taped), ...numbered([[width - 13.5, ROWS.next + 2], [width - 4.5, ROWS.next + 2]], pushed),
  ];
}

/** Where the tube ends that is tried, mm of paper. */
const TRIED = 47;

/** The width that the columns are told for, mm of paper. */
const WIDE = 165;

/** The socket cut lengthwise from the place where its bottom ends the tube, the tube in it, out by so much, mm of paper; its mark is at the mouth where it is home. */
function inSocket([x, y]: Vec2, out: number, end = x + FIT.long): readonly Mark[] {
  const outer = FIT.half + FIT.wall;
  const mark = x + out + FIT.deep;
  const tube = cornersOf({ x: x + out, y: y - FIT.half, width: end - x - out, height: 2 * FIT.half });
  const hollow = cornersOf({ x, y: y - FIT.half, width: FIT.deep, height: 2 * FIT.half });
  return [
    ...cutFace([[x - FIT.bottom, y - outer], [x + FIT.deep, y - outer], [x + FIT.deep, y + outer], [x - FIT.bottom, y + outer]]),
    area('white', hollow), outline(pens.cut, hollow), area('panel', tube), outline(pens.cut, tube), line(pens.motion, [mark, y - FIT.half], [mark, y + FIT.half]),
  ];
}

/** Pulled straight out of it, and turned to and fro round its axis. */
const pulledAndTurned = ([x, y]: Vec2): readonly Mark[] =>
  [...turnedRound([x - 6, y], FIT.half), line({ ...pens.motion, width: 0.9 }, [x + 3, y], [x + 9, y]), arrowhead([x + 14, y], [1, 0], 5)];

/** The tube's end with one turn of tape on its way round it, its mark beyond. */
function tapedEnd([x, y]: Vec2): readonly Mark[] {
  const tube = cornersOf({ x, y: y - FIT.half, width: 20, height: 2 * FIT.half });
  const tape = cornersOf({ x: x + TAPE.from, y: y - FIT.half - TAPE.out, width: TAPE.wide, height: 2 * (FIT.half + TAPE.out) });
  const middle = x + TAPE.from + TAPE.wide / 2;
  return [area('panel', tube), outline(pens.cut, tube), line(pens.motion, [x + FIT.deep, y - FIT.half], [x + FIT.deep, y + FIT.half]), area('ink', tape), ...tapeRoll([middle, y - FIT.half], [middle + 10.5, y - FIT.half - 2.6])];
}

