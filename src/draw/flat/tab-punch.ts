import type { Vec2 } from '../../model/index.ts';
import type { DrawnPicture } from '../types.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import type { Skinned } from './hole-marks.ts';

/** A tab that is punched where it lies on its panel, mm: how far from its edge, and how deep into both. */
export interface PunchedTab extends Skinned {
  readonly diameter: number;
  readonly fromEdge: number;
  readonly depth: number;
}

/** Paper of the picture, mm. */
const height = 62;
const cap = capHeights.step;
/** Room over the tab for the punch and its figures, and under the panel. */
const above = 20;
const below = 6;
/** Of tab and panel left of the hole, and of the panel beyond the tab's edge, mm of paper. */
const left = 26;
const beyond = 20;
/** Tape round the punch that comes to lie on the tab when the hole is deep enough, mm of paper. */
const tape = { wide: 2.6, high: 3 } as const;

/** Tab and panel cut through a hole with the punch in it, at a large scale: how far from the tab's edge, how deep through both, what stops the punch there. */
export function tabPunchPicture(tab: PunchedTab, width: number): DrawnPicture {
  const paper: Paper = { width, height };
  return toPicture(paper, tabPunchMarks(tab, paper));
}

/** The marks of the picture, for the tests. */
export function tabPunchMarks({ thickness, skin, diameter, fromEdge, depth }: PunchedTab, { width }: Paper): readonly Mark[] {
  const scale = (height - above - below) / (2 * thickness);
  const hole = width / 2 - (beyond + fromEdge * scale - left) / 2;
  const [edge, start] = [hole + fromEdge * scale, hole - left];
  const [top, bottom] = [above, above + 2 * thickness * scale];
  const seam = (top + bottom) / 2;
  const tip = top + depth * scale;
  const wide = (diameter * scale) / 2;
  const up = top - 11;
  const size = tell.diameter(diameter);
  const shaft: readonly Vec2[] = [[hole - wide, up], [hole + wide, up], [hole + wide, tip], [hole - wide, tip]];
  return [
    ...plate(start, edge + beyond, seam, bottom, skin * scale),
    ...plate(start, edge, top, seam, skin * scale),
    area('white', shaft), outline(pens.cut, shaft),
    ...[hole - wide - tape.wide, hole + wide].map((x) => area('ink', cornersOf({ x, y: top - tape.high, width: tape.wide, height: tape.high }))),
    line(pens.motion, [hole - wide - 7, up], [hole - wide - 7, top - 6]), arrowhead([hole - wide - 7, top - 3.8], [0, 1], 3.5),
    figure(size, [hole - wide - 10 - toldWidth(size, cap, 400) / 2, up + cap / 2], cap),
    ...linearDimension({ axis: 'x', told: tell.mm(fromEdge), ends: [hole, edge], line: top - 5, feature: top, cap }),
    line(pens.dimension, [start - 5, tip], [hole - wide, tip]),
    ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [tip, top], line: start - 4, feature: start, cap, upright: true }),
  ];
}

function plate(from: number, to: number, top: number, bottom: number, skin: number): readonly Mark[] {
  const ring = cornersOf({ x: from, y: top, width: to - from, height: bottom - top });
  return [area('core', ring), outline(pens.cut, ring), ...[top + skin, bottom - skin].map((y) => line(pens.edge, [from, y], [to, y]))];
}
