import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, circle, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';
import { dented, dentOf, wheelMarks } from './dent.ts';
import type { Skinned } from './hole-marks.ts';
import { crossMark, onwards, passed, TRIAL, tickMark, triedAnew } from './trial.ts';
import { wasteMarks, type CutOut } from './waste.ts';

/** Half of a section's width, and how high the wheel is drawn over its point, mm of paper. */
const HALF = 8.5;
const WHEEL = 14;
/** The panel's section has this thickness on paper. */
const THICK = 9;
/** A rule: its width and length, mm of paper. */
const RULE = { wide: 4.5, long: 13 } as const;

/** First on waste: rolled lightly, then home; as deep as it is to be when a rule is held at its end, then the panel; too shallow, and rolled again; the skin torn, and tried anew. */
export const rolledTrial = (panel: CutOut & Skinned, { width }: Pick<Paper, 'width'>): DrawnPicture => toPicture({ width, height: TRIAL.high }, rolledMarks(panel, width));

/** The marks of the picture, for the tests. */
export function rolledMarks(panel: CutOut & Skinned, width: number): readonly Mark[] {
  const scale = THICK / panel.thickness;
  const face = TRIAL.section - THICK / 2;
  const deep = dentOf(panel);
  const at = (share: number): Vec2 => [width * share, face];
  const [light, home, well, shallow, torn] = [at(0.285), at(0.445), at(0.635), at(0.76), at(0.89)];
  const dent = (place: Vec2, how: number): readonly Mark[] => dented(panel, { at: place, scale, half: HALF, dents: [0], deep: how });
  const [right, line0] = [TRIAL.waste.x + TRIAL.waste.width, TRIAL.line];
  return [
    ...wasteMarks(cornersOf(TRIAL.waste)), line(pens.crease, [TRIAL.waste.x, line0], [right, line0]), ...wheelFromAbove([TRIAL.waste.x + 9, line0]), ...onwards([TRIAL.waste.x + 17, line0 + 3]),
    ...onwards([light[0] - HALF - 8, TRIAL.section]), ...dent(light, deep / 2), ...wheelMarks([light[0], face + (deep * scale) / 2], WHEEL, 'light'),
    ...onwards([light[0] + HALF + 1, TRIAL.section]), ...dent(home, deep), ...wheelMarks([home[0], face + deep * scale], WHEEL + 1, 'home'),
    ...onwards([home[0] + HALF + 1, TRIAL.section]), ...dent(well, deep), ...ruleMarks([well[0], face + deep * scale], scale),
    ...linearDimension({ axis: 'y', told: tell.mm(deep), ends: [face + deep * scale, face], line: well[0] - HALF - 2.5, feature: [well[0], well[0] - HALF], cap: capHeights.step, upright: true }),
    ...tickMark([well[0] - 20, TRIAL.verdict]), ...passed([well[0] - 15, TRIAL.verdict], panel),
    ...dent(shallow, deep / 4), ...crossMark([shallow[0] - 8, TRIAL.verdict]), ...onwards([shallow[0] - 5, TRIAL.verdict]), ...wheelMarks([shallow[0] + 9.5, TRIAL.verdict + 5], WHEEL - 4, 'home'),
    ...dent(torn, deep), ...tear([torn[0], face + deep * scale], scale), ...crossMark([torn[0] - 6, TRIAL.verdict]), ...triedAnew([torn[0] - 3, TRIAL.verdict]),
  ];
}

/** The wheel from above, on a level line, its handle behind it. */
function wheelFromAbove([x, y]: Vec2): readonly Mark[] {
  const disc = cornersOf({ x: x - 5, y: y - 0.9, width: 10, height: 1.8 });
  const handle: readonly Vec2[] = [[x - 1, y - 0.9], [x - 1, y - 3.6], [x + 1, y - 3.6], [x + 1, y - 0.9]];
  return [area('ink', handle), area('white', disc), outline(pens.cut, disc), circle([x, y], 0.7, null, 'ink')];
}

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
