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
import { handDown } from './hands.ts';
import { tapeRoll } from './tape-roll.ts';
import { onwards } from './trial.ts';
import { turnedRound } from './turned-round.ts';

/** Height of the picture and of its first row, and the width that its columns are told for, mm of paper. */
const HIGH = 68;
const FIRST = 40;
const WIDE = 165;
/** A tube in a sleeve, mm of paper, to no scale: half of the tube, the sleeve's wall, how long it is, and how long the tube is. */
const FIT = { half: 4.2, wall: 1.6, sleeve: 17, tube: 31 } as const;
/** How far a loose tube has gone past its mark, mm of paper. */
const SLIPPED = 6;
/** Tape round the tube where the sleeve will be: off its mark, how wide, and how far it stands out, mm of paper. */
const TAPE = { off: 3, wide: 7, out: 0.5 } as const;
/** A mallet's head and handle, mm of paper. */
const MALLET = { head: [7, 13], handle: [2.4, 15] } as const;
/** Under that, a tube through two sleeves: from the left edge to the first of them, right and wrong, how far they are apart, and where their axis is; a tube that is stuck drawn out, and what comes then, mm of paper. */
const TWO = { right: 1.5, wrong: 40, apart: 14, long: 8, axis: 54.5 } as const;
const OUT = { from: 81, filed: 112 } as const;
/** Where the columns begin, and the axes of the tubes, mm of paper. */
const COLUMNS = { stays: 57, slips: 93, stuck: 130 } as const;
const ROWS = { tried: 20, outcome: 10, next: 31 } as const;

/** The step at which ends are filed, or null; and whether a tube goes through further sleeves on its way. */
export interface SleevesTried {
  readonly filedAt: number | null;
  readonly passesMore: boolean;
}

/**
 * How a tube is to go through a sleeve: pushed and turned by hand, it stays at its mark. Where it slips of itself, one turn of tape
 * is wound round it where the sleeve will be; it is not driven with a mallet, which bursts a sleeve. Under that: tape is wound when the
 * tube is through all sleeves that it goes through before, for it does not pass through one; and a tube that is stuck is drawn out,
 * turned by hand, its end filed as at the step that files ends, and pushed again: common practice, no source.
 */
export const slideTrial = ({ width }: Pick<Paper, 'width'>, tried: SleevesTried): DrawnPicture => toPicture({ width, height: HIGH }, slideTrialMarks(width, tried));

/** The marks of the picture, for the tests. */
export function slideTrialMarks(width: number, { filedAt, passesMore }: SleevesTried): readonly Mark[] {
  const [stays, slips, stuck] = [COLUMNS.stays, COLUMNS.slips, COLUMNS.stuck].map((x) => (x * width) / WIDE) as [number, number, number];
  const rules = [stays, slips, stuck].map((x) => line(pens.edge, [x, 1], [x, FIRST - 1]));
  return [
    ...rules,
    ...inSleeve([6, ROWS.tried], 11), ...handDown([43, ROWS.tried - FIT.half]), ...turnedRound([32, ROWS.tried], FIT.half), ...pushedLeft([49, ROWS.tried]),
    ...inSleeve([stays + 1.5, ROWS.outcome], 0), ...ticked([stays + 18, ROWS.next - 2], 1.5),
    ...inSleeve([slips + 7.5, ROWS.outcome], -SLIPPED, 27), ...crossed([stuck - 3.5, ROWS.outcome], 1.1),
    ...onwards([slips + 1, ROWS.next]), ...tapedAt([slips + 8.5, ROWS.next]), ...ticked([stuck - 3.8, ROWS.next + 4], 1.1),
    ...inSleeve([stuck + 0.5, ROWS.outcome + 6], 4, FIT.tube - 9), ...mallet([stuck + 23, ROWS.outcome + 6]), ...crossed([stuck + 16, ROWS.next + 2], 1.5),
    line(pens.edge, [1, FIRST + 0.5], [width - 1, FIRST + 0.5]), ...(passesMore ? passing() : []),
    ...drawnOut([OUT.from, TWO.axis]), ...(filedAt === null ? [] : filedAgain(filedAt, [OUT.filed, TWO.axis])),
  ];
}

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

/** Taped when it is through the sleeve on its way, not before. */
const passing = (): readonly Mark[] => [
  line(pens.edge, [OUT.from - 3, FIRST + 1.5], [OUT.from - 3, HIGH - 1]),
  ...throughTwo([TWO.right, TWO.axis], 'between'), ...ticked([TWO.right + 11, HIGH - 4], 1.1), ...throughTwo([TWO.wrong, TWO.axis], 'before'), ...crossed([TWO.wrong + 11, HIGH - 4], 1.1),
];

/** A tube turned by hand and drawn out of its sleeve to the right. */
const drawnOut = ([x, y]: Vec2): readonly Mark[] => [
  ...inSleeve([x - 3, y], 9, 22), ...turnedRound([x + 23, y], FIT.half), line({ ...pens.motion, width: 0.9 }, [x + 4, y - FIT.half - 4.6], [x + 11, y - FIT.half - 4.6]), arrowhead([x + 14, y - FIT.half - 4.6], [1, 0], 4.4),
];

/** The step that files ends is looked at again, and then it is tried as before. */
const filedAgain = (step: number, [x, y]: Vec2): readonly Mark[] => [...onwards([x, y]), ...eye([x + 15, y], 11), figure(tell.number(step), [x + 26, y], capHeights.count, 700), ...ticked([x + 35, y], 1.1)];

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

/** A mallet that strikes to the left, its face on the axis. */
function mallet([x, y]: Vec2): readonly Mark[] {
  const [wide, high] = MALLET.head;
  const head = cornersOf({ x, y: y - high / 2, width: wide, height: high });
  const handle = cornersOf({ x: x + (wide - MALLET.handle[0]) / 2, y: y + high / 2, width: MALLET.handle[0], height: MALLET.handle[1] });
  return [area('white', handle), outline(pens.cut, handle), area('fresh', head), outline(pens.cut, head)];
}
