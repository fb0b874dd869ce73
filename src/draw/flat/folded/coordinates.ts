import { flatHoles, notchHoles, type PanelHole, type Pattern, type Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { runningDimension } from '../../kit/dimension.ts';
import type { Mark } from '../../kit/marks.ts';
import { onPaper, type Fit } from '../../kit/fit.ts';
import { tell } from '../../../scene/index.ts';
import type { PanelFace } from './faces.ts';

/** Straight edges shorter than this belong to round corners, mm. */
const ROUND = 3;
const SQUARE = 1e-6;
/** Nearer to the corner than this is the edge itself, mm. */
const NEAR = 0.05;
/** Figures are printed to half a millimetre: what reads alike is one place. */
const told = (value: number): number => Math.round(2 * value) / 2;

/** Places along x (0) and along y (1), mm from the blank's left and lower edge. */
export type Coordinates = readonly [readonly number[], readonly number[]];

const placesFrom = (values: readonly number[]): readonly number[] =>
  [...values].sort((a, b) => a - b).reduce<readonly number[]>((kept, value) => (told(value) === told(kept.at(-1) ?? -Infinity) ? kept : [...kept, value]), []);

/** A place as its figure tells it: beyond the middle what is left to the far edge is rounded, so that figures of alike sides are alike. */
const mirroring = (at: number, whole: number): number => (2 * at > whole ? told(whole) - told(whole - at) : told(at));

/** The corner of the blank that all is measured from: the lower left one of the marked face, which is the lower right one when the panel is turned over. */
const measuredFrom = ({ min, max }: Pattern, face: PanelFace): Vec2 => (face === 'marked' ? min : [max[0], min[1]]);

/** From that corner, without nought. */
function fromCorner(pattern: Pattern, points: Coordinates, face: PanelFace = 'marked'): Coordinates {
  const corner = measuredFrom(pattern, face);
  const own = (axis: 0 | 1): readonly number[] => placesFrom(points[axis].map((at) => mirroring(Math.abs(at - corner[axis]), pattern.max[axis] - pattern.min[axis]))).filter((at) => at > NEAR);
  return [own(0), own(1)];
}

/** Where the straight edges of the outline lie. */
export function outlinePlaces(pattern: Pattern): Coordinates {
  const { outline } = pattern;
  const edges = outline.map((from, place): readonly [Vec2, Vec2] => [from, outline[(place + 1) % outline.length] ?? from])
    .filter(([from, to]) => Math.hypot(to[0] - from[0], to[1] - from[1]) > ROUND);
  const lying = (axis: 0 | 1): readonly number[] => edges.filter(([from, to]) => Math.abs(from[axis] - to[axis]) < SQUARE).map(([from]) => from[axis]);
  return fromCorner(pattern, [lying(0), lying(1)]);
}

/** All that is punched in the flat panel from a face: holes for pins, and from the marked one the round corners of the notches. */
export const punchedFlat = (pattern: Pattern, face: PanelFace = 'marked'): readonly PanelHole[] => [...flatHoles(pattern), ...(face === 'marked' ? notchHoles(pattern) : [])];

export function holePlaces(pattern: Pattern, face: PanelFace = 'marked'): Coordinates {
  const holes = punchedFlat(pattern, face);
  return fromCorner(pattern, [holes.map(({ at }) => at[0]), holes.map(({ at }) => at[1])], face);
}

/** Where the lines run that flaps are measured from. */
export function firstPlaces(pattern: Pattern): Coordinates {
  const of = (one: string, other: string): readonly number[] =>
    pattern.flaps.flatMap(({ side, root, line }) => (side === one ? [-root - line] : side === other ? [root + line] : []));
  return fromCorner(pattern, [of('left', 'right'), of('front', 'back')]);
}

/** Places and, last on each side, the panel's own size, so that it is seen which way it lies. */
export const withSizes = ({ min, max }: Pattern, [xs, ys]: Coordinates): Coordinates => [[...xs, max[0] - min[0]], [...ys, max[1] - min[1]]];

/** From the panel to its dimension lines, mm of paper. */
export const coordinateGap = 5;

/** Running dimensions below and left of the blank, from the corner that is measured from. */
export function coordinateMarks(pattern: Pattern, [xs, ys]: Coordinates, view: Fit, blank: Box, cap: number, bounds: { readonly x: Vec2; readonly y: Vec2 }, face: PanelFace = 'marked'): readonly Mark[] {
  const corner = measuredFrom(pattern, face);
  const way = face === 'marked' ? 1 : -1;
  const x = (at: number): number => onPaper(view, [corner[0] + way * at, 0])[0];
  const y = (at: number): number => onPaper(view, [0, at + corner[1]])[1];
  const below = blank.y + blank.height;
  return [
    ...(xs.length === 0 ? [] : runningDimension({
      axis: 'x', datum: x(0), line: below + coordinateGap, feature: below, cap, bounds: bounds.x,
      stations: xs.map((at) => ({ at: x(at), told: tell.mm(at) })),
    })),
    ...(ys.length === 0 ? [] : runningDimension({
      axis: 'y', datum: y(0), line: blank.x - coordinateGap, feature: blank.x, cap, bounds: bounds.y,
      stations: ys.map((at) => ({ at: y(at), told: tell.mm(at) })),
    })),
  ];
}
