import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { boundKnife, knifeOnStrip, tipOf, type AtStrip } from './leaning-knife.ts';
import { PADDED, paddedKnife, STRIP, TAPED } from './padded-knife.ts';
import { tapeRoll } from './tape-roll.ts';
import { numbered, onwards } from './trial.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';

/** Height of the picture, mm of paper; the lower edge of a strip at the knife. */
const HIGH = 52;
const FOOT = HIGH - 7;
/** mm of paper for one mm of a strip: where it is cut, and at the knife. */
const SCALE = { cut: 0.17, knife: 0.32 } as const;
/** The panel in what is cut off it, and a piece of that, mm of paper. */
const PANEL: Box = { x: 0.5, y: 22, width: 15, height: 22 };
const PIECE: Box = { x: 18, y: 21, width: 20, height: 21 };
/** From the left, mm of paper: the middles of the strip with the knife, of both strips across, and of the bound knife. */
const PLACES = { open: 78, across: 112, bound: 142 } as const;
/** Where the numbers stand, mm of paper. */
const NUMBERS: readonly Vec2[] = [[4.5, 4.6], [63, 4.6], [101, 4.6], [128, 4.6]];
/** Across, mm of paper: how deep the tip is under the strips, the knife over their foot, and the arrows that press them together. */
const ACROSS = { deep: 4.8, up: 34, from: 15, to: 9.4 } as const;
const cap = capHeights.step;

/**
 * How a knife gets its stop: two strips cut from waste; the blade laid on one, the knife's body on the strip's edge, its tip so far out, mm,
 * square to that edge; the other strip on the blade's other side, so that the body stands on both; tape round both, tight, before and behind the blade.
 */
export const knifeStopPicture = (depth: number, from: CutOut, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, knifeStopMarks(depth, from, width));

/** The marks of the picture, for the tests. */
export function knifeStopMarks(depth: number, from: CutOut, width: number): readonly Mark[] {
  const at = (middle: number): AtStrip => ({ foot: [middle * (width / WIDE), FOOT], depth, scale: SCALE.knife });
  return [
    ...stripsCut(from), ...opened(at(PLACES.open), depth), ...across(at(PLACES.across).foot), ...boundKnife(at(PLACES.bound)), ...roundBoth(at(PLACES.bound).foot),
    ...numbered(NUMBERS.map(([x, y]): Vec2 => [x * (width / WIDE), y])),
  ];
}

/** The width that the places are told for, mm of paper. */
const WIDE = 165;

/** The knife on a strip, and how far its tip stands out. */
function opened(at: AtStrip, depth: number): readonly Mark[] {
  const { foot: [middle, face] } = at;
  const [left, tip] = [middle - (STRIP.long * at.scale) / 2, tipOf(at)];
  return [
    ...knifeOnStrip(at),
    ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [tip[1], face], line: left - 4, feature: left, cap, upright: true }),
    line(pens.dimension, [left - 5, tip[1]], tip),
  ];
}

/** Across the strips: the blade alone between them, the knife's body on both; they are pressed on the blade from both sides. */
function across([x, face]: Vec2): readonly Mark[] {
  const level = face - PADDED.high / 2;
  return [
    ...paddedKnife([x, face], ACROSS.deep, { up: ACROSS.up, isBound: false }),
    ...[-1, 1].flatMap((side) => [line(pens.motion, [x + side * ACROSS.from, level], [x + side * (ACROSS.to + 3), level]), arrowhead([x + side * ACROSS.to, level], [-side, 0], 3.5)]),
  ];
}

/** The roll over the tape behind the blade, and the way that it goes round the strips. */
function roundBoth([middle, face]: Vec2): readonly Mark[] {
  const from: Vec2 = [middle - ((TAPED.from + TAPED.to) / 2) * SCALE.knife, face - STRIP.high * SCALE.knife];
  const centre: Vec2 = [from[0] - 3, from[1] - 14];
  const ring: readonly Vec2[] = Array.from({ length: 9 }, (_, index): Vec2 => [centre[0] - 9 * Math.sin(1.9 - index * 0.28), centre[1] - 9 * Math.cos(1.9 - index * 0.28)]);
  const [before, tip] = [ring.at(-2) ?? centre, ring.at(-1) ?? centre];
  return [...tapeRoll(from, centre), line(pens.motion, ...ring), arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.5)];
}

/** The panel in its waste, a piece of that with the strips that are cut from it: how long, how high; and the way to the blade. */
function stripsCut(from: CutOut): readonly Mark[] {
  const [long, high] = [STRIP.long * SCALE.cut, STRIP.high * SCALE.cut];
  const foot = PIECE.y + PIECE.height;
  const strips = [1, 2].map((place) => cornersOf({ x: PIECE.x, y: foot - place * high, width: long, height: high }));
  const end = PIECE.x + PIECE.width;
  return [
    ...cutOutMarks(from, PANEL, true), ...onwards([PIECE.x - 8, PIECE.y + 1]), ...wasteMarks(cornersOf(PIECE)),
    ...strips.flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
    ...linearDimension({ axis: 'x', told: tell.mm(STRIP.long), ends: [PIECE.x, PIECE.x + long], line: PIECE.y - 4, feature: foot - 2 * high, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(STRIP.high), ends: [foot, foot - high], line: end + 2.5 + toldWidth(tell.mm(STRIP.high), cap, 400), feature: PIECE.x + long, cap, upright: true }),
    ...onwards([end + 2, PIECE.y + 3]), figure(tell.times(strips.length), [PIECE.x + long / 2, foot + 4.6], capHeights.count, 700),
  ];
}
