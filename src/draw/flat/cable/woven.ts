import type { Vec2 } from '../../../model/index.ts';
import type { Mark } from '../../kit/marks.ts';
import { drawnStrand, gapOf, gapUnder, wideOf, type Strand } from './rope.ts';

/** Whether the stretch that comes first along the strands goes over (`o`) or under (`u`) at a crossing. */
export type Passes = readonly ('o' | 'u')[];

/** A place on a strand: how many points on, and how far from there to the next. */
interface Place {
  readonly strand: number;
  readonly along: number;
}

/** Where two stretches cross, the one that comes first along the strands named first. */
export interface Crossing {
  readonly first: Place;
  readonly second: Place;
}

/** How much longer the inside of a stretch is drawn than its black edges, so that no seam is seen at its ends, mm. */
const SEAM = 0.3;

/** The crossings of strands with themselves and with each other, in the order in which they are first met. */
export function crossingsOf(strands: readonly Strand[]): readonly Crossing[] {
  const pieces = strands.flatMap(({ way }, strand) => way.slice(1).map((to, index): Piece => pieceOf(strand, index, way[index] ?? to, to)));
  const found: Crossing[] = [];
  pieces.forEach((one, place) => {
    for (let next = place + 1; next < pieces.length; next++) {
      const other = pieces[next] ?? one;
      if ((other.strand === one.strand && other.index <= one.index + 1) || !areNear(one, other)) continue;
      const shares = meeting([one.from, one.to], [other.from, other.to]);
      if (shares !== null) found.push({ first: { strand: one.strand, along: one.index + shares[0] }, second: { strand: other.strand, along: other.index + shares[1] } });
    }
  });
  return found.toSorted((a, b) => a.first.strand - b.first.strand || a.first.along - b.first.along);
}

/** A straight piece of a strand, with the box round it. */
interface Piece {
  readonly strand: number;
  readonly index: number;
  readonly from: Vec2;
  readonly to: Vec2;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

const pieceOf = (strand: number, index: number, from: Vec2, to: Vec2): Piece => ({
  strand, index, from, to,
  left: Math.min(from[0], to[0]) - SEAM, right: Math.max(from[0], to[0]) + SEAM,
  low: Math.min(from[1], to[1]) - SEAM, high: Math.max(from[1], to[1]) + SEAM,
});

/** Of the many pairs of pieces few have boxes that meet, which is found out sooner than where they cross. */
const areNear = (one: Piece, other: Piece): boolean =>
  one.left <= other.right && other.left <= one.right && one.low <= other.high && other.low <= one.high;

/** The shares of two lines at which they cross; null where they do not, or only touch with an end. */
function meeting([a, b]: readonly [Vec2, Vec2], [c, d]: readonly [Vec2, Vec2]): Vec2 | null {
  const [r, s]: readonly [Vec2, Vec2] = [[b[0] - a[0], b[1] - a[1]], [d[0] - c[0], d[1] - c[1]]];
  const turn = r[0] * s[1] - r[1] * s[0];
  if (Math.abs(turn) < 1e-12) return null;
  const [dx, dy] = [c[0] - a[0], c[1] - a[1]];
  const [t, u] = [(dx * s[1] - dy * s[0]) / turn, (dx * r[1] - dy * r[0]) / turn];
  return t > 0 && t <= 1 && u > 0 && u <= 1 ? [t, u] : null;
}

/**
 * Strands laid over and under each other: at each crossing the lower one is broken by a gap on either side of the upper one.
 * Throws where it is not told of every crossing which goes over.
 */
export function woven(strands: readonly Strand[], passes: Passes): readonly Mark[] {
  const crossings = crossingsOf(strands);
  if (crossings.length !== passes.length) throw new RangeError(`${crossings.length} crossings, but ${passes.length} are told of`);
  const over = crossings.map(({ first, second }, index) => (passes[index] === 'o' ? [first, second] : [second, first]) as readonly [Place, Place]);
  return [
    ...strands.flatMap((strand) => drawnStrand(strand)),
    ...over.flatMap(([upper, lower]) => {
      const [strand, under] = [strands[upper.strand], strands[lower.strand]];
      if (strand === undefined || under === undefined) return [];
      const far = 0.75 * wideOf(under) + gapOf(strand);
      const stretch = (reach: number): Strand => ({ ...strand, way: stretchRound(strand.way, upper.along, reach) });
      return [gapUnder(stretch(far)), ...drawnStrand(stretch(far), stretch(far + SEAM))];
    }),
  ];
}

/** The stretch of a way that reaches so far to either side of a place on it, mm. */
function stretchRound(way: readonly Vec2[], along: number, reach: number): readonly Vec2[] {
  const middle = pointAt(way, along);
  const forwards = walked([middle, ...way.slice(Math.floor(along) + 1)], reach);
  const backwards = walked([middle, ...way.slice(0, Math.ceil(along)).reverse()], reach);
  return [...backwards.slice(1).reverse(), ...forwards];
}

function pointAt(way: readonly Vec2[], along: number): Vec2 {
  const [from, to] = [way[Math.floor(along)] ?? [0, 0], way[Math.ceil(along)] ?? [0, 0]];
  const share = along - Math.floor(along);
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}

/** The beginning of a way, as long as told, mm. */
function walked(way: readonly Vec2[], far: number): readonly Vec2[] {
  const kept: Vec2[] = way.slice(0, 1) as Vec2[];
  let left = far;
  for (const to of way.slice(1)) {
    const from = kept[kept.length - 1] ?? to;
    const piece = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (piece >= left) return [...kept, [from[0] + ((to[0] - from[0]) * left) / piece, from[1] + ((to[1] - from[1]) * left) / piece]];
    kept.push(to);
    left -= piece;
  }
  return kept;
}
