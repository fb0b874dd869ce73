import type { Vec2, Vec3 } from '../../model/index.ts';
import type { Mark, Told } from '../../scene/index.ts';
import type { Box, LineDrawing } from '../types.ts';
import { arrowBox, arrowsOnPaper, type Arrow } from './arrows.ts';
import type { Cover } from './cover.ts';
import { boundsOf, fitInto, onPaper, type Align, type Bounds, type Fit } from '../kit/fit.ts';
import { boxInside } from '../kit/geometry.ts';
import { onGround, type Ground, type Priced } from './ground.ts';
import { handBox, handDisc, handsOnPaper, type HandOnPaper } from './held.ts';
import { labelPlaces, orderPlaces } from './labels.ts';
import { lengthPlaces } from './lengths.ts';
import { setMarks, type Place, type Setting } from './placement.ts';
import { turnDisc, turnsOnPaper } from './turned-on.ts';
import { project, type Plane } from './plane.ts';
import { ringLeader, setRings, type Rings, type Spot } from './rings.ts';
import { plainPens } from '../kit/pens.ts';
import { arrow, rim } from './sizes.ts';

type TextMark = Extract<Mark, { readonly told: Told }>;

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
  /** Where hands hold the work. */
  readonly hands: readonly HandOnPaper[];
  readonly rings: readonly Rings[];
  readonly setting: Setting;
  readonly cost: number;
}

/** Sizes tried, the largest first; a drawing made smaller by all of itself costs as much as this many mm of distance. */
const shrinks = [1, 0.95, 0.9, 0.84, 0.77, 0.7, 0.62, 0.54, 0.45];
const shrinkCost = 200;
const middle: Align = [0.5, 0.5];
const sides: readonly Align[] = [[0, 0.5], [1, 0.5], [0.5, 0], [0.5, 1]];
/** Into a corner, to leave the opposite one to a big ring. */
const corners: readonly Align[] = [[0, 0], [0, 1], [1, 0], [1, 1]];

/** The cheapest layout over size and position of the drawing; null when the marks fit in none. */
export function layOut(content: Content, paper: Box): Layout | null {
  let best: Layout | null = null;
  for (const shrink of shrinks) {
    const price = shrinkCost * (1 - shrink);
    if (best && price >= best.cost) break;
    for (const align of content.spots.length > 0 ? [middle, ...sides, ...corners] : [middle, ...sides]) {
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
  const hands = handsOnPaper(marks, plane, fit);
  if (!hands.every((at) => boxInside(handBox(at), paper, rim / 2))) return null;
  const places = marks.filter(isText).flatMap(placesOf).map((place) => onPaper(fit, project(plane, place)));
  const placed = setRings(spots, { paper, fit, cover, arrows, places });
  if (!placed || price + placed.cost >= limit) return null;
  const { rings } = placed;
  const discs = [...rings.flatMap(({ small, big }) => [small, big]), ...hands.map(handDisc), ...turnsOnPaper(marks, plane, fit).map(turnDisc)];
  const ground: Ground = { paper, fit, cover, arrows, discs, lines: rings.map(ringLeader) };
  const choices = choicesBelow(limit - price - placed.cost, marks.filter(isText), plane, ground);
  const setting = choices && setMarks(choices);
  return setting && { fit, arrows, hands, rings, setting, cost: price + placed.cost + setting.cost };
}

/** The ways to set each mark; null as soon as the cheapest ways together cost the limit. */
function choicesBelow(limit: number, marks: readonly TextMark[], plane: Plane, ground: Ground): Place[][] | null {
  const all: Priced[] = [];
  let least = 0;
  for (const mark of marks) {
    const choices = choicesFor(mark, plane, ground);
    least += choices.least();
    if (least >= limit) return null;
    all.push(choices);
  }
  return all.map((choices) => choices.cheapest());
}

/** The paper inside a margin for half a line, or for an arrow's head where there are arrows. */
function roomFor({ marks }: Content, paper: Box): Box {
  const margin = rim + (marks.some((mark) => mark.mark === 'arrow') ? arrow.broad.headWidth / 2 : plainPens.outline.width);
  return { x: margin, y: margin, width: paper.width - 2 * margin, height: paper.height - 2 * margin };
}

function isText(mark: Mark): mark is TextMark {
  return mark.mark === 'label' || mark.mark === 'order' || mark.mark === 'length';
}

function choicesFor(mark: TextMark, plane: Plane, ground: Ground): Priced {
  const { fit } = ground;
  if (mark.mark === 'length') return onGround(lengthPlaces(mark, plane, fit), ground);
  const at = onPaper(fit, project(plane, mark.at));
  return onGround(mark.mark === 'label' ? labelPlaces(at, mark.told) : orderPlaces(at, mark.told), ground);
}

/** Bounds of the lines and of every place a mark names, on the view plane. */
export function contentBounds(drawings: readonly LineDrawing[], marks: readonly Mark[], plane: Plane): Bounds {
  const lines = drawings.flatMap(({ bounds: { min, max } }) => [min, max]).filter(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
  return boundsOf([...lines, ...marks.flatMap(placesOf).map((place) => project(plane, place)), ...marks.flatMap((mark) => ringEnds(mark, plane))]);
}

/** How far the ring round a detail reaches on the view plane. */
function ringEnds(mark: Mark, plane: Plane): readonly Vec2[] {
  if (mark.mark !== 'detail') return [];
  const [x, y] = project(plane, mark.at);
  return [[x - mark.radius, y - mark.radius], [x + mark.radius, y + mark.radius]];
}

function placesOf(mark: Mark): readonly Vec3[] {
  switch (mark.mark) {
    case 'arrow':
    case 'turned-on':
      return mark.path;
    case 'length': {
      const moved = ([x, y, z]: Vec3): Vec3 => [x + mark.away[0], y + mark.away[1], z + mark.away[2]];
      return [mark.from, mark.to, moved(mark.from), moved(mark.to)];
    }
    case 'axis':
    case 'thread':
      return [mark.from, mark.to];
    default:
      return [mark.at];
  }
}
