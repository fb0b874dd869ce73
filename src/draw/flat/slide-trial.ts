import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { eye } from './eye.ts';
import { lying } from './fitted-end.ts';
import { handDown } from './hands.ts';
import { mallet } from './mallet.ts';
import { tapeRoll } from './tape-roll.ts';
import { numbered, onwards } from './trial.ts';
import { turnedRound } from './turned-round.ts';

/** Heights of the rows, the third where a tube goes through two sleeves, and the width that their columns are told for, mm of paper. */
const ROW = 32;
const LAST = 26;
const WIDE = 165;
/** Where the columns of the first two rows begin; the axes of the tubes under a row's upper edge, mm of paper. */
const COLUMNS = { mallet: 62, stuck: 93, slips: 50, taped: 103 } as const;
const AXIS = 19;
/** A tube in a sleeve, mm of paper, to no scale: half of the tube, the sleeve's wall, how long it is, and how long the tube is. */
const FIT = { half: 4.2, wall: 1.6, sleeve: 17, tube: 31 } as const;
/** How far a loose tube has gone past its mark, mm of paper. */
const SLIPPED = 6;
/** Tape round the tube where the sleeve will be: off its mark, how wide, and how far it stands out, mm of paper. */
const TAPE = { off: 3, wide: 7, out: 0.5 } as const;
/** A tube through two sleeves: from the left edge to the first of them, right and wrong, how far they are apart and how long each is, mm of paper. */
const TWO = { right: 18, wrong: 76, apart: 14, long: 8 } as const;

/** The step at which ends are filed, or null; and whether a tube goes through further sleeves on its way. */
export interface SleevesTried {
  readonly filedAt: number | null;
  readonly passesMore: boolean;
}

/**
 * How a tube is to go through a sleeve, move by move: (1) pushed and turned by hand, not driven with a mallet, which bursts a sleeve; one that is stuck
 * is drawn out, its end filed as at the step that files ends, and pushed again. (2) It is let go: it stays at its mark, or slips; then (3) one turn of tape
 * is wound round it where the sleeve will be, and it is pushed again. Where it goes through further sleeves, that is wound when it is through all before,
 * for tape does not pass through one: common practice, no source.
 */
export const slideTrial = ({ width }: Pick<Paper, 'width'>, tried: SleevesTried): DrawnPicture => toPicture({ width, height: heightOf(tried) }, slideTrialMarks(width, tried));

const heightOf = ({ passesMore }: SleevesTried): number => 2 * ROW + (passesMore ? LAST : 0);

/** The marks of the picture, for the tests. */
export function slideTrialMarks(width: number, { filedAt, passesMore }: SleevesTried): readonly Mark[] {
  const x = (place: number): number => (place * width) / WIDE;
  return [
    ...pushedIn(filedAt, x),
    line(pens.edge, [1, ROW], [width - 1, ROW]),
    ...letGo(x),
    ...(passesMore ? [line(pens.edge, [1, 2 * ROW], [width - 1, 2 * ROW]), ...throughMore(2 * ROW)] : []),
  ];
}

/** By hand, not with a mallet; where it is stuck, its end is filed. */
function pushedIn(filedAt: number | null, x: (place: number) => number): readonly Mark[] {
  const [struck, stuck] = [x(COLUMNS.mallet), x(COLUMNS.stuck)];
  return [
    ...[struck, stuck].map((at) => line(pens.edge, [at, 1], [at, ROW - 1])),
    ...numbered([[4.5, 4.6]]), ...inSleeve([4, AXIS], 11), ...handDown([41, AXIS - FIT.half]), ...turnedRound([30, AXIS], FIT.half), ...pushedLeft([47, AXIS]),
    ...inSleeve([struck + 0.5, AXIS], 4, FIT.tube - 9), ...mallet(lying([struck + 22.4, AXIS]), 1), ...crossed([struck + 5, 5], 1.3),
    ...crossed([stuck + 5, 5], 1.3), ...drawnOut([stuck + 6, AXIS]),
    ...(filedAt === null ? [] : filedAgain(filedAt, [stuck + 35, AXIS])), ...numbered([[x(WIDE) - 5, AXIS]]),
  ];
}

/** Nobody holds it: it stays, or slips and is taped. */
function letGo(x: (place: number) => number): readonly Mark[] {
  const [slips, taped] = [x(COLUMNS.slips), x(COLUMNS.taped)];
  const [top, axis] = [ROW, ROW + AXIS];
  return [
    ...[slips, taped].map((at) => line(pens.edge, [at, top + 1], [at, top + ROW - 1])),
    ...numbered([[4.5, top + 4.6]], 2), ...inSleeve([9, axis], 0), ...ticked([24, top + 5.5], 1.5),
    ...inSleeve([slips + 9, axis], -SLIPPED, 27), ...crossed([slips + 6, top + 5], 1.3), ...driven([slips + 26, axis - FIT.half - 5]), ...onwards([slips + 37, axis]), ...numbered([[slips + 49, axis]], 3),
    ...numbered([[taped + 5, top + 4.6]], 3), ...tapedAt([taped + 6, axis]), ...onwards([taped + 43, axis]), ...numbered([[x(WIDE) - 5, axis]]),
  ];
}

/** The tape where there are two sleeves: between them, not before both. */
const throughMore = (top: number): readonly Mark[] => [
  ...numbered([[4.5, top + 4.6]], 3),
  ...throughTwo([TWO.right, top + LAST - 8], 'between'), ...ticked([TWO.right + 44, top + LAST - 8], 1.3), ...throughTwo([TWO.wrong, top + LAST - 8], 'before'), ...crossed([TWO.wrong + 44, top + LAST - 8], 1.3),
];

/** A sleeve cut lengthwise, from its left end on the axis, with the tube through it; pushed to the left it is home when its mark comes out, at the sleeve's left end; here `off` of it. */
function inSleeve([x, y]: Vec2, off: number, long: number = FIT.tube): readonly Mark[] {
  const [outer, from] = [FIT.half + FIT.wall, x + 2 + off];
  const walls = [y - outer, y + FIT.half].map((top) => cutFace(cornersOf({ x: x + 4, y: top, width: FIT.sleeve, height: FIT.wall })));
  const tube = cornersOf({ x: from - 2, y: y - FIT.half, width: long, height: 2 * FIT.half });
  const mark = x + 4 + off;
  return [area('panel', tube), outline(pens.cut, tube), ...walls.flat(), line(pens.motion, [mark, y - FIT.half], [mark, y + FIT.half])];
}

/** Two sleeves on one axis, from the left edge of the first, and a tube pushed to the left: through the second, its tape between both; or its tape before the second, through which it cannot pass. */
function throughTwo([x, y]: Vec2, tape: 'between' | 'before'): readonly Mark[] {
  const second = x + TWO.long + TWO.apart;
  const sleeve = (left: number): readonly Mark[] => [y - FIT.half - FIT.wall, y + FIT.half].flatMap((top) => cutFace(cornersOf({ x: left, y: top, width: TWO.long, height: FIT.wall })));
  const from = tape === 'between' ? x + TWO.long + 2 : second - 3;
  const tube = cornersOf({ x: from, y: y - FIT.half, width: second + TWO.long + 6 - from, height: 2 * FIT.half });
  const wound = tape === 'between' ? from + 2.6 : second + TWO.long + 0.4;
  return [
    ...sleeve(x), area('panel', tube), outline(pens.cut, tube), ...sleeve(second),
    area('ink', cornersOf({ x: wound, y: y - FIT.half - TAPE.out, width: 4.6, height: 2 * (FIT.half + TAPE.out) })),
    line({ ...pens.motion, width: 0.9 }, [x + TWO.long + 12, y - FIT.half - 4.6], [x + TWO.long + 5, y - FIT.half - 4.6]), arrowhead([x + TWO.long + 2, y - FIT.half - 4.6], [-1, 0], 4.4),
  ];
}

/** A tube turned by hand and drawn out of its sleeve to the right. */
const drawnOut = ([x, y]: Vec2): readonly Mark[] => [
  ...inSleeve([x - 3, y], 9, 22), ...turnedRound([x + 23, y], FIT.half), line({ ...pens.motion, width: 0.9 }, [x + 4, y - FIT.half - 4.6], [x + 11, y - FIT.half - 4.6]), arrowhead([x + 14, y - FIT.half - 4.6], [1, 0], 4.4),
];

/** The step that files ends is looked at again. */
const filedAgain = (step: number, [x, y]: Vec2): readonly Mark[] => [...eye([x + 4, y], 8), figure(tell.number(step), [x + 12.5, y], capHeights.count, 700), ...onwards([x + 17.5, y])];

/** The way that a loose one goes of itself. */
const driven = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x + 6, y], [x + 3, y]), arrowhead([x, y], [-1, 0], 4)];

/** An arrow from the right on the axis to a place. */
const pushedLeft = ([x, y]: Vec2): readonly Mark[] => [line({ ...pens.motion, width: 0.9 }, [x + 7, y], [x + 3, y]), arrowhead([x, y], [-1, 0], 4.4)];

/** The tube with a turn of tape on its way round it, right of its mark. */
function tapedAt([x, y]: Vec2): readonly Mark[] {
  const tube = cornersOf({ x, y: y - FIT.half, width: 20, height: 2 * FIT.half });
  const mark = x + 3;
  const tape = cornersOf({ x: mark + TAPE.off, y: y - FIT.half - TAPE.out, width: TAPE.wide, height: 2 * (FIT.half + TAPE.out) });
  const middle = mark + TAPE.off + TAPE.wide / 2;
  return [area('panel', tube), outline(pens.cut, tube), line(pens.motion, [mark, y - FIT.half], [mark, y + FIT.half]), area('ink', tape), ...tapeRoll([middle, y - FIT.half], [middle + 10.5, y - FIT.half - 1.2])];
}
