import type { Vec2 } from '../../model/index.ts';
import type { LineDrawing, Region, Stroke } from '../types.ts';

/** A half plane of the view plane: places p with `normal · p ≤ offset`. */
export interface HalfPlane {
  readonly normal: Vec2;
  readonly offset: number;
}

/** Sides of the many-sided figure that stands for a disc where filled regions are clipped. */
const discSides = 96;

/** What of a drawing lies in a disc of the view plane: lines exactly, regions to a 96-sided figure round it. */
export function clipToDisc(drawing: LineDrawing, centre: Vec2, radius: number): LineDrawing {
  const sides = Array.from({ length: discSides }, (_, i): HalfPlane => {
    const angle = (2 * Math.PI * i) / discSides;
    const normal: Vec2 = [Math.cos(angle), Math.sin(angle)];
    return { normal, offset: radius + normal[0] * centre[0] + normal[1] * centre[1] };
  });
  return {
    ...drawing,
    strokes: drawing.strokes.flatMap((stroke) => clipStroke(stroke, (from, to) => discInterval(from, to, centre, radius))),
    regions: clipRegions(drawing.regions, sides),
  };
}

/** What of a drawing lies in the half plane. */
export function clipToHalfPlane(drawing: LineDrawing, side: HalfPlane): LineDrawing {
  return {
    ...drawing,
    strokes: drawing.strokes.flatMap((stroke) => clipStroke(stroke, (from, to) => halfPlaneInterval(from, to, side))),
    regions: clipRegions(drawing.regions, [side]),
  };
}

type Interval = readonly [number, number] | null;

function clipStroke(stroke: Stroke, inside: (from: Vec2, to: Vec2) => Interval): Stroke[] {
  const first = stroke.points[0];
  const points = stroke.closed && first ? [...stroke.points, first] : stroke.points;
  const kept: Vec2[][] = [];
  let open = false;
  points.slice(1).forEach((to, i) => {
    const from = points[i] ?? to;
    const part = inside(from, to);
    if (!part) {
      open = false;
      return;
    }
    const last = kept[kept.length - 1];
    if (open && last && part[0] === 0) last.push(between(from, to, part[1]));
    else kept.push([between(from, to, part[0]), between(from, to, part[1])]);
    open = part[1] === 1;
  });
  const whole = kept.length === 1 && kept[0]?.length === points.length;
  if (stroke.closed && whole) return [stroke];
  return joined(kept, stroke.closed ? first : undefined).map((run) => ({ ...stroke, points: run, closed: false }));
}

/** Runs of a closed line that meet where the line begins are one. */
function joined(runs: readonly Vec2[][], start: Vec2 | undefined): readonly Vec2[][] {
  const [first, last] = [runs[0], runs[runs.length - 1]];
  if (!start || !first || !last || runs.length < 2 || first[0] !== start || last[last.length - 1] !== start) return runs;
  return [[...last, ...first.slice(1)], ...runs.slice(1, -1)];
}

function between(from: Vec2, to: Vec2, t: number): Vec2 {
  if (t === 0) return from;
  return t === 1 ? to : [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
}

/** Roots of |from + t (to − from) − centre|² = radius². */
function discInterval(from: Vec2, to: Vec2, centre: Vec2, radius: number): Interval {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const [x, y] = [from[0] - centre[0], from[1] - centre[1]];
  const a = dx * dx + dy * dy;
  const half = x * dx + y * dy;
  const root = half * half - a * (x * x + y * y - radius * radius);
  if (a === 0 || root <= 0) return null;
  return cut((-half - Math.sqrt(root)) / a, (-half + Math.sqrt(root)) / a);
}

function halfPlaneInterval(from: Vec2, to: Vec2, { normal, offset }: HalfPlane): Interval {
  const start = normal[0] * from[0] + normal[1] * from[1] - offset;
  const end = normal[0] * to[0] + normal[1] * to[1] - offset;
  if (start <= 0 && end <= 0) return [0, 1];
  if (start > 0 && end > 0) return null;
  const at = start / (start - end);
  return start <= 0 ? cut(0, at) : cut(at, 1);
}

function cut(from: number, to: number): Interval {
  const [start, end] = [Math.max(0, from), Math.min(1, to)];
  return start < end ? [start, end] : null;
}

function clipRegions(regions: readonly Region[], sides: readonly HalfPlane[]): Region[] {
  return regions
    .map((region) => ({ body: region.body, rings: region.rings.map((ring) => clipRing(ring, sides)).filter((ring) => ring.length > 2) }))
    .filter((region) => region.rings.length > 0);
}

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
