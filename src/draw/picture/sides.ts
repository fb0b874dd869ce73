import type { Vec2 } from '../../model/index.ts';
import type { LineDrawing, Region, Stroke } from '../types.ts';
import { boundsOf, type Bounds } from '../kit/fit.ts';
import type { Paint, Paints } from './looks.ts';

/** How a line is drawn: as its weight says, or held back because it bounds only pale bodies or the floor. */
export type LineKind = Stroke['weight'] | 'pale' | 'floor';

interface Area {
  readonly paint: Paint;
  readonly bounds: Bounds;
  readonly rings: Region['rings'];
}

const kindOfOwn = ({ body, weight }: Stroke, paints: Paints): LineKind => {
  const paint = body === undefined ? undefined : paints.get(body);
  return paint === 'pale' || paint === 'floor' ? paint : weight;
};

/** The strokes by kind. Where they name no body they are cut where their kind changes, and what lies to both sides decides. */
export function strokesByKind(drawing: LineDrawing, paints: Paints, probe: number): (readonly [LineKind, Stroke])[] {
  const areas = drawing.regions.map((region) => ({
    paint: paints.get(region.body) ?? 'white',
    bounds: boundsOf(region.rings.flat()),
    rings: region.rings,
  }));
  if (drawing.strokes.some((stroke) => stroke.body !== undefined)) return drawing.strokes.map((stroke) => [kindOfOwn(stroke, paints), stroke] as const);
  const heldBack = areas.some(({ paint }) => paint === 'pale' || paint === 'floor');
  if (!heldBack) return drawing.strokes.map((stroke) => [stroke.weight, stroke] as const);
  return drawing.strokes.flatMap((stroke) => runs(stroke, areas, probe));
}

function runs(stroke: Stroke, areas: readonly Area[], probe: number): (readonly [LineKind, Stroke])[] {
  const first = stroke.points[0];
  const points = stroke.closed && first ? [...stroke.points, first] : stroke.points;
  const kinds = points.slice(1).map((to, i) => kindOf(points[i] ?? to, to, stroke.weight, areas, probe));
  if (kinds.every((kind) => kind === kinds[0])) return [[kinds[0] ?? stroke.weight, stroke]];
  const found: [LineKind, Stroke][] = [];
  let start = 0;
  for (let i = 1; i <= kinds.length; i++) {
    const kind = kinds[start];
    if (kinds[i] === kind || kind === undefined) continue;
    found.push([kind, { weight: stroke.weight, points: points.slice(start, i + 1), closed: false }]);
    start = i;
  }
  return found;
}

function kindOf(from: Vec2, to: Vec2, weight: Stroke['weight'], areas: readonly Area[], probe: number): LineKind {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const aside = (by: number): Vec2 => [(from[0] + to[0]) / 2 - (dy / length) * by, (from[1] + to[1]) / 2 + (dx / length) * by];
  const sides = [paintAt(aside(probe), areas), paintAt(aside(-probe), areas)];
  if (sides.includes('white') || sides.includes('tint') || sides.includes('dark')) return weight;
  if (sides.includes('pale')) return 'pale';
  return sides.includes('floor') ? 'floor' : weight;
}

function paintAt(place: Vec2, areas: readonly Area[]): Paint | null {
  return areas.find((area) => inBounds(place, area.bounds) && inRings(place, area.rings))?.paint ?? null;
}

function inBounds([x, y]: Vec2, { min, max }: Bounds): boolean {
  return x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];
}

function inRings([x, y]: Vec2, rings: Region['rings']): boolean {
  let inside = false;
  for (const ring of rings) {
    let before = ring[ring.length - 1];
    for (const corner of ring) {
      if (before && corner[1] > y !== before[1] > y) {
        const at = corner[0] + ((y - corner[1]) / (before[1] - corner[1])) * (before[0] - corner[0]);
        if (x < at) inside = !inside;
      }
      before = corner;
    }
  }
  return inside;
}
