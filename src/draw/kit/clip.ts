import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';

/** A half plane: places p with `normal · p ≤ offset`. */
export interface HalfPlane {
  readonly normal: Vec2;
  readonly offset: number;
}

/** From which to which share of a straight from one place to another it lies inside; null where nowhere. */
type Interval = readonly [number, number] | null;

/** A convex window: lines are cut exactly, areas along straight sides. */
export interface Window {
  readonly within: (from: Vec2, to: Vec2) => Interval;
  readonly sides: readonly HalfPlane[];
}

/** Sides of the many-sided figure that stands for a disc where areas are clipped. */
const discSides = 96;

export const halfPlaneWindow = (side: HalfPlane): Window => windowOf([side]);

export function boxWindow({ x, y, width, height }: Box): Window {
  return windowOf([
    { normal: [-1, 0], offset: -x }, { normal: [1, 0], offset: x + width }, { normal: [0, -1], offset: -y }, { normal: [0, 1], offset: y + height },
  ]);
}

/** A disc; areas are cut to a 96-sided figure round it. */
export function discWindow(centre: Vec2, radius: number): Window {
  const sides = Array.from({ length: discSides }, (_, i): HalfPlane => {
    const angle = (2 * Math.PI * i) / discSides;
    const normal: Vec2 = [Math.cos(angle), Math.sin(angle)];
    return { normal, offset: radius + normal[0] * centre[0] + normal[1] * centre[1] };
  });
  return { sides, within: (from, to) => inDisc(from, to, centre, radius) };
}

const windowOf = (sides: readonly HalfPlane[]): Window => ({
  sides,
  within: (from, to) => sides.reduce<Interval>((left, side) => left && both(left, inHalfPlane(from, to, side)), [0, 1]),
});

export const isInside = (place: Vec2, { sides }: Window): boolean =>
  sides.every(({ normal, offset }) => normal[0] * place[0] + normal[1] * place[1] <= offset);

/** A line from corner to corner, or round and closed. */
export interface Run {
  readonly points: readonly Vec2[];
  readonly closed: boolean;
}

/** The pieces of a line inside a window. A closed line that lies wholly inside stays closed; where it begins inside, it is not cut there. */
export function clipRun(run: Run, { within }: Window): readonly Run[] {
  const first = run.points[0];
  const points = run.closed && first ? [...run.points, first] : run.points;
  const kept = piecesInside(points, within);
  if (run.closed && kept.length === 1 && kept[0]?.length === points.length) return [run];
  return joined(kept, run.closed ? first : undefined).map((piece) => ({ points: piece, closed: false }));
}

function piecesInside(points: readonly Vec2[], within: Window['within']): readonly Vec2[][] {
  const kept: Vec2[][] = [];
  let open = false;
  points.slice(1).forEach((to, i) => {
    const from = points[i] ?? to;
    const part = within(from, to);
    const last = kept[kept.length - 1];
    if (part && open && last && part[0] === 0) last.push(between(from, to, part[1]));
    else if (part) kept.push([between(from, to, part[0]), between(from, to, part[1])]);
    open = part?.[1] === 1;
  });
  return kept;
}

/** Pieces of a closed line that meet where the line begins are one. */
function joined(pieces: readonly Vec2[][], start: Vec2 | undefined): readonly Vec2[][] {
  const [first, last] = [pieces[0], pieces[pieces.length - 1]];
  if (!start || !first || !last || pieces.length < 2 || first[0] !== start || last[last.length - 1] !== start) return pieces;
  return [[...last, ...first.slice(1)], ...pieces.slice(1, -1)];
}

function between(from: Vec2, to: Vec2, t: number): Vec2 {
  if (t === 0) return from;
  return t === 1 ? to : [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
}

/** Roots of |from + t (to − from) − centre|² = radius². */
function inDisc(from: Vec2, to: Vec2, centre: Vec2, radius: number): Interval {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const [x, y] = [from[0] - centre[0], from[1] - centre[1]];
  const a = dx * dx + dy * dy;
  const half = x * dx + y * dy;
  const root = half * half - a * (x * x + y * y - radius * radius);
  if (a === 0 || root <= 0) return null;
  return both([0, 1], [(-half - Math.sqrt(root)) / a, (-half + Math.sqrt(root)) / a]);
}

function inHalfPlane(from: Vec2, to: Vec2, { normal, offset }: HalfPlane): Interval {
  const start = normal[0] * from[0] + normal[1] * from[1] - offset;
  const end = normal[0] * to[0] + normal[1] * to[1] - offset;
  if (start <= 0 && end <= 0) return [0, 1];
  if (start > 0 && end > 0) return null;
  const at = start / (start - end);
  return start <= 0 ? [0, at] : [at, 1];
}

function both(one: Interval, other: Interval): Interval {
  if (!one || !other) return null;
  const [start, end] = [Math.max(one[0], other[0]), Math.min(one[1], other[1])];
  return start < end ? [start, end] : null;
}

/** The rings of an area inside a window; those that lose all are left out. */
export const clipRings = (rings: readonly (readonly Vec2[])[], { sides }: Window): readonly (readonly Vec2[])[] =>
  rings.map((ring) => clipRing(ring, sides)).filter((ring) => ring.length > 2);

/** Sutherland and Hodgman's clip; bridges along the border enclose nothing, so even-odd filling stays right. */
function clipRing(ring: readonly Vec2[], sides: readonly HalfPlane[]): readonly Vec2[] {
  return sides.reduce<readonly Vec2[]>((corners, { normal, offset }) => {
    const out = (p: Vec2): number => normal[0] * p[0] + normal[1] * p[1] - offset;
    if (corners.every((p) => out(p) <= 0)) return corners;
    return corners.flatMap((p, i) => {
      const next = corners[(i + 1) % corners.length] ?? p;
      const [here, there] = [out(p), out(next)];
      const crossing = here > 0 !== there > 0 ? [between(p, next, here / (here - there))] : [];
      return here <= 0 ? [p, ...crossing] : crossing;
    });
  }, ring);
}
