import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';

/** Plane geometry on paper, in mm, y downwards. */
export interface Segment {
  readonly from: Vec2;
  readonly to: Vec2;
}

export const plus = (a: Vec2, b: Vec2, times = 1): Vec2 => [a[0] + b[0] * times, a[1] + b[1] * times];
export const minus = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];
export const apart = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Unit vector along `v`; null where it has no length. */
export function unit(v: Vec2): Vec2 | null {
  const length = Math.hypot(v[0], v[1]);
  return length > 1e-9 ? [v[0] / length, v[1] / length] : null;
}

/** The corners of a box, clockwise from the upper left. */
export const cornersOf = ({ x, y, width, height }: Box): readonly Vec2[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];

export function boxRound(centre: Vec2, width: number, height: number): Box {
  return { x: centre[0] - width / 2, y: centre[1] - height / 2, width, height };
}

export function boxOf(points: readonly Vec2[], rim = 0): Box {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const x = Math.min(...xs) - rim;
  const y = Math.min(...ys) - rim;
  return { x, y, width: Math.max(...xs) + rim - x, height: Math.max(...ys) + rim - y };
}

export function boxesOverlap(a: Box, b: Box, gap = 0): boolean {
  return a.x < b.x + b.width + gap && b.x < a.x + a.width + gap && a.y < b.y + b.height + gap && b.y < a.y + a.height + gap;
}

export function boxInside(inner: Box, outer: Box, rim = 0): boolean {
  return (
    inner.x >= outer.x + rim &&
    inner.y >= outer.y + rim &&
    inner.x + inner.width <= outer.x + outer.width - rim &&
    inner.y + inner.height <= outer.y + outer.height - rim
  );
}

export function pointInBox(p: Vec2, box: Box, rim = 0): boolean {
  return p[0] > box.x - rim && p[0] < box.x + box.width + rim && p[1] > box.y - rim && p[1] < box.y + box.height + rim;
}

/** Twice the signed area between the segment and a place: which side the place lies on. */
function sideOf({ from, to }: Segment, p: Vec2): number {
  return (to[0] - from[0]) * (p[1] - from[1]) - (to[1] - from[1]) * (p[0] - from[0]);
}

export function segmentsCross(a: Segment, b: Segment): boolean {
  return sideOf(a, b.from) * sideOf(a, b.to) < 0 && sideOf(b, a.from) * sideOf(b, a.to) < 0;
}

/** Whether any of the segment lies in the box: the box meets its bounds and has corners on both sides of its line. */
export function segmentInBox(segment: Segment, box: Box): boolean {
  const { from, to } = segment;
  const [right, low] = [box.x + box.width, box.y + box.height];
  if (Math.max(from[0], to[0]) <= box.x || Math.min(from[0], to[0]) >= right) return false;
  if (Math.max(from[1], to[1]) <= box.y || Math.min(from[1], to[1]) >= low) return false;
  const first = sideOf(segment, [box.x, box.y]);
  return (
    first * sideOf(segment, [right, box.y]) <= 0 ||
    first * sideOf(segment, [right, low]) <= 0 ||
    first * sideOf(segment, [box.x, low]) <= 0
  );
}

export function distanceToSegment(p: Vec2, { from, to }: Segment): number {
  const along = minus(to, from);
  const square = along[0] ** 2 + along[1] ** 2;
  const t = square > 0 ? Math.min(1, Math.max(0, ((p[0] - from[0]) * along[0] + (p[1] - from[1]) * along[1]) / square)) : 0;
  return apart(p, plus(from, along, t));
}

export function segmentsOf(points: readonly Vec2[]): Segment[] {
  return points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
}

export function distanceToPath(p: Vec2, points: readonly Vec2[]): number {
  return Math.min(...segmentsOf(points).map((s) => distanceToSegment(p, s)));
}

export function pathLength(points: readonly Vec2[]): number {
  return segmentsOf(points).reduce((sum, s) => sum + apart(s.from, s.to), 0);
}

/** The first `length` mm of a path. */
export function pathStart(points: readonly Vec2[], length: number): Vec2[] {
  const kept = points.slice(0, 1);
  let left = length;
  for (const { from, to } of segmentsOf(points)) {
    const step = apart(from, to);
    if (step >= left) return [...kept, plus(from, minus(to, from), step > 0 ? left / step : 0)];
    kept.push(to);
    left -= step;
  }
  return kept;
}

/** The path without its first `length` mm. */
export function pathRest(points: readonly Vec2[], length: number): Vec2[] {
  return pathStart([...points].reverse(), Math.max(0, pathLength(points) - length)).reverse();
}
