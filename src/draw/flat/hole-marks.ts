import type { PanelHole, Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import type { Colour } from '../kit/colours.ts';
import { boxRound, cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, arrowhead, circle, figure, line, outline, toldWidth, type Mark } from '../kit/marks.ts';
import { pens, type Pen } from '../kit/pens.ts';
import { tell, type Told } from '../../scene/index.ts';

/** Tape round the punch that stops it at a blind hole's depth, in the section: past the hole, and over the face, mm of paper. */
const collar = { wide: 0.8, high: 1.1 } as const;
/** From the circle of a blind hole to the square round it, mm of paper. */
const squareGap = 0.8;
/** How much of each side stands at a corner of a square of which but the corners are drawn, as a share. */
const cornerShare = 0.3;

/** What a mark tells of a hole. */
export type HoleKind = Pick<PanelHole, 'diameter' | 'depth' | 'face'>;

/**
 * A hole on the drawing of a panel. One right through is a circle; a blind one stands in a square, of which but the corners are
 * drawn where the hole is made from the other face.
 */
export function holeMark({ depth, face }: Pick<PanelHole, 'depth' | 'face'>, centre: Vec2, radius: number, pen: Pen, fill: Colour | null = null): readonly Mark[] {
  if (depth === null) return [circle(centre, radius, pen, fill)];
  const half = radius + squareGap;
  return [circle(centre, radius, pen, fill), ...(face === 'drawn' ? [outline(pen, cornersOf(boxRound(centre, 2 * half, 2 * half)))] : cornersAlone(centre, half, pen))];
}

/** The round corner of a notch on the drawing of a panel: a full disc, that no pin goes in. */
export const cornerMark = (centre: Vec2): Mark => circle(centre, 1.4, null, 'ink');

const cornersAlone = ([x, y]: Vec2, half: number, pen: Pen): readonly Mark[] => ([[-1, -1], [1, -1], [1, 1], [-1, 1]] as const).map(([sx, sy]) => {
  const [px, py, inwards] = [x + sx * half, y + sy * half, 2 * half * cornerShare];
  return line(pen, [px - sx * inwards, py], [px, py], [px, py - sy * inwards]);
});

/** A kind of hole and how many there are. */
interface CountedKind extends HoleKind {
  readonly count: number;
}

/** The holes told by kind: the narrow before the wide, those right through before the blind, those of the drawn face before those of the other. */
export function holeKinds(holes: readonly HoleKind[]): readonly CountedKind[] {
  const same = (one: HoleKind, other: HoleKind): boolean =>
    one.diameter === other.diameter && one.depth === other.depth && (one.depth === null || one.face === other.face);
  const first = holes.filter((hole, index) => holes.findIndex((other) => same(hole, other)) === index);
  return first.map((kind) => ({ diameter: kind.diameter, depth: kind.depth, face: kind.face, count: holes.filter((hole) => same(hole, kind)).length }))
    .sort((a, b) => a.diameter - b.diameter || (a.depth ?? 0) - (b.depth ?? 0) || a.face.localeCompare(b.face));
}

/** A panel's section: its size on paper, and where the hole stands in it, mm. */
export const section = { width: 13, height: 7.5, hole: 3.4, wide: 2.6 } as const;
/** Of one row of the legend, and between two kinds beside each other, mm. */
export const legendRow = section.height + 3.4;
const between = 6;
const sign = 5;
const cap = capHeights.step;

/** What the legend needs of the panel, mm. */
export interface Skinned {
  readonly thickness: number;
  readonly skin: number;
}

const told = ({ diameter, count }: CountedKind): readonly [ReturnType<typeof tell.diameter>, ReturnType<typeof tell.times>] => [tell.diameter(diameter), tell.times(count)];

function widthOf(kind: CountedKind): number {
  const [size, times] = told(kind);
  return sign + section.width + 2 + toldWidth(size, cap, 400) + 2 + toldWidth(times, capHeights.count, 700);
}

/** The kinds in lines of at most the given width. */
function inLines(kinds: readonly CountedKind[], width: number): readonly (readonly { readonly kind: CountedKind; readonly x: number }[])[] {
  const lines: { kind: CountedKind; x: number }[][] = [];
  let x = Infinity;
  for (const kind of kinds) {
    if (x + widthOf(kind) > width + 1e-9) {
      lines.push([]);
      x = 0;
    }
    lines.at(-1)?.push({ kind, x });
    x += widthOf(kind) + between;
  }
  return lines;
}

/** Height of the legend of some holes at a width, mm of paper. */
export const legendHeight = (holes: readonly HoleKind[], width: number): number => inLines(holeKinds(holes), width).length * legendRow;

/**
 * What the marks of holes mean, without words, one kind after the other from the upper left corner of a box: the mark, the
 * panel cut through there, the punch's way as deep as it goes with tape round it and the figure of a blind hole's depth, the diameter, how many.
 */
export function holeLegend(holes: readonly HoleKind[], panel: Skinned, { x: left, y: top, width }: Omit<Box, 'height'>): readonly Mark[] {
  return inLines(holeKinds(holes), width).flatMap((kinds, row) => kinds.flatMap(({ kind, x }): readonly Mark[] => {
    const y = top + (row + 0.5) * legendRow;
    const [size, times] = told(kind);
    const [wide, many] = [toldWidth(size, cap, 400), toldWidth(times, capHeights.count, 700)];
    const at = left + x + sign;
    return [
      ...holeMark(kind, [left + x + 2, y], 0.9, pens.motion),
      ...holeSection(kind, panel, [at, y - section.height / 2]),
      figure(size, [at + section.width + 2 + wide / 2, y], cap),
      figure(times, [at + section.width + 4 + wide + many / 2, y], capHeights.count, 700),
    ];
  }));
}

/** The panel cut through a hole, the drawn face up: what is left under a blind one is whole. */
export function holeSection({ depth, face }: HoleKind, { thickness, skin }: Skinned, [x, y]: Vec2): readonly Mark[] {
  const scale = section.height / thickness;
  const deep = Math.min(depth ?? thickness, thickness) * scale;
  const [outer, inner] = face === 'drawn' ? [y, y + section.height] : [y + section.height, y];
  const way = face === 'drawn' ? 1 : -1;
  const [from, to] = [x + section.hole - section.wide / 2, x + section.hole + section.wide / 2];
  const right = x + section.width;
  const bottom = outer + way * deep;
  const middle = x + section.hole;
  return [
    area('core', [[x, y], [right, y], [right, y + section.height], [x, y + section.height]]),
    area('white', [[from, outer], [to, outer], [to, bottom], [from, bottom]]),
    ...(depth === null
      ? [outline(pens.cut, [[x, y], [from, y], [from, inner], [x, inner]].map(([px = 0, py = 0]): Vec2 => [px, py === y ? outer : py])), outline(pens.cut, [[to, outer], [right, outer], [right, inner], [to, inner]])]
      : [outline(pens.cut, [[x, outer], [from, outer], [from, bottom], [to, bottom], [to, outer], [right, outer], [right, inner], [x, inner]]), line(pens.edge, [x, inner - way * skin * scale], [right, inner - way * skin * scale])]),
    ...(depth === null ? [line(pens.motion, [middle, outer - way * 1], [middle, inner - way * 1])] : [line(pens.motion, [middle, outer - way * 1], [middle, bottom - way * 2])]),
    ...(depth === null ? [] : [area('ink', [[from - collar.wide, outer], [to + collar.wide, outer], [to + collar.wide, outer - way * collar.high], [from - collar.wide, outer - way * collar.high]])]),
    arrowhead([middle, depth === null ? inner + way * 1.3 : bottom - way * 0.4], [0, way], 2.2, 1.6),
    ...depthFigures({ depth, face }, { thickness, skin }, [x, y]).map(({ at, told: deepness }) => figure(deepness, at, cap)),
  ];
}

/** The figure of a blind hole's depth in its section, beside the hole; none for one right through. */
export function depthFigures({ depth, face }: Pick<HoleKind, 'depth' | 'face'>, { thickness, skin }: Skinned, [x, y]: Vec2): readonly { readonly at: Vec2; readonly told: Told }[] {
  if (depth === null) return [];
  const scale = section.height / thickness;
  const level = Math.max(cap / 2 + 0.7, Math.min((depth * scale) / 2, section.height - skin * scale - cap / 2 - 0.7));
  const across = x + (section.hole + section.wide / 2 + section.width) / 2;
  return [{ at: [across, face === 'drawn' ? y + level : y + section.height - level], told: tell.mm(depth) }];
}
