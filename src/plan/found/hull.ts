import type { Vec2 } from '../../model/index.ts';

/** The hull of some places, anticlockwise (Andrew 1979). */
export function hullOf(places: readonly Vec2[]): readonly Vec2[] {
  const sorted = [...places].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...halfOf(sorted), ...halfOf(sorted.reverse())];
}

function halfOf(places: readonly Vec2[]): readonly Vec2[] {
  const chain: Vec2[] = [];
  for (const place of places) {
    while (chain.length > 1 && !turnsLeft(chain[chain.length - 2], chain[chain.length - 1], place)) chain.pop();
    chain.push(place);
  }
  return chain.slice(0, -1);
}

const turnsLeft = (a: Vec2 = [0, 0], b: Vec2 = [0, 0], c: Vec2 = [0, 0]): boolean =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 1e-6;

/** How far a place lies inside a ring, anticlockwise and convex, mm; negative where it lies outside or the ring is none. */
export const insideBy = (ring: readonly Vec2[], [x, y]: Vec2): number => (ring.length < 3 ? -1 : Math.min(...ring.map(([ax, ay], index) => {
  const [bx, by] = ring[(index + 1) % ring.length] ?? [ax, ay];
  return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);
})));

/** Splits a simple outline, anticlockwise, into convex ones: ears are cut off, then put together again as far as they stay convex. */
export function convexParts(outline: readonly Vec2[]): readonly (readonly Vec2[])[] {
  let parts = trianglesOf(outline);
  for (let joined = joinOnce(parts); joined !== null; joined = joinOnce(parts)) parts = joined;
  return parts;
}

function trianglesOf(outline: readonly Vec2[]): readonly (readonly Vec2[])[] {
  const left = [...outline];
  const triangles: (readonly Vec2[])[] = [];
  while (left.length > 3) {
    const ear = left.findIndex((_, index) => isEar(left, index));
    const at = Math.max(0, ear);
    triangles.push(threeAt(left, at));
    left.splice(at, 1);
  }
  return [...triangles, left];
}

const threeAt = (ring: readonly Vec2[], at: number): readonly Vec2[] =>
  [ring[(at + ring.length - 1) % ring.length] ?? [0, 0], ring[at] ?? [0, 0], ring[(at + 1) % ring.length] ?? [0, 0]];

function isEar(ring: readonly Vec2[], at: number): boolean {
  const [a, b, c] = threeAt(ring, at);
  return turnsLeft(a, b, c) && ring.every((place) => place === a || place === b || place === c || !isInside(place, a, b, c));
}

const isInside = (place: Vec2, a?: Vec2, b?: Vec2, c?: Vec2): boolean => turnsLeft(a, b, place) && turnsLeft(b, c, place) && turnsLeft(c, a, place);

/** Joins the first two parts that share an edge and stay convex together; null when there are none. */
function joinOnce(parts: readonly (readonly Vec2[])[]): readonly (readonly Vec2[])[] | null {
  for (const [index, one] of parts.entries()) {
    for (const other of parts.slice(index + 1)) {
      const ring = joined(one, other);
      if (ring !== null) return [...parts.filter((part) => part !== one && part !== other), ring];
    }
  }
  return null;
}

function joined(one: readonly Vec2[], other: readonly Vec2[]): readonly Vec2[] | null {
  for (const [at, a] of one.entries()) {
    const b = one[(at + 1) % one.length];
    const there = other.findIndex((place, index) => place === b && other[(index + 1) % other.length] === a);
    if (there < 0) continue;
    const ring = [...turnedTo(one, (at + 1) % one.length), ...turnedTo(other, (there + 1) % other.length).slice(1, -1)];
    return ring.every((_, index) => isConvexAt(ring, index)) ? ring : null;
  }
  return null;
}

const turnedTo = (ring: readonly Vec2[], at: number): readonly Vec2[] => [...ring.slice(at), ...ring.slice(0, at)];

function isConvexAt(ring: readonly Vec2[], at: number): boolean {
  const [a = [0, 0], b = [0, 0], c = [0, 0]] = threeAt(ring, at);
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > -1e-6;
}
