import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import type { Mark } from './marks.ts';

/** Corners of a convex window, in one turning sense. */
export type Window = readonly Vec2[];

export function boxWindow({ x, y, width, height }: Box): Window {
  return [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];
}

/** A ring as a window of 72 corners on the circle. */
export function ringWindow(centre: Vec2, radius: number): Window {
  return Array.from({ length: 72 }, (_, index) => {
    const turn = (index / 72) * 2 * Math.PI;
    return [centre[0] + radius * Math.cos(turn), centre[1] + radius * Math.sin(turn)] as const;
  });
}

/** The marks as far as they lie inside a convex window. Figures and order numerals are left out: place them afterwards. */
export function clipMarks(marks: readonly Mark[], window: Window): readonly Mark[] {
  return marks.flatMap((mark): readonly Mark[] => {
    switch (mark.mark) {
      case 'line':
        return clipLine(mark.closed ? [...mark.points, ...mark.points.slice(0, 1)] : mark.points, window)
          .map((points) => ({ mark: 'line', pen: mark.pen, points, closed: false }));
      case 'area': {
        const rings = mark.rings.map((ring) => clipRing(ring, window)).filter((ring) => ring.length > 2);
        return rings.length > 0 ? [{ ...mark, rings }] : [];
      }
      case 'circle':
        return inside(mark.centre, window) ? [mark] : [];
      case 'view':
        return [{ ...mark, marks: clipMarks(mark.marks, window) }];
      default:
        return [];
    }
  });
}

/** The pieces of a line inside a convex window (Cyrus and Beck). */
function clipLine(points: readonly Vec2[], window: Window): readonly (readonly Vec2[])[] {
  const pieces: Vec2[][] = [];
  points.slice(1).forEach((to, index) => {
    const from = points[index] ?? to;
    const part = clipSegment(from, to, window);
    if (!part) return;
    const last = pieces.at(-1);
    const end = last?.at(-1);
    if (last && end && same(end, part[0])) last.push(part[1]);
    else pieces.push([part[0], part[1]]);
  });
  return pieces;
}

function clipSegment(from: Vec2, to: Vec2, window: Window): readonly [Vec2, Vec2] | null {
  let enter = 0;
  let leave = 1;
  for (const [a, b] of sides(window)) {
    const start = across(a, b, from);
    const end = across(a, b, to);
    if (start < 0 && end < 0) return null;
    if (start < 0) enter = Math.max(enter, start / (start - end));
    if (end < 0) leave = Math.min(leave, start / (start - end));
  }
  if (enter >= leave) return null;
  return [between(from, to, enter), between(from, to, leave)];
}

/** A ring cut to a convex window (Sutherland and Hodgman). */
function clipRing(ring: readonly Vec2[], window: Window): readonly Vec2[] {
  return sides(window).reduce<readonly Vec2[]>((points, [a, b]) => points.flatMap((to, index) => {
    const from = points.at(index - 1) ?? to;
    const start = across(a, b, from);
    const end = across(a, b, to);
    const crossing = (start < 0) !== (end < 0) ? [between(from, to, start / (start - end))] : [];
    return end < 0 ? crossing : [...crossing, to];
  }), ring);
}

/** Hatching at 45° inside a closed ring (even-odd), as pairs of points; pitch in mm of paper. */
export function hatching(ring: readonly Vec2[], pitch: number): readonly (readonly [Vec2, Vec2])[] {
  const sums = ring.map(([x, y]) => x + y);
  const first = Math.ceil(Math.min(...sums) / pitch);
  const last = Math.floor(Math.max(...sums) / pitch);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * pitch)
    .flatMap((sum) => chords(ring, sum));
}

/** Where the line x + y = sum runs inside the ring. */
function chords(ring: readonly Vec2[], sum: number): readonly (readonly [Vec2, Vec2])[] {
  const crossings = ring.flatMap((to, index): readonly Vec2[] => {
    const from = ring.at(index - 1) ?? to;
    const start = from[0] + from[1] - sum;
    const end = to[0] + to[1] - sum;
    return (start < 0) !== (end < 0) ? [between(from, to, start / (start - end))] : [];
  });
  const sorted = [...crossings].sort((a, b) => a[0] - b[0]);
  return sorted.flatMap((from, index) => {
    const to = sorted[index + 1];
    return index % 2 === 0 && to ? [[from, to] as const] : [];
  });
}

function inside(point: Vec2, window: Window): boolean {
  return sides(window).every(([a, b]) => across(a, b, point) >= 0);
}

function sides(window: Window): readonly (readonly [Vec2, Vec2])[] {
  return window.flatMap((a, index) => {
    const b = window[(index + 1) % window.length];
    return b ? [[a, b] as const] : [];
  });
}

/** Positive on the inner side of a window's edge (clockwise as seen on the paper, y down). */
function across(a: Vec2, b: Vec2, p: Vec2): number {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}

function between(from: Vec2, to: Vec2, share: number): Vec2 {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}

function same(a: Vec2, b: Vec2): boolean {
  return Math.abs(a[0] - b[0]) < 1e-9 && Math.abs(a[1] - b[1]) < 1e-9;
}
