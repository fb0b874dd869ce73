import type { Vec2 } from '../../model/index.ts';
import { tell } from '../../scene/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { cornersOf } from '../kit/geometry.ts';
import { capHeights } from '../kit/lettering.ts';
import { area, line, outline, type Mark } from '../kit/marks.ts';
import { pens } from '../kit/pens.ts';
import { toPicture } from '../kit/svg.ts';
import type { DrawnPicture } from '../types.ts';

/** What comes on a bar between the mouths of the joints at its ends, mm from the left one. */
export interface OnBar {
  readonly between: number;
  readonly things: readonly { readonly from: number; readonly to: number }[];
  readonly tube: number;
  readonly socket: number;
}

const cap = capHeights.step;
const HEIGHT = 34;
/** From the paper's edges to the mouths, and how much of a joint is seen, mm of paper. */
const SIDE = 34;
const JOINT = 16;
/** A distance is drawn at least so long, and so much of what it ends at, mm of paper. */
const LEAST = 5;
/** mm of paper to 1 mm, of what is across the bar. */
const ACROSS = 0.36;

/** How far what comes on a bar is from the joint that it is nearer to, from both where it comes in the middle. Distances that would be too short to see are drawn longer. */
export const onBarPicture = (onBar: OnBar, width: number): DrawnPicture => toPicture({ width, height: HEIGHT }, onBarMarks(onBar, width));

/** The marks of the picture, for the tests. */
export function onBarMarks({ between, things, tube, socket }: OnBar, width: number): readonly Mark[] {
  const [left, right] = [SIDE, width - SIDE];
  const y = 22;
  const at = placesOnPaper(between, [left, right]);
  const bar = (tube * ACROSS) / 2;
  const joint = (socket * ACROSS) / 2;
  const top = y - joint - 4;
  return [
    ...solid('white', [left - 4, y - bar], [right + 4, y + bar]),
    ...[[left - JOINT, left], [right, right + JOINT]].flatMap(([from = 0, to = 0]) => solid('white', [from, y - joint], [to, y + joint])),
    ...things.flatMap(({ from, to }) => solid('fresh', [at(from), y - bar - 2], [at(to), y + bar + 3])),
    ...things.flatMap(({ from, to }) => distances(between, from, to).flatMap(([start, end]) =>
      linearDimension({ axis: 'x', told: tell.mm(Math.round(Math.abs(end - start) * 10) / 10), ends: [at(start), at(end)], line: top - 3, feature: top + 2, cap }))),
  ];
}

const solid = (fill: 'white' | 'fresh', [left, top]: Vec2, [right, bottom]: Vec2): readonly Mark[] => {
  const ring = cornersOf({ x: left, y: top, width: right - left, height: bottom - top });
  return [area(fill, ring), outline(pens.cut, ring), ...(fill === 'fresh' && right - left > 30 ? broken((left + right) / 2, top, bottom) : [])];
};

/** What is long is broken in its middle. */
const broken = (x: number, top: number, bottom: number): readonly Mark[] => {
  const zig = (by: number): readonly Vec2[] => [[x + by, top - 1], [x + by, (top + bottom) / 2 - 1.5], [x + by + 1.2, (top + bottom) / 2 - 0.5], [x + by - 1.2, (top + bottom) / 2 + 0.5], [x + by, (top + bottom) / 2 + 1.5], [x + by, bottom + 1]];
  return [area('white', [...zig(-1), ...[...zig(1)].reverse()]), line(pens.edge, ...zig(-1)), line(pens.edge, ...zig(1))];
};

/** From the nearer mouth to the nearer edge; from both where they are alike to a millimetre. */
export function distances(between: number, from: number, to: number): readonly Vec2[] {
  const [before, after] = [from, between - to];
  if (Math.abs(before - after) < 1) return [[from, 0], [to, between]];
  return before < after ? [[from, 0]] : [[to, between]];
}

/** Places along the bar on paper: to scale but near the mouths, where the first millimetres are stretched. */
function placesOnPaper(between: number, [left, right]: Vec2): (place: number) => number {
  const scale = (right - left) / between;
  const near = (far: number): number => Math.max(far * scale, far < 0.5 ? 0 : LEAST);
  return (place) => (place < between / 2 ? left + near(place) : right - near(between - place));
}
