import type { Vec2 } from '../../model/index.ts';
import type { LineDrawing, Region } from '../types.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Paints } from './looks.ts';
import { strokesByKind, type LineKind } from './sides.ts';
import { fineBelow, finePen, ink, paleInk, plainPen, type Pen } from './sizes.ts';
import { lineStyle, pathData } from './svg.ts';

/** Held-back lines first, so that full lines run over them. */
const order: readonly LineKind[] = ['floor', 'pale', 'edge', 'outline'];

/** How far to the side of a line, on paper, one looks for the body it bounds. */
const probeOnPaper = 0.1;

/** All lines of a drawing, one path a kind. */
export function strokes(drawing: LineDrawing, paints: Paints, fit: Fit, pen: Pen): string {
  const data = new Map<LineKind, string>();
  for (const [kind, stroke] of strokesByKind(drawing, paints, probeOnPaper / fit.scale)) {
    const corners = straightened(stroke.points.map((p) => onPaper(fit, p)));
    data.set(kind, (data.get(kind) ?? '') + pathData(corners, stroke.closed));
  }
  return order
    .map((kind) => {
      const d = data.get(kind);
      return d ? `<path d="${d}" ${lineStyle(kind === 'outline' ? pen.outline : pen.edge, kind === 'pale' ? paleInk : ink)}/>` : '';
    })
    .filter((piece) => piece !== '')
    .join('\n');
}

/** Corners nearer than this to the straight between the kept ones are dropped: a tenth of a thin line, in mm of paper. */
const flatness = 0.02;

/** The line without corners that cannot be seen (Douglas and Peucker's method). */
function straightened(points: readonly Vec2[]): Vec2[] {
  const first = points[0];
  const last = points[points.length - 1];
  if (!first || !last || points.length < 3) return [...points];
  let [farthest, most] = [0, flatness];
  points.forEach((p, i) => {
    const off = offLine(p, first, last);
    if (off > most) [farthest, most] = [i, off];
  });
  if (farthest === 0) return [first, last];
  return [...straightened(points.slice(0, farthest + 1)).slice(0, -1), ...straightened(points.slice(farthest))];
}

function offLine(p: Vec2, from: Vec2, to: Vec2): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length < 1e-9) return Math.hypot(p[0] - from[0], p[1] - from[1]);
  return Math.abs(dx * (p[1] - from[1]) - dy * (p[0] - from[0])) / length;
}

/** The fine pen where half of the parts, by the length of their outlines, is thinner on paper than `fineBelow`. */
export function penFor(drawing: LineDrawing, paints: Paints, fit: Fit): Pen {
  const parts = drawing.regions.filter(({ body }) => paints.get(body) !== 'floor');
  const sizes = parts.map((region) => ringsSize(region.rings)).filter(({ round }) => round > 0);
  sizes.sort((a, b) => a.area / a.round - b.area / b.round);
  const half = sizes.reduce((sum, { round }) => sum + round, 0) / 2;
  let sum = 0;
  const middle = sizes.find(({ round }) => (sum += round) >= half);
  return middle && (2 * middle.area * fit.scale) / middle.round < fineBelow ? finePen : plainPen;
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
