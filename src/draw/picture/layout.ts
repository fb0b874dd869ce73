import type { Vec2, Vec3 } from '../../model/index.ts';
import type { Mark } from '../../scene/index.ts';
import type { Box, LineDrawing } from '../types.ts';
import { arrowBox, arrowsOnPaper, type Arrow } from './arrows.ts';
import type { Cover } from './cover.ts';
import { ringLeader, setRings, type Rings, type Spot } from './details.ts';
import { boundsOf, fitInto, toPaper, type Align, type Bounds, type Fit } from './fit.ts';
import { boxInside } from './flat.ts';
import { onGround, type Ground } from './ground.ts';
import { labelPlaces, orderPlaces } from './labels.ts';
import { lengthPlaces } from './lengths.ts';
import { setMarks, type Place, type Setting } from './placement.ts';
import { project, type Plane } from './plane.ts';
import { arrow, plainPen, rim } from './sizes.ts';

/** What has to find its place on the paper. */
export interface Content {
  readonly plane: Plane;
  readonly bounds: Bounds;
  readonly marks: readonly Mark[];
  readonly spots: readonly Spot[];
  readonly cover: Cover;
}

/** Where everything stands. */
export interface Layout {
  readonly fit: Fit;
  readonly arrows: readonly Arrow[];
  readonly rings: readonly Rings[];
  readonly setting: Setting;
  readonly cost: number;
}

/** Sizes tried, the largest first; a drawing made smaller by all of itself costs as much as this many mm of distance. */
const shrinks = Array.from({ length: 15 }, (_, i) => 1 - 0.04 * i);
const shrinkCost = 110;
const middle: Align = [0.5, 0.5];
const sides: readonly Align[] = [[0, 0.5], [1, 0.5], [0.5, 0], [0.5, 1], [0, 0], [0, 1], [1, 0], [1, 1]];

/** The cheapest layout over size and position of the drawing; null when the marks fit in none. */
export function layOut(content: Content, paper: Box): Layout | null {
  let best: Layout | null = null;
  for (const shrink of shrinks) {
    const price = shrinkCost * (1 - shrink);
    if (best && price >= best.cost) break;
    for (const align of [middle, ...sides]) {
      const limit: number = best?.cost ?? Infinity;
      const layout = tryOut(content, paper, shrink, align, price + (align === middle ? 0 : 1), limit);
      if (layout && layout.cost < limit) best = layout;
    }
  }
  return best;
}

function tryOut(content: Content, paper: Box, shrink: number, align: Align, price: number, limit: number): Layout | null {
  const { plane, marks, spots, cover } = content;
  const fit = fitInto(content.bounds, roomFor(content, paper), shrink, align);
  const arrows = arrowsOnPaper(marks, plane, fit);
  if (!arrows.every((one) => boxInside(arrowBox(one), paper, rim / 2))) return null;
  const placed = setRings(spots, fit, cover, arrows, paper);
  if (!placed || price + placed.cost >= limit) return null;
  const { rings } = placed;
  const discs = rings.flatMap(({ small, big }) => [small, big]);
  const ground: Ground = { paper, fit, cover, arrows, discs, lines: rings.map(ringLeader) };
  const setting = setMarks(marks.flatMap((mark) => choicesFor(mark, plane, ground)));
  return setting && { fit, arrows, rings, setting, cost: price + placed.cost + setting.cost };
}

/** The paper inside a margin for half a line, or for an arrow's head where there are arrows. */
function roomFor({ marks }: Content, paper: Box): Box {
  const margin = rim + (marks.some((mark) => mark.mark === 'arrow') ? arrow.broad.headWidth / 2 : plainPen.outline);
  return { x: margin, y: margin, width: paper.width - 2 * margin, height: paper.height - 2 * margin };
}

function choicesFor(mark: Mark, plane: Plane, ground: Ground): Place[][] {
  const { fit } = ground;
  const onPaper = (place: Vec3): Vec2 => toPaper(fit, project(plane, place));
  switch (mark.mark) {
    case 'label':
      return [onGround(labelPlaces(onPaper(mark.at), mark.text), ground)];
    case 'order':
      return [onGround(orderPlaces(onPaper(mark.at), mark.text), ground)];
    case 'length':
      return [onGround(lengthPlaces(mark, plane, fit), ground)];
    default:
      return [];
  }
}

/** Bounds of the lines and of every place a mark names, on the view plane. */
export function contentBounds(drawing: LineDrawing, marks: readonly Mark[], plane: Plane): Bounds {
  const { least, most } = drawing.bounds;
  const lines = [least, most].filter(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
  return boundsOf([...lines, ...marks.flatMap(placesOf).map((place) => project(plane, place))]);
}

function placesOf(mark: Mark): readonly Vec3[] {
  switch (mark.mark) {
    case 'arrow':
      return mark.path;
    case 'length': {
      const moved = ([x, y, z]: Vec3): Vec3 => [x + mark.away[0], y + mark.away[1], z + mark.away[2]];
      return [mark.from, mark.to, moved(mark.from), moved(mark.to)];
    }
    default:
      return [mark.at];
  }
}
