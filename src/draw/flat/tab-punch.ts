import type { Vec2 } from '../../model/index.ts';
import type { Box, DrawnPicture } from '../types.ts';
import { linearDimension, runningDimension, runningReach } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture, type Paper } from '../kit/svg.ts';
import { tell } from '../../scene/index.ts';
import type { Skinned } from './hole-marks.ts';
import { cornerMarks, type CornerRow } from './corner-tab.ts';
import { HELD_HALF, HELD_HIGH, heldBlock } from './held-block.ts';
import { PERSON_HIGH, personMarks } from './person.ts';
import { plate, tapeRound } from './punched-section.ts';
import { PUNCH_HIGH, punchTool } from './punch-tool.ts';

/** A tab that is punched where it lies on its panel, mm: how far from its edge, and how deep into both. */
export interface PunchedTab extends Skinned {
  readonly diameter: number;
  readonly fromEdge: number;
  readonly depth: number;
}

/** The holes of a tab: how far each is from one end of the tab, from the first on; how long the tab is, how deep from its half-cut to its edge, and how much is cut off its corners, mm. */
export interface TabRow {
  readonly stands: false;
  readonly at: readonly number[];
  readonly length: number;
  readonly deep: number;
  readonly corner: number;
  /** Whether it lies on the wall of a box, which has nothing behind it: a block is held there. */
  readonly isBlockHeld: boolean;
}

/** Height of the section without what is held behind a wall, and its width, mm of paper. */
const sectionHigh = 50;
const sectionWide = 62;
/** Beside each other from this width of paper on, else one over the other, mm. */
const both = 110;
const cap = capHeights.step;
/** Room over the tab for the punch and its figures, and under the panel. */
const above = 20;
const below = 6;
/** Of tab and panel left of the hole, and of the panel beyond the tab's edge, mm of paper. */
const left = 18;
const beyond = 8;
/** The tab from above, mm of paper: the least and the most that it is drawn wide, whatever the scale along it, the bar over it and the panel under it. */
const plan = { least: 13, most: 17, bar: 5, panel: 6, left: 7, right: 17 } as const;

/** From the panel's front to the line that measures along it, mm of paper. */
const measured = 5;

/** Height of the tab from above with its figures, mm of paper. */
const planHigh = ({ at }: TabRow): number => 2 + plan.bar + plan.most + plan.panel + measured + runningReach(at.map(tell.mm), cap) + 1;

/** Behind a wall that is punched a block is held. */
const isHeld = (row: TabRow | CornerRow | null): boolean => row?.isBlockHeld === true;
const sectionOf = (row: TabRow | CornerRow | null): number => sectionHigh + (isHeld(row) ? HELD_HIGH : 0);

/** Height of the drawing of where the holes are. */
const rowHigh = (row: TabRow | CornerRow): number => (row.stands ? sectionHigh : planHigh(row));

/**
 * Where holes are punched through a tab into its panel: the tab from above with its row of holes, measured from one end, or
 * the corner of a box from within, measured from its floor; and a section at a large scale: how far from the tab's edge, how deep through both, what stops the punch there.
 */
export function tabPunchPicture(tab: PunchedTab, row: TabRow | CornerRow | null, width: number): DrawnPicture {
  const own = sectionOf(row);
  const height = row === null ? own : width >= both ? Math.max(own, rowHigh(row)) : rowHigh(row) + own;
  return toPicture({ width, height }, tabPunchMarks(tab, row, { width, height }));
}

/** The marks of the picture, for the tests. */
export function tabPunchMarks(tab: PunchedTab, row: TabRow | CornerRow | null, { width, height }: Paper): readonly Mark[] {
  if (row === null) return sectionMarks(tab, { x: 0, y: 0, width, height });
  const beside = width >= both;
  const own = sectionOf(row);
  const ofRow: Box = { x: 0, y: beside ? (height - rowHigh(row)) / 2 : 0, width: beside ? width - sectionWide : width, height: rowHigh(row) };
  return [
    ...(row.stands ? cornerMarks(tab.fromEdge, row, ofRow) : planMarks(tab, row, ofRow)),
    ...sectionMarks(tab, { x: beside ? width - sectionWide : 0, y: height - own, width: beside ? sectionWide : width, height: own }, isHeld(row)),
  ];
}

/** The tab on its panel from above, each way to scale, its cut corners too, so that no hole seems to lie on them: its bar at the back, its free edge in front. */
function planMarks({ fromEdge }: PunchedTab, { at, length, deep, corner }: TabRow, box: Box): readonly Mark[] {
  const [from, to] = [box.x + plan.left, box.x + box.width - plan.right];
  const top = box.y + 2 + plan.bar;
  const across = Math.max(plan.least, Math.min(plan.most, (deep * (to - from)) / length)) / deep;
  const edge = top + deep * across;
  const y = edge - fromEdge * across;
  const x = (along: number): number => from + ((to - from) * along) / length;
  const panel = cornersOf({ x: from - 4, y: top - plan.bar, width: to - from + 8, height: plan.bar + deep * across + plan.panel });
  const off = corner * across;
  const tab: readonly Vec2[] = [[from, top], [to, top], [to, edge - off], [x(length - corner), edge], [x(corner), edge], [from, edge - off]];
  const front = edge + plan.panel;
  return [
    area('panel', panel), line(pens.edge, [from - 4, front], [to + 4, front]),
    area('fresh', tab), outline(pens.cut, tab),
    ...[0.3, 0.7].map((share) => line(pens.edge, [from, top - plan.bar * share], [to, top - plan.bar * share])),
    ...at.map((along) => circle([x(along), y], 1.3, pens.cut, 'white')),
    ...runningDimension({
      axis: 'x', datum: from, line: front + measured, feature: edge - off, cap, bounds: [box.x + 0.5, box.x + box.width - 0.5],
      stations: at.map((along) => ({ at: x(along), told: tell.mm(along), feature: y })),
    }),
    ...linearDimension({ axis: 'y', told: tell.mm(fromEdge), ends: [y, edge], line: to + 6 + toldWidth(tell.mm(fromEdge), cap, 400), feature: [to, to - off], cap, upright: true }),
  ];
}

/** Tab and panel cut through a hole with the punch in it; behind the wall of a box the second person holds a block of wood, while the first one punches. */
function sectionMarks({ thickness, skin, diameter, fromEdge, depth }: PunchedTab, { x, y, width, height }: Box, held = false): readonly Mark[] {
  const scale = (height - above - below - (held ? HELD_HIGH : 0)) / (2 * thickness);
  const hole = x + width / 2 - (beyond + fromEdge * scale - left) / 2 + 4;
  const [edge, start] = [hole + fromEdge * scale, hole - left];
  const [top, bottom] = [y + above, y + above + 2 * thickness * scale];
  const seam = (top + bottom) / 2;
  const tip = top + depth * scale;
  const wide = (diameter * scale) / 2;
  const up = top - PUNCH_HIGH;
  const size = tell.diameter(diameter);
  const beside = hole - wide - 7;
  return [
    ...(held ? [...heldBlock([hole, bottom]), ...personMarks([beside - 6 - toldWidth(size, cap, 400), top - 1.5], 1), ...personMarks([hole + HELD_HALF + 5, bottom + 2.5 + PERSON_HIGH], 2)] : []),
    ...plate({ x: start, y: seam, width: edge + beyond - start, height: bottom - seam }, skin * scale),
    ...plate({ x: start, y: top, width: edge - start, height: seam - top }, skin * scale),
    ...punchTool([hole, tip], wide, top), ...tapeRound(hole, wide, top),
    line(pens.motion, [beside, up], [beside, top - 6]), arrowhead([beside, top - 3.8], [0, 1], 3.5),
    figure(size, [beside - 3 - toldWidth(size, cap, 400) / 2, up + cap / 2], cap),
    ...linearDimension({ axis: 'x', told: tell.mm(fromEdge), ends: [hole, edge], line: top - PUNCH_HIGH - 3, feature: [up, top], cap }),
    line(pens.dimension, [start - 5, tip], [hole - wide, tip]),
    ...linearDimension({ axis: 'y', told: tell.mm(depth), ends: [tip, top], line: start - 4, feature: start, cap, upright: true }),
  ];
}
