import { tell } from '../../scene/index.ts';
import type { Vec2 } from '../../model/index.ts';
import { lessThan } from '../kit/at-most.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import { line, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { boundKnife, onBody, tapeAcross, type AtStrip } from './leaning-knife.ts';
import { KNIFE, paddedKnife } from './padded-knife.ts';
import { woodMarks } from './punched-section.ts';
import { tapeRoll } from './tape-roll.ts';
import { numbered, onwards, pressedDown } from './trial.ts';

/** Numbers of the picture in its order: the tape that goes across, and its trial; and where one begins anew where the blade has slid. */
export interface BoundNumbers {
  readonly taped: number;
  readonly tried: number;
  readonly stop: number;
}

/** Height of the picture; the lower edge of the strips where they are held in the air, and the face of the wood that a tip is pushed onto. */
const HIGH = 50;
const FOOT = HIGH - 9;
const WOOD = { face: HIGH - 6, high: 5, half: 17 } as const;
/** mm of paper for one mm. */
const SCALE = 0.26;
/** The middles of what stands side by side, mm of paper from the left: the bound knife, the pushed one; across the strips the blade as it was, and slid; the bars before these. */
const PLACES = { bound: 27, pushed: 68, right: 110, wrong: 147, bars: [90, 126] } as const;
const WIDE = 165;
/** The arrow onto the knife's end: its shaft, its head, how long it is, mm of paper. */
const PUSH = { shaft: 1.6, long: 4, wide: 3.8, high: 10 } as const;
/** Across the strips, mm of paper: how far the blade is out as it was bound, and where it has slid back; the knife over their foot; half of the wood. */
const ACROSS = { out: 7.2, slid: 2.6, up: 22, half: 11 } as const;
const cap = capHeights.step;

/**
 * What keeps a blade between its strips: tape drawn tight from either strip's end up across the knife's body, one way and the other, so that it
 * crosses. Then the tip is pushed onto wood by the knife's end: where as much of it is out as before, mm, it holds; where it has slid back, it is
 * bound anew (common practice, no source).
 */
export const boundTrialPicture = (depth: number, numbers: BoundNumbers, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, boundTrialMarks(depth, numbers, width));

/** The marks of the picture, for the tests. */
export function boundTrialMarks(depth: number, { taped, tried, stop }: BoundNumbers, width: number): readonly Mark[] {
  const x = (place: number): number => (place * width) / WIDE;
  const [right, wrong] = [x(PLACES.right), x(PLACES.wrong)];
  const out = WOOD.face - ACROSS.out;
  return [
    ...numbered([[4.5, 4.6]], taped), ...boundAcross({ foot: [x(PLACES.bound), FOOT], depth, scale: SCALE }),
    ...numbered([[x(PLACES.pushed) - 19, 4.6]], tried), ...pushed({ foot: [x(PLACES.pushed), WOOD.face - depth * SCALE], depth, scale: SCALE }),
    ...PLACES.bars.map((bar) => line(pens.edge, [x(bar), 1], [x(bar), HIGH - 1])),
    ...across(right, ACROSS.out), ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [WOOD.face, out], line: right - ACROSS.half - 1, feature: right - 8, cap, upright: true }), ...ticked([right + 6, 6], 1.3),
    ...across(wrong, ACROSS.slid), ...lessThan(tell.mm(depth), [wrong - 15.5, WOOD.face - 4.5], cap), ...crossed([wrong - 15, 6], 1.3),
    ...onwards([wrong - 5, 6.5]), ...numbered([[wrong + 7, 6.5]], stop),
  ];
}

/** Across the strips, whose foot is so far over the wood as the blade is out. */
const across = (x: number, out: number): readonly Mark[] =>
  [...woodMarks({ x: x - ACROSS.half, y: WOOD.face, width: 2 * ACROSS.half, height: WOOD.high }), ...paddedKnife([x, WOOD.face - out], out, { up: ACROSS.up, wide: 5.5 })];

/** The knife in the air, tape across it both ways, the roll on the second. */
function boundAcross(at: AtStrip): readonly Mark[] {
  const [from] = tapeAcross(at).ends;
  return [...boundKnife(at), ...tapeAcross(at).marks, ...tapeRoll(from, [from[0] - 12, from[1] - 9])];
}

/** The same on wood, its tip pushed onto that by the knife's end. */
function pushed(at: AtStrip): readonly Mark[] {
  const [x, y]: Vec2 = onBody(at)(KNIFE.long, KNIFE.body / 2);
  return [
    ...woodMarks({ x: at.foot[0] - WOOD.half, y: WOOD.face, width: 2 * WOOD.half, height: WOOD.high }), ...boundKnife(at), ...tapeAcross(at).marks,
    ...pressedDown([x, y - PUSH.high], y - 1, PUSH),
  ];
}
