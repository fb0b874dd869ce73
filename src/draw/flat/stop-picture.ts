import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { cutFace } from '../kit/cut-face.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { pencil } from './pencil.ts';
import { STRIP } from './padded-knife.ts';
import { numbered, onwards } from './trial.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';

/** A tool that is to go so deep and no deeper, mm: tape is wound round a punch, a knife is bound between two strips of what is cut off a panel. */
export type ToolStop = { readonly depth: number } & ({ readonly tool: 'punch' } | { readonly tool: 'knife'; readonly from: CutOut });

/** Height of the picture, mm of paper; where the tip of the tool is, and where the tool is cut off above. */
const HIGH = 46;
const TIP = HIGH - 3;
const UP = 3;
/** The stop drawn so far over the tip, mm of paper: to no scale, its figure tells how far. */
const STOP = 17;
/** Half of the tool's width seen from the side, and an off-cut beside a blade, mm of paper. */
const HALF = { punch: 3.6, knife: 1.3 } as const;
const OFF_CUT = { wide: 9, high: 15, apart: 3.4 } as const;
/** Tape wound round: its width along the tool, and how far it stands out. */
const TAPE = { high: 6, out: 1.4 } as const;
/** The roll that it comes from. */
const ROLL = { radius: 6, core: 2.6, away: 16 } as const;
const cap = capHeights.step;

/** How a tool gets its stop: measured from its tip and marked, or laid between two off-cuts; then tape is wound round. A punch pulled out again with its core. */
export const stopPicture = (stop: ToolStop, { width }: Pick<Paper, 'width'>): DrawnPicture =>
  toPicture({ width, height: HIGH }, stopMarks(stop, width));

/** The marks of the picture, for the tests. */
export function stopMarks(stop: ToolStop, width: number): readonly Mark[] {
  const { tool, depth } = stop;
  const [first, second] = tool === 'knife' ? [width * 0.52, width * 0.785] : [width * 0.14, width * 0.44];
  const level = TIP - STOP;
  const between = (first + second) / 2 - (tool === 'knife' ? -1 : 4);
  return [
    ...(stop.tool === 'knife' ? stripsCut(stop.from) : []), ...tools[tool](first), ...measured[tool](first, level, depth),
    line(pens.motion, [between - 4, HIGH / 2], [between + 2, HIGH / 2]), arrowhead([between + 6, HIGH / 2], [1, 0], 4),
    ...tools[tool](second), ...wound[tool](second, level),
    ...(tool === 'knife' ? numbered([[4.5, 4.6], [first - 17, 4.6], [second - 17, 4.6]]) : pulledOut(width * 0.84)),
  ];
}

/** A panel that was punched, mm of paper: half its width, its thickness, and how deep the hole is; and how far the punch is over it. */
const PUNCHED = { half: 17, thick: 11, deep: 8.5, over: 7 } as const;

/** The punch pulled out of its hole with the core in it: the hole is empty to its bottom. */
function pulledOut(x: number): readonly Mark[] {
  const [face, tip] = [TIP - PUNCHED.thick, TIP - PUNCHED.thick - PUNCHED.over];
  const core = cornersOf({ x: x - HALF.punch + 1.2, y: tip - PUNCHED.deep, width: 2 * HALF.punch - 2.4, height: PUNCHED.deep });
  const hole = cornersOf({ x: x - HALF.punch, y: face, width: 2 * HALF.punch, height: PUNCHED.deep });
  return [
    line(pens.motion, [x - PUNCHED.half - 10, HIGH / 2], [x - PUNCHED.half - 6, HIGH / 2]), arrowhead([x - PUNCHED.half - 2, HIGH / 2], [1, 0], 4),
    ...cutFace(cornersOf({ x: x - PUNCHED.half, y: face, width: 2 * PUNCHED.half, height: PUNCHED.thick })), area('white', hole), line(pens.cut, [x - HALF.punch, face], [x - HALF.punch, face + PUNCHED.deep], [x + HALF.punch, face + PUNCHED.deep], [x + HALF.punch, face]),
    ...shaft(cornersOf({ x: x - HALF.punch, y: UP, width: 2 * HALF.punch, height: tip - UP })), ...cutFace(core),
    line(pens.motion, [x + HALF.punch + 6, face - 3], [x + HALF.punch + 6, face - 11]), arrowhead([x + HALF.punch + 6, face - 14], [0, -1], 3.5),
    ...ticked([x + PUNCHED.half + 4, TIP - 2]),
  ];
}

/** mm of paper for one mm of a strip. */
const STRIP_SCALE = 0.19;
/** The panel in what is cut off it, and a piece of that, mm of paper. */
const PANEL: Box = { x: 1, y: 12, width: 18, height: 24 };
const PIECE: Box = { x: 22.5, y: 13, width: 23, height: 23 };

/** The panel in its waste, a piece of that with the strips that are cut from it: how long, how high, how many; and the way to the blade. */
function stripsCut(from: CutOut): readonly Mark[] {
  const [long, high] = [STRIP.long * STRIP_SCALE, STRIP.high * STRIP_SCALE];
  const foot = PIECE.y + PIECE.height;
  const strips = [1, 2].map((place) => cornersOf({ x: PIECE.x, y: foot - place * high, width: long, height: high }));
  const end = PIECE.x + PIECE.width;
  return [
    ...cutOutMarks(from, PANEL, true), ...onwards([PIECE.x - 8, PIECE.y + 1]), ...wasteMarks(cornersOf(PIECE)),
    ...strips.flatMap((ring) => [area('panel', ring), outline(pens.cut, ring)]),
    figure(tell.times(STRIP.count), [end + 5, PIECE.y - 6], capHeights.count, 700),
    ...linearDimension({ axis: 'x', told: tell.mm(STRIP.long), ends: [PIECE.x, PIECE.x + long], line: PIECE.y - 4, feature: foot - 2 * high, cap }),
    ...linearDimension({ axis: 'y', told: tell.mm(STRIP.high), ends: [foot, foot - high], line: end + 2.5 + toldWidth(tell.mm(STRIP.high), cap, 400), feature: PIECE.x + long, cap, upright: true }),
    ...onwards([end + 2, PIECE.y + 3]),
  ];
}

const tools: Readonly<Record<ToolStop['tool'], (x: number) => readonly Mark[]>> = {
  punch: (x) => shaft([[x - HALF.punch, UP], [x + HALF.punch, UP], [x + HALF.punch, TIP - 2], [x + HALF.punch - 1, TIP], [x - HALF.punch + 1, TIP], [x - HALF.punch, TIP - 2]]),
  knife: (x) => shaft([[x - HALF.knife, UP], [x + HALF.knife, UP], [x + HALF.knife, TIP - 4], [x, TIP], [x - HALF.knife, TIP - 4]]),
};

const shaft = (ring: readonly Vec2[]): readonly Mark[] => [area('white', ring), outline(pens.cut, ring)];

/** How far the stop is from the tip. */
const measured: Readonly<Record<ToolStop['tool'], (x: number, level: number, depth: number) => readonly Mark[]>> = {
  punch: (x, level, depth) => [
    line(pens.cut, [x - HALF.punch, level], [x + HALF.punch, level]), ...pencil([x + HALF.punch + 0.4, level]), ...depthOf(depth, level, x - HALF.punch),
  ],
  knife: (x, level, depth) => [
    ...([-1, 1] as const).flatMap((side) => [
      ...offCut(x + side * (HALF.knife + OFF_CUT.apart + OFF_CUT.wide / 2), level),
      line(pens.motion, [x + side * (HALF.knife + OFF_CUT.apart + OFF_CUT.wide + 7), level - OFF_CUT.high / 2], [x + side * (HALF.knife + OFF_CUT.apart + OFF_CUT.wide + 3), level - OFF_CUT.high / 2]),
      arrowhead([x + side * (HALF.knife + OFF_CUT.apart + OFF_CUT.wide + 1), level - OFF_CUT.high / 2], [-side, 0], 3.5),
    ]),
    ...depthOf(depth, level, x - HALF.knife - OFF_CUT.apart - OFF_CUT.wide),
  ],
};

const depthOf = (depth: number, level: number, feature: number): readonly Mark[] =>
  linearDimension({ axis: 'y', told: tell.mm(depth), ends: [TIP, level], line: feature - 5, feature, cap, upright: true });

/** An off-cut of the panel, its lower edge on a level. */
const offCut = (x: number, level: number): readonly Mark[] =>
  cutFace(cornersOf({ x: x - OFF_CUT.wide / 2, y: level - OFF_CUT.high, width: OFF_CUT.wide, height: OFF_CUT.high }));

/** The tape on its way round the tool, its lower edge on the mark; off-cuts are bound tight to the blade. */
const wound: Readonly<Record<ToolStop['tool'], (x: number, level: number) => readonly Mark[]>> = {
  punch: (x, level) => tape(x, HALF.punch + TAPE.out, level),
  knife: (x, level) => [
    ...([-1, 1] as const).flatMap((side) => offCut(x + side * (HALF.knife + OFF_CUT.wide / 2), level)),
    ...tape(x, HALF.knife + OFF_CUT.wide + TAPE.out, level - (OFF_CUT.high - TAPE.high) / 2),
  ],
};

function tape(x: number, half: number, low: number): readonly Mark[] {
  const y = low - TAPE.high / 2;
  const centre: Vec2 = [x + half + ROLL.away, y];
  const round = Array.from({ length: 13 }, (_, index): Vec2 => {
    const angle = -Math.PI * (0.15 + 0.7 * (index / 12));
    return [x + (half + 3) * Math.cos(angle), low - TAPE.high - 1 + 4.5 * Math.sin(angle)];
  });
  const [before, tip] = [11, 12].map((index): Vec2 => round[index] ?? [x, y]);
  return [
    area('ink', cornersOf({ x: x - half, y: low - TAPE.high, width: 2 * half, height: TAPE.high })),
    area('ink', cornersOf({ x: x + half, y: low - TAPE.high, width: ROLL.away - ROLL.radius + 1, height: 1.2 })),
    circle(centre, ROLL.radius, pens.cut, 'ink'), circle(centre, ROLL.core, pens.cut, 'white'),
    line(pens.motion, ...round), ...(tip && before ? [arrowhead(tip, [tip[0] - before[0], tip[1] - before[1]], 3.5)] : []),
  ];
}
