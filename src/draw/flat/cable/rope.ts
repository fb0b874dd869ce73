import type { Vec2 } from '../../../model/index.ts';
import { line, type Mark } from '../../kit/marks.ts';
import { pens, type Pen } from '../../kit/pens.ts';

/** Widths on paper of a single cord, and of two that lie side by side, mm. */
const WIDE = { one: 1.7, two: 3 } as const;
const EDGE = 0.35;
/** Points between two given ones of a curve. */
const FINE = 12;

const stroke = (width: number, colour: Pen['colour']): Pen => ({ ...pens.motion, width, colour });

/** A cord along a way: what is drawn later lies over it. */
export const cord = (...way: readonly Vec2[]): readonly Mark[] => [line(stroke(WIDE.one, 'ink'), ...way), line(stroke(WIDE.one - 2 * EDGE, 'white'), ...way)];

/** Two side by side. */
export const doubled = (...way: readonly Vec2[]): readonly Mark[] =>
  [line(stroke(WIDE.two, 'ink'), ...way), line(stroke(WIDE.two - 2 * EDGE, 'white'), ...way), line(stroke(EDGE, 'ink'), ...way)];

/** A smooth way through points (Catmull and Rom). */
export function smooth(...points: readonly Vec2[]): readonly Vec2[] {
  const at = (index: number): Vec2 => points[Math.min(points.length - 1, Math.max(0, index))] ?? [0, 0];
  return points.slice(1).flatMap((_, index) => Array.from({ length: FINE + 1 }, (__, step): Vec2 => {
    const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    return [0, 1].map((axis) => between([a, b, c, d].map((point) => point[axis] ?? 0), step / FINE)) as unknown as Vec2;
  }));
}

function between([a = 0, b = 0, c = 0, d = 0]: readonly number[], t: number): number {
  return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t);
}

/** A ring seen from its axis. */
export const round = ([x, y]: Vec2, radius: number, from: number, to: number): readonly Vec2[] =>
  Array.from({ length: 4 * FINE + 1 }, (_, step): Vec2 => {
    const angle = from + ((to - from) * step) / (4 * FINE);
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** How far round its closed curve the open knot goes on either side of where it is cut open, rad. */
const OPENED = 0.8;

/**
 * A simple knot, loose: a trefoil cut open at its top, the two ends handed on for what follows them. Its ways are cut
 * where it goes over and under, those under drawn first.
 */
export function knot([x, y]: Vec2, size: number, drawn: typeof cord): { readonly marks: readonly Mark[]; readonly ends: readonly [Vec2, Vec2] } {
  const at = (t: number): Vec2 => [x + (size / 3) * (Math.sin(t) + 2 * Math.sin(2 * t)), y + (size / 3) * (Math.cos(t) - 2 * Math.cos(2 * t))];
  const [start, end] = [Math.PI + OPENED, 3 * Math.PI - OPENED];
  const turns = [start, ...[4, 5, 6, 7, 8].map((third) => (third * Math.PI) / 3).filter((t) => t > start && t < end), end];
  const ways = turns.slice(1).map((to, index) => {
    const from = turns[index] ?? start;
    return { over: -Math.sin((3 * (from + to)) / 2) > 0, way: Array.from({ length: 2 * FINE + 1 }, (_, step) => at(from + ((to - from) * step) / (2 * FINE))) };
  });
  return { marks: [...ways.filter(({ over }) => !over), ...ways.filter(({ over }) => over)].flatMap(({ way }) => drawn(...way)), ends: [at(start), at(end)] };
}
