import type { Vec2 } from '../../model/index.ts';
import type { LineDrawing, Region } from '../types.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Paints } from './looks.ts';
import type { Run } from '../kit/clip.ts';
import type { Mark } from '../kit/marks.ts';
import { finePens, plainPens, type BodyPens } from '../kit/pens.ts';
import { strokesByKind, type LineKind } from './sides.ts';
import { fineBelow } from './sizes.ts';

/** Held-back lines first, so that full lines run over them. */
const order: readonly LineKind[] = ['floor', 'pale', 'edge', 'outline'];

/** How far to the side of a line, on paper, one looks for the body it bounds. */
const probeOnPaper = 0.1;

/** All lines of a drawing, one mark a kind. */
export function strokes(drawing: LineDrawing, paints: Paints, fit: Fit, pens: BodyPens): readonly Mark[] {
  const runs = new Map<LineKind, Run[]>(order.map((kind) => [kind, []]));
  for (const [kind, stroke] of strokesByKind(drawing, paints, probeOnPaper / fit.scale)) {
    runs.get(kind)?.push({ points: straightened(stroke.points.map((p) => onPaper(fit, p))), closed: stroke.closed });
  }
  return [...runs].flatMap(([kind, own]): readonly Mark[] => (own.length === 0 ? [] : [{ mark: 'lines', pen: pens[kind], runs: own }]));
}

/** Corners nearer than this to the straight between the kept ones are dropped: a tenth of a thin line, in mm of paper. */
const flatness = 0.02;

/** The line without corners that cannot be seen (Douglas and Peucker's method). */
function straightened(points: readonly Vec2[]): Vec2[] {
  const kept = new Uint8Array(points.length);
  kept[0] = 1;
  if (points.length > 1) keepBetween(points, 0, points.length - 1, kept);
  return points.filter((_, i) => kept[i] === 1);
}

/** Marks the corners to be kept after one and up to another. */
function keepBetween(points: readonly Vec2[], from: number, to: number, kept: Uint8Array): void {
  const [first, last] = [points[from], points[to]];
  if (first === undefined || last === undefined) return;
  let [farthest, most] = [from, flatness];
  for (let i = from + 1; i < to; i++) {
    const off = offLine(points[i] ?? first, first, last);
    if (off > most) [farthest, most] = [i, off];
  }
  kept[to] = 1;
  if (farthest === from) return;
  keepBetween(points, from, farthest, kept);
  keepBetween(points, farthest, to, kept);
}

function offLine(p: Vec2, from: Vec2, to: Vec2): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length < 1e-9) return Math.hypot(p[0] - from[0], p[1] - from[1]);
  return Math.abs(dx * (p[1] - from[1]) - dy * (p[0] - from[0])) / length;
}

/** The fine pens where half of the parts, by the length of their outlines, is thinner on paper than `fineBelow`. */
export function pensFor(drawing: LineDrawing, paints: Paints, fit: Fit): BodyPens {
  const parts = drawing.regions.filter(({ body }) => paints.get(body) !== 'floor');
  const sizes = parts.map((region) => ringsSize(region.rings)).filter(({ round }) => round > 0);
  sizes.sort((a, b) => a.area / a.round - b.area / b.round);
  const half = sizes.reduce((sum, { round }) => sum + round, 0) / 2;
  let sum = 0;
  const middle = sizes.find(({ round }) => (sum += round) >= half);
  return middle && (2 * middle.area * fit.scale) / middle.round < fineBelow ? finePens : plainPens;
}

/** Area and length of outline of even-odd rings whose holes wind against their outsides. */
function ringsSize(rings: Region['rings']): { readonly area: number; readonly round: number } {
  let [twice, round] = [0, 0];
  for (const ring of rings) {
    ring.forEach((p, i) => {
      const next = ring[(i + 1) % ring.length] ?? p;
      twice += p[0] * next[1] - next[0] * p[1];
      round += Math.hypot(next[0] - p[0], next[1] - p[1]);
    });
  }
  return { area: Math.abs(twice) / 2, round };
}
