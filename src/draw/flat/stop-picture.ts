import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { pencil } from './pencil.ts';
import { tapeRoll } from './tape-roll.ts';

/** Height of the picture, mm of paper; where the tip of the punch is, and where it is cut off above. */
const HIGH = 46;
const TIP = HIGH - 3;
const UP = 3;
/** The stop drawn so far over the tip, mm of paper: to no scale, its figure tells how far. */
const STOP = 17;
/** Half of the punch's width seen from the side, mm of paper. */
const HALF = 3.6;
/** Tape wound round: its width along the punch, and how far it stands out. */
const TAPE = { high: 6, out: 1.4 } as const;
const cap = capHeights.step;

/** How a punch gets its stop so far from its tip, mm: measured from that and marked; then tape is wound round; then it is pulled out of a tab and the panel under it, each so thick, mm, again with its core. */
export const stopPicture = (depth: number, thickness: number, { width }: Pick<Paper, 'width'>): DrawnPicture =>
  toPicture({ width, height: HIGH }, stopMarks(depth, thickness, width));

/** The marks of the picture, for the tests. */
export function stopMarks(depth: number, thickness: number, width: number): readonly Mark[] {
  const [first, second] = [width * 0.14, width * 0.44];
  const level = TIP - STOP;
  const between = (first + second) / 2 - 4;
  return [
    ...punch(first),
    line(pens.cut, [first - HALF, level], [first + HALF, level]), ...pencil([first + HALF + 0.4, level]),
    ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [TIP, level], line: first - HALF - 5, feature: first - HALF, cap, upright: true }),
    line(pens.motion, [between - 4, HIGH / 2], [between + 2, HIGH / 2]), arrowhead([between + 6, HIGH / 2], [1, 0], 4),
    ...punch(second), ...tape(second, level), ...pulledOut(width * 0.84, depth, thickness),
  ];
}

/** A tab on its panel that was punched, mm of paper: half their width, how thick each is, and how far the punch is over them. */
const PUNCHED = { half: 17, thick: 6.6, over: 6 } as const;

/** The punch pulled out of its hole, so deep in panels so thick, mm, with the core in it: the hole is empty to its bottom. */
function pulledOut(x: number, depth: number, thickness: number): readonly Mark[] {
  const [face, deep] = [TIP - 2 * PUNCHED.thick, (depth / thickness) * PUNCHED.thick];
  const tip = face - PUNCHED.over;
  const core = cornersOf({ x: x - HALF + 1.2, y: tip - deep, width: 2 * HALF - 2.4, height: deep });
  const hole = cornersOf({ x: x - HALF, y: face, width: 2 * HALF, height: deep });
  return [
    line(pens.motion, [x - PUNCHED.half - 10, HIGH / 2], [x - PUNCHED.half - 6, HIGH / 2]), arrowhead([x - PUNCHED.half - 2, HIGH / 2], [1, 0], 4),
    ...[0, 1].flatMap((layer) => cutFace(cornersOf({ x: x - PUNCHED.half, y: face + layer * PUNCHED.thick, width: 2 * PUNCHED.half, height: PUNCHED.thick }))),
    area('white', hole), line(pens.cut, [x - HALF, face], [x - HALF, face + deep], [x + HALF, face + deep], [x + HALF, face]),
    ...shaft(cornersOf({ x: x - HALF, y: UP, width: 2 * HALF, height: tip - UP })), ...cutFace(core),
    line(pens.motion, [x + HALF + 6, face - 3], [x + HALF + 6, face - 11]), arrowhead([x + HALF + 6, face - 14], [0, -1], 3.5),
    ...ticked([x + PUNCHED.half + 4, TIP - 2]),
  ];
}

const punch = (x: number): readonly Mark[] => shaft([[x - HALF, UP], [x + HALF, UP], [x + HALF, TIP - 2], [x + HALF - 1, TIP], [x - HALF + 1, TIP], [x - HALF, TIP - 2]]);

const shaft = (ring: readonly Vec2[]): readonly Mark[] => [area('white', ring), outline(pens.cut, ring)];

/** The tape on its way round the punch, its lower edge on the mark. */
function tape(x: number, low: number): readonly Mark[] {
  const half = HALF + TAPE.out;
  const y = low - TAPE.high / 2;
  const round = Array.from({ length: 13 }, (_, index): Vec2 => {
    const angle = -Math.PI * (0.15 + 0.7 * (index / 12));
    return [x + (half + 3) * Math.cos(angle), low - TAPE.high - 1 + 4.5 * Math.sin(angle)];
  });
  const [before, tip] = [11, 12].map((index): Vec2 => round[index] ?? [x, y]);
  return [
    area('ink', cornersOf({ x: x - half, y: low - TAPE.high, width: 2 * half, height: TAPE.high })),
    ...tapeRoll([x + half, y], [x + half + AWAY, y]),
    line(pens.motion, ...round), ...(tip && before ? [arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.5)] : []),
  ];
}

/** From the tape round the punch to the middle of its roll, mm of paper. */
const AWAY = 16;
