import type { FlatPanel, FlatPattern, Pattern, Vec2 } from '../../model/index.ts';
import { circle, line, outline } from '../kit/marks.ts';
import type { Mark } from '../kit/marks.ts';
import { acrossFlap, corners, creaseMarks, halfCutMarks, insideLineMarks, notchHole, outlineMarks } from '../flat/panel-lines.ts';
import { bendMarks, patternOutline, rootMarks } from '../flat/folded/bend-lines.ts';
import { pens } from '../kit/pens.ts';
import type { Bounds, Fit } from '../kit/fit.ts';
import { allOnPaper, onPaper } from '../kit/fit.ts';

/** A drawing to be printed at true size, in model mm (y up). */
export interface Template {
  readonly kind: 'panel' | 'plate';
  readonly extent: Bounds;
  /** Its edge, for the map of the tiles. */
  readonly edge: readonly Vec2[];
  readonly draw: (view: Fit) => readonly Mark[];
}

/** How far the cross of a hole's middle reaches out of the hole, mm. */
const crossReach = 2.5;

/** The flat pattern with every line of the booklet's: cut, inside, crease, half-cut, holes with their middles. */
export function panelTemplate(pattern: FlatPattern): Template {
  const half: Vec2 = [pattern.blank[0] / 2, pattern.blank[1] / 2];
  return {
    kind: 'panel',
    extent: { least: [-half[0], -half[1]], most: half },
    edge: pattern.outline,
    draw: (view) => [
      ...outlineMarks(pattern, view, pens.cut),
      ...insideLineMarks(pattern, view, pens.inside),
      ...creaseMarks(pattern, view, pens.crease, acrossFlap),
      ...halfCutMarks(pattern, view, pens.halfCut, acrossFlap),
      ...pattern.holes.flatMap(({ at, diameter }) => trueHole(view, at, diameter)),
      // The round corner of a notch is punched before the notch is cut: its middle is needed.
      ...corners.flatMap((corner) => middleCross(view, notchHole(pattern, corner), pattern.notchRadius)),
    ],
  };
}

/** Any panel that is folded, with every line of the booklet's. */
export function foldedTemplate(pattern: Pattern): Template {
  return {
    kind: 'panel',
    extent: { least: pattern.min, most: pattern.max },
    edge: pattern.outline,
    draw: (view) => [
      patternOutline(pattern, view, pens.cut),
      ...rootMarks(pattern, view, pens.inside),
      ...bendMarks(pattern, 'crease', view, pens.crease),
      ...bendMarks(pattern, 'half-cut', view, pens.halfCut),
      ...pattern.holes.flatMap(({ at, diameter }) => trueHole(view, at, diameter)),
    ],
  };
}

/** A flat panel with its holes, from its lower left corner. */
export function plateTemplate({ width, height, holes }: FlatPanel): Template {
  const edge: readonly Vec2[] = [[0, 0], [width, 0], [width, height], [0, height]];
  return {
    kind: 'plate',
    extent: { least: [0, 0], most: [width, height] },
    edge,
    draw: (view) => [outline(pens.cut, allOnPaper(view, edge)), ...holes.flatMap(({ at, diameter }) => trueHole(view, at, diameter))],
  };
}

function trueHole(view: Fit, at: Vec2, diameter: number): readonly Mark[] {
  return [circle(onPaper(view, at), (diameter / 2) * view.scale, pens.hole), ...middleCross(view, at, diameter / 2)];
}

function middleCross(view: Fit, at: Vec2, radius: number): readonly Mark[] {
  const [x, y] = onPaper(view, at);
  const reach = radius * view.scale + crossReach;
  return [line(pens.hole, [x - reach, y], [x + reach, y]), line(pens.hole, [x, y - reach], [x, y + reach])];
}
