import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { boundKnife, knifeOnStrip, stripRing, tipOf, type AtStrip } from './leaning-knife.ts';
import { STRIP } from './padded-knife.ts';
import { tapeRoll } from './tape-roll.ts';
import { numbered, onwards } from './trial.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';

/** Height of the picture, mm of paper. */
const HIGH = 56;
/** The lower edge of a strip at the knife; and of the strip that is laid on the other one. */
const FOOT = HIGH - 8;
const LAID = 19.5;
/** mm of paper for one mm of a strip: where it is cut, and at the knife. */
const SCALE = { cut: 0.19, knife: 0.4 } as const;
/** The panel in what is cut off it, and a piece of that, mm of paper. */
const PANEL: Box = { x: 1, y: 15, width: 18, height: 24 };
const PIECE: Box = { x: 22.5, y: 16, width: 23, height: 23 };
/** Where the drawings of the open and the bound knife begin, mm of paper: from the left, and from the right edge. */
const OPEN = 70;
const BOUND = 46;
const cap = capHeights.step;

/** How a knife gets its stop: two strips cut from waste; the blade laid on one, its tip so far out, mm, square to the strip's edge, the other laid on that; tape round both. */
export const knifeStopPicture = (depth: number, from: CutOut, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, knifeStopMarks(depth, from, width));

/** The marks of the picture, for the tests. */
export function knifeStopMarks(depth: number, from: CutOut, width: number): readonly Mark[] {
  const half = (STRIP.long * SCALE.knife) / 2;
  const [open, bound] = [OPEN + half, width - BOUND + half];
  const at = (middle: number): AtStrip => ({ foot: [middle, FOOT], depth, scale: SCALE.knife });
  return [
    ...stripsCut(from), ...opened(at(open), depth), ...boundKnife(at(bound)), ...roundBoth([bound, FOOT - STRIP.high * SCALE.knife]),
    ...numbered([[4.5, 4.6], [OPEN - 8, 4.6], [width - BOUND - 1, 4.6]]),
  ];
}

/** The knife on a strip, how far its tip stands out; the other strip over it, on its way down. */
function opened(at: AtStrip, depth: number): readonly Mark[] {
  const { foot: [middle, face] } = at;
  const laid = stripRing({ ...at, foot: [middle, LAID] });
  const [left, tip] = [middle - (STRIP.long * at.scale) / 2, tipOf(at)];
  const arrow = left + 6;
  return [
    ...knifeOnStrip(at), area('panel', laid), outline(pens.cut, laid),
    line(pens.motion, [arrow, LAID + 2], [arrow, LAID + 6.5]), arrowhead([arrow, LAID + 10.5], [0, 1], 4),
    ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [tip[1], face], line: left - 4, feature: left, cap, upright: true }),
    line(pens.dimension, [left - 5, tip[1]], tip),
  ];
}

/** The roll over the middle of the strips, and the way that it goes round them. */
function roundBoth([middle, top]: Vec2): readonly Mark[] {
  const centre: Vec2 = [middle - 8, top - 14];
  const across: readonly Vec2[] = Array.from({ length: 9 }, (_, index): Vec2 => [centre[0] - 9 * Math.sin(1.9 - index * 0.28), centre[1] - 9 * Math.cos(1.9 - index * 0.28)]);
  const [before, tip] = [across.at(-2) ?? centre, across.at(-1) ?? centre];
  return [...tapeRoll([middle - 1, top], centre), line(pens.motion, ...across), arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.5)];
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
    ...onwards([end + 2, PIECE.y + 3]),
  ];
}
