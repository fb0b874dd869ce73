import type { Vec2 } from '../../model/index.ts';
import { item } from './arrays.ts';

/**
 * Drops the points that lie within `tolerance` mm of the straight line between the points kept
 * (D. Douglas and T. Peucker, 1973). Of a closed line at least a triangle stays.
 */
export function dropStraight(points: readonly Vec2[], closed: boolean, tolerance: number): readonly Vec2[] {
  if (points.length < 3) return points;
  if (!closed) return keepCorners(points, tolerance);
  const start = sharpest(points);
  const turned = [...points.slice(start), ...points.slice(0, start), item(points, start)];
  const far = farthest(turned);
  const kept = [...keepCorners(turned.slice(0, far + 1), tolerance), ...keepCorners(turned.slice(far), tolerance).slice(1, -1)];
  return kept.length > 2 ? kept : points;
}

function keepCorners(points: readonly Vec2[], tolerance: number): readonly Vec2[] {
  const keep = new Uint8Array(points.length);
  keep[0] = keep[points.length - 1] = 1;
  const open: [number, number][] = [[0, points.length - 1]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    let [worst, most] = [-1, tolerance];
    for (let p = from + 1; p < to; p++) {
      const off = offLine(item(points, p), item(points, from), item(points, to));
      if (off > most) [worst, most] = [p, off];
    }
    if (worst < 0) continue;
    keep[worst] = 1;
    open.push([from, worst], [worst, to]);
  }
  return points.filter((_, p) => keep[p] === 1);
}

/** Distance of a point from the straight piece between two others. */
function offLine(point: Vec2, from: Vec2, to: Vec2): number {
  const px = point[0];
  const py = point[1];
  const ax = from[0];
  const ay = from[1];
  const dx = to[0] - ax;
  const dy = to[1] - ay;
  const square = dx * dx + dy * dy;
  const share = square > 0 ? Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square)) : 0;
  const offX = px - ax - share * dx;
  const offY = py - ay - share * dy;
  return Math.sqrt(offX * offX + offY * offY);
}

/** The point of a closed line at which it turns most: a good place to begin. */
function sharpest(points: readonly Vec2[]): number {
  let best = 0;
  let most = foldAt(points, 0);
  for (let p = 1; p < points.length; p++) {
    const fold = foldAt(points, p);
    if (fold <= most + 1e-9) continue;
    best = p;
    most = fold;
  }
  return best;
}

/** Cosine of the angle between the two ways from a point of a closed line: 1 where it turns back, −1 where it goes on. */
function foldAt(points: readonly Vec2[], p: number): number {
  const [x, y] = item(points, p);
  const before = item(points, p === 0 ? points.length - 1 : p - 1);
  const after = item(points, p === points.length - 1 ? 0 : p + 1);
  const [ax, ay, bx, by] = [before[0] - x, before[1] - y, after[0] - x, after[1] - y];
  return (ax * bx + ay * by) / (Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by)) || 1);
}

function farthest(points: readonly Vec2[]): number {
  const [x, y] = item(points, 0);
  const away = (p: number): number => Math.hypot(item(points, p)[0] - x, item(points, p)[1] - y);
  return points.reduce((best, _, p) => (away(p) > away(best) ? p : best), 0);
}

/** Area of a ring, positive where its inside lies on the left (mm²). */
export function ringArea(ring: readonly Vec2[]): number {
  return ring.reduce((sum, [x, y], p) => {
    const [nextX, nextY] = item(ring, (p + 1) % ring.length);
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Points as multiples of `rounding` mm, each different from the one before. */
export function roundPoints(points: readonly Vec2[], closed: boolean, rounding: number): readonly Vec2[] {
  const rounded = points.map(([x, y]): Vec2 => [roundTo(x, rounding), roundTo(y, rounding)]);
  return rounded.filter(([x, y], p) => {
    if (p === 0 && !closed) return true;
    const [lastX, lastY] = item(rounded, (p + rounded.length - 1) % rounded.length);
    return x !== lastX || y !== lastY;
  });
}

/** A number as a multiple of a power of ten, written with no more digits than that needs. */
export function roundTo(value: number, rounding: number): number {
  const steps = Math.round(value / rounding);
  const rounded = rounding < 1 ? steps / Math.round(1 / rounding) : steps * rounding;
  return rounded === 0 ? 0 : rounded;
}
