import type { Vec2 } from '../../model/index.ts';
import { WHEEL_RIM } from '../../plan/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { crossed, ticked } from '../kit/right-wrong.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { dented, dentOf } from './dent.ts';
import type { Skinned } from './hole-marks.ts';
import { onwards } from './trial.ts';
import { cutOutMarks, wasteMarks, type CutOut } from './waste.ts';
import { wheelFromAbove, wheelMarks } from './wheel.ts';

/** Height of the picture, mm of paper. */
const HIGH = 68;
/** The piece of waste at its left, the line tried on it, and the middle of the sections beside it. */
const WASTE = { x: 1, y: 21, width: 25, height: 25 } as const;
const LINE = WASTE.y + WASTE.height / 2;
/** Half of a section's width, the panel's thickness in it, and how high the wheel is drawn over its rim, mm of paper. */
const HALF = 6.5;
const THICK = 9;
const WHEEL = 17;
/** The middles of the two ways of rolling, and where the columns of what comes of them begin, mm of paper. */
const ROLLED = [44, 67] as const;
const COLUMNS = 84;
/** In a column: the face of the section, the verdict under it, the way on, the face of what is done then. */
const COLUMN = { face: 15, verdict: 31, way: 37, next: 57 } as const;
/** A rule: its width and length, mm of paper. */
const RULE = { wide: 4.5, long: 13 } as const;
/** The panel, and another piece of waste. */
const PANEL = { width: 20, height: 15 } as const;
const ANEW = { width: 7.5, height: 12 } as const;

/**
 * First on waste: rolled lightly, then home. Three columns tell what comes of it: as deep as it is to be when a rule is held
 * at its end, then the panel; too shallow, then the same again, pressed more; the skin torn, then on other waste, pressed less.
 */
export const rolledTrial = (panel: CutOut & Skinned, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: HIGH }, rolledMarks(panel, width));

/** The marks of the picture, for the tests. */
export function rolledMarks(panel: CutOut & Skinned, width: number): readonly Mark[] {
  const scale = THICK / panel.thickness;
  const deep = dentOf(panel);
  const section = ([x, y]: Vec2, how: number | null): readonly Mark[] => dented(panel, { at: [x, y], scale, half: HALF, dents: how === null ? [] : [0], deep: how ?? deep });
  const rolled = ([x, y]: Vec2, how: number, pressed: 'light' | 'home' | 'more', high = WHEEL): readonly Mark[] => [...section([x, y], how), ...wheelMarks([x, y + how * scale], high, pressed, scale)];
  const face = LINE - THICK / 2;
  const [light, home] = ROLLED;
  const column = (width - COLUMNS) / 3;
  const [well, shallow, torn] = [0.5, 1.5, 2.5].map((place) => COLUMNS + place * column) as [number, number, number];
  const [ok, more, less, anew] = [well + 2, shallow + 3, torn + 5, torn - column / 2 + 1.2 + ANEW.width / 2];
  return [
    ...wasteMarks(cornersOf(WASTE)), line(pens.crease, [WASTE.x, LINE], [WASTE.x + WASTE.width, LINE]),
    ...straightedge(), ...wheelFromAbove([WASTE.x + 15, LINE]), ...ahead([WASTE.x + 15, LINE - 6.5]),
    ...onwards([light - HALF - 9, LINE]), ...rolled([light, face], deep / 2, 'light'),
    ...onwards([light + HALF + 1.2, LINE]), ...rolled([home, face], deep, 'home'), ...rimTold([home, face + deep * scale], scale),
    ...onwards([home + HALF + 1, LINE]),
    ...[0, 1, 2].map((place) => line(pens.edge, [COLUMNS + place * column, 1], [COLUMNS + place * column, HIGH - 1])),
    ...section([ok, COLUMN.face], deep), ...ruleMarks([ok, COLUMN.face + deep * scale], scale),
    ...linearDimension({ axis: 'y', told: tell.mm(deep), ends: [COLUMN.face + deep * scale, COLUMN.face], line: ok - HALF - 2, feature: [ok, ok - HALF], cap: capHeights.step, upright: true }),
    ...ticked([well, COLUMN.verdict], VERDICT), ...down([well, COLUMN.way]),
    ...cutOutMarks(panel, { x: well - PANEL.width / 2, y: COLUMN.next - 7, ...PANEL }, false),
    ...section([shallow, COLUMN.face], deep / 4), ...crossed([shallow, COLUMN.verdict], VERDICT), ...down([shallow - 4, COLUMN.way]),
    ...rolled([more, COLUMN.next], deep, 'more', 14),
    ...section([torn, COLUMN.face], deep), ...tear([torn, COLUMN.face + deep * scale], scale), ...crossed([torn, COLUMN.verdict], VERDICT), ...down([anew, COLUMN.way]),
    ...wasteMarks(cornersOf({ x: anew - ANEW.width / 2, y: COLUMN.next - 3, ...ANEW })), ...rolled([less, COLUMN.next], deep / 2, 'light', 14),
  ];
}

/** How large a verdict is. */
const VERDICT = 1.5;

/** The way that the wheel is rolled. */
const ahead = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x - 4, y], [x + 3, y]), arrowhead([x + 7, y], [1, 0], 4)];

/** Along the line, beside the wheel's fork. */
function straightedge(): readonly Mark[] {
  const { x, width } = WASTE;
  const [top, wide] = [LINE + 2.6, 4];
  const ring = cornersOf({ x, y: top, width, height: wide });
  return [area('white', ring), outline(pens.cut, ring), ...Array.from({ length: Math.floor(width / 2) }, (_, index) => line(pens.edge, [x + 1 + 2 * index, top], [x + 1 + 2 * index, top + (index % 5 === 4 ? 2.4 : 1.4)]))];
}

/** How round the rim is, mm of the wheel, told beside it. */
function rimTold([x, y]: Vec2, scale: number): readonly Mark[] {
  const rim = WHEEL_RIM * scale;
  const told: Vec2 = [x + 9.6, y - WHEEL + 3.2];
  return [line(pens.dimension, [x + 0.5 * rim, y - 0.134 * rim], [told[0] - 3, told[1] + 2.6]), figure(tell.radius(WHEEL_RIM), told, capHeights.step)];
}

/** On to what is done then. */
const down = ([x, y]: Vec2): readonly Mark[] => [line(pens.motion, [x, y], [x, y + 3.5]), arrowhead([x, y + 7], [0, 1], 4)];

/** A rule held against the edge where the crease ends, its nought in the dent, a line for each mm. */
function ruleMarks([x, y]: Vec2, scale: number): readonly Mark[] {
  const ring = cornersOf({ x, y: y - RULE.long, width: RULE.wide, height: RULE.long });
  const count = Math.floor(RULE.long / scale) - 1;
  return [area('white', ring), outline(pens.edge, ring), ...Array.from({ length: count }, (_, index) => line(pens.edge, [x, y - (index + 1) * scale], [x + ((index + 1) % 5 === 0 ? 3 : 1.8), y - (index + 1) * scale]))];
}

/** The skin gapes where it is torn, the core cracks under it. */
const tear = ([x, y]: Vec2, scale: number): readonly Mark[] => [
  area('white', [[x - 1.5, y - 2.4], [x - 1.2, y + scale], [x, y + 3], [x + 1.3, y + scale * 0.8], [x + 1.5, y - 2.4], [x, y - 2]]),
  line(pens.cut, [x - 2.2, y - 2.2], [x - 1.3, y + scale], [x, y + 3.2], [x + 1.3, y + scale * 0.8], [x + 2.2, y - 2.2]),
];
