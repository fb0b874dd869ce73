import { flatHoles, notchHoles, type FlatPanel, type FlatPattern, type PanelHole, type Pattern, type Vec2 } from '../../model/index.ts';
import { line, outline } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { acrossFlap, corners, creaseMarks, halfCutMarks, insideLineMarks, notchHole, outlineMarks } from '../flat/panel-lines.ts';
import { depthFigures, holeMark, holeSection, section, type Skinned } from '../flat/hole-marks.ts';
import { bendMarks, patternOutline, firstMarks } from '../flat/folded/bend-lines.ts';
import { pens } from '../kit/pens.ts';
import type { Bounds, Fit } from '../kit/fit.ts';
import { allOnPaper, onPaper } from '../kit/fit.ts';
import type { Told } from '../../scene/index.ts';

/** A drawing to be printed at true size, in model mm (y up). */
export interface Template {
  readonly kind: 'panel' | 'plate';
  readonly extent: Bounds;
  /** Its edge, for the map of the tiles. */
  readonly edge: readonly Vec2[];
  readonly draw: (view: Fit) => readonly Mark[];
  /** Figures with their middles in model mm: each stands on the one tile that answers for its place. */
  readonly figures: readonly { readonly at: Vec2; readonly told: Told }[];
}

/** How far the cross of a hole's middle reaches out of the hole, mm. */
const crossReach = 2.5;

/** The flat pattern with every line of the booklet's: cut, inside, crease, half-cut, holes with their middles. */
export function panelTemplate(pattern: FlatPattern): Template {
  const half: Vec2 = [pattern.blank[0] / 2, pattern.blank[1] / 2];
  return {
    kind: 'panel',
    extent: { min: [-half[0], -half[1]], max: half },
    edge: pattern.outline,
    draw: (view) => [
      ...outlineMarks(pattern, view, pens.cut),
      ...insideLineMarks(pattern, view, pens.inside),
      ...creaseMarks(pattern, view, pens.crease, acrossFlap),
      ...halfCutMarks(pattern, view, pens.halfCut, acrossFlap),
      ...flatHoles(pattern).flatMap((hole) => trueHole(view, hole, pattern)),
      // The round corner of a notch is punched before the notch is cut: its middle is needed.
      ...corners.flatMap((corner) => middleCross(view, notchHole(pattern, corner), pattern.notchRadius)),
    ],
    figures: depths(flatHoles(pattern), pattern),
  };
}

/** Any panel that is folded, with every line of the booklet's. */
export function foldedTemplate(pattern: Pattern): Template {
  return {
    kind: 'panel',
    extent: { min: pattern.min, max: pattern.max },
    edge: pattern.outline,
    draw: (view) => [
      patternOutline(pattern, view, pens.cut),
      ...firstMarks(pattern, view, pens.inside),
      ...bendMarks(pattern, 'crease', view, pens.crease),
      ...bendMarks(pattern, 'half-cut', view, pens.halfCut),
      ...notchHoles(pattern).flatMap(({ at, diameter }) => middleCross(view, at, diameter / 2)),
      ...flatHoles(pattern).flatMap((hole) => trueHole(view, hole, pattern)),
    ],
    figures: depths(flatHoles(pattern), pattern),
  };
}

/** A flat panel with its holes, from its lower left corner. */
export function plateTemplate(plate: FlatPanel): Template {
  const { width, height } = plate;
  const holes = plate.holes.map(({ at, diameter, depth = null }): PanelHole => ({ at, diameter, depth, face: 'drawn', punched: 'flat' }));
  const edge: readonly Vec2[] = [[0, 0], [width, 0], [width, height], [0, height]];
  return {
    kind: 'plate',
    extent: { min: [0, 0], max: [width, height] },
    edge,
    draw: (view) => [outline(pens.cut, allOnPaper(view, edge)), ...holes.flatMap((hole) => trueHole(view, hole, plate))],
    figures: depths(holes, plate),
  };
}

/** From the middle of a blind hole to the panel's section beside it, mm. */
const sectionGap = 7;

const sectionCorner = ([x, y]: Vec2): Vec2 => [x + sectionGap, y - section.height / 2];

/** The hole as large as it is, with its middle; beside a blind one the panel cut through it. */
function trueHole(view: Fit, hole: PanelHole, panel: Skinned): readonly Mark[] {
  const at = onPaper(view, hole.at);
  return [
    ...holeMark(hole, at, (hole.diameter / 2) * view.scale, pens.hole),
    ...middleCross(view, hole.at, hole.diameter / 2),
    ...(hole.depth === null ? [] : holeSection(hole, panel, sectionCorner(at))),
  ];
}

/** How deep each blind hole is, in its section. Model y goes up, a section's down. */
const depths = (holes: readonly PanelHole[], panel: Skinned): Template['figures'] => holes.flatMap((hole) =>
  depthFigures(hole, panel, sectionCorner([hole.at[0], -hole.at[1]])).map(({ at: [x, y], told }) => ({ at: [x, -y] as Vec2, told })));

function middleCross(view: Fit, at: Vec2, radius: number): readonly Mark[] {
  const [x, y] = onPaper(view, at);
  const reach = radius * view.scale + crossReach;
  return [line(pens.hole, [x - reach, y], [x + reach, y]), line(pens.hole, [x, y - reach], [x, y + reach])];
}
