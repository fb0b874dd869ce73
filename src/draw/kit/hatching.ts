import type { Vec2 } from '../../model/index.ts';

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

function between(from: Vec2, to: Vec2, share: number): Vec2 {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
