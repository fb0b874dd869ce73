import { halfCutDepth, type FlatPattern, type Vec2 } from '../../model/index.ts';
import type { Mark } from '../kit/marks.ts';
import { area, line, outline } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { allOnPaper } from '../kit/fit.ts';
import { hatching } from '../kit/hatching.ts';

/**
 * Small sections that tell what a line means, in mm with the inner face up at y = 0 and the place of the line
 * at x = 0. `reach` is how much panel is shown to either side.
 */
export type PanelSize = Pick<FlatPattern, 'thickness' | 'skin' | 'neutralLayer'>;

const turn = ([x, y]: Vec2, about: Vec2, angle: number): Vec2 => [
  about[0] + (x - about[0]) * Math.cos(angle) - (y - about[1]) * Math.sin(angle),
  about[1] + (x - about[0]) * Math.sin(angle) + (y - about[1]) * Math.cos(angle),
];

/** A creased panel, folded up by `angle` (rad): the inner side is crushed to the mitre. */
export function creasedSection({ thickness, neutralLayer }: PanelSize, reach: number, angle: number): readonly Vec2[] {
  const neutral: Vec2 = [0, -neutralLayer * thickness];
  const mitre = (offset: number): Vec2 => turn([0, neutral[1] + offset / Math.cos(angle / 2)], neutral, angle / 2);
  const inner = neutralLayer * thickness;
  const outer = inner - thickness;
  return [
    [-reach, -thickness],
    mitre(outer),
    turn([reach, -thickness], neutral, angle),
    turn([reach, 0], neutral, angle),
    mitre(inner),
    [-reach, 0],
  ];
}

/** A half-cut panel, tab turned back by `angle` (rad): the outer skin stays as the hinge. */
export function halfCutSection(panel: PanelSize, reach: number, angle: number): readonly Vec2[] {
  const { thickness } = panel;
  const hinge: Vec2 = [0, -thickness];
  const slit = -halfCutDepth(panel);
  return [
    [-reach, -thickness], hinge,
    turn([reach, -thickness], hinge, -angle), turn([reach, 0], hinge, -angle), turn([0, 0], hinge, -angle), turn([0, slit], hinge, -angle),
    [0, slit], [0, 0], [-reach, 0],
  ];
}

/** The two pieces of a panel cut through, `gap` mm apart. */
export function cutSection({ thickness }: PanelSize, reach: number, gap: number): readonly (readonly Vec2[])[] {
  return [-1, 1].map((side) => [
    [side * (gap / 2), 0], [side * (reach + gap / 2), 0], [side * (reach + gap / 2), -thickness], [side * (gap / 2), -thickness],
  ]);
}

/** A cut face: core tint, thin hatching at 45° and a thick outline. */
export function sectionMarks(view: Fit, ring: readonly Vec2[], hatched = true): readonly Mark[] {
  const points = allOnPaper(view, ring);
  return [
    area('core', points),
    ...(hatched ? hatching(points, 1.8).map(([from, to]) => line(pens.edge, from, to)) : []),
    outline(pens.cut, points),
  ];
}
