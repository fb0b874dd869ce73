import { Matrix4 } from 'three';
import type { Vec2 } from '../../model/index.ts';
import type { View } from '../../scene/index.ts';
import type { Body, LineDrawing, Region, Stroke } from '../types.ts';
import { networkOf } from './arrangement.ts';
import { Wholes, item, real, whole } from './arrays.ts';
import type { LineCaches } from './caches.ts';
import { cachedTopology, newLineCaches, numbersKey, remembered } from './caches.ts';
import { candidateLines } from './candidates.ts';
import { chainLinks } from './chains.ts';
import { crossingsOf } from './crossings.ts';
import type { Nodes } from './nodes.ts';
import { occludersOf } from './occluders.ts';
import { outlineArea } from './outlineArea.ts';
import { dropStraight, ringArea, roundPoints, roundTo } from './polyline.ts';
import { ringsOf } from './regions.ts';
import type { Stage } from './stage.ts';
import { stageOf } from './stage.ts';
import { tolerancesFor } from './tolerances.ts';
import type { Tolerances } from './tolerances.ts';
import { viewMatrix } from './viewMatrix.ts';
import { visiblePieces } from './visible.ts';
import { weighLinks } from './weights.ts';
import type { WeightedLinks } from './weights.ts';

/**
 * Draws closed bodies as lines with what is hidden left out, in mm of the scene on the view plane.
 * @param bodies closed meshes wound outwards, poses rigid; bodies may touch and enter each other.
 * @param view parallel view; `towardsEye` need not be of unit length.
 * @param options.caches what the caller keeps from picture to picture; the result does not depend on it.
 * @param options.apart ids of bodies whose lines are wanted as strokes of their own, each with its body's id.
 * @throws when the view has no direction.
 */
export function lineDrawing(bodies: readonly Body[], view: View, options: { readonly caches?: LineCaches; readonly apart?: ReadonlySet<string> } = {}): LineDrawing {
  const caches = options.caches ?? newLineCaches();
  const topologies = bodies.map(({ mesh }) => cachedTopology(caches, mesh));
  const stage = stageOf(bodies, topologies, viewMatrix(view));
  const tolerances = tolerancesFor(stage.diagonal);
  const lines = candidateLines(stage, crossingsOf(bodies, topologies, caches));
  const occluders = occludersOf(stage, tolerances);
  const network = networkOf(lines, visiblePieces(lines, occluders, tolerances), tolerances.snap);
  const links = weighLinks(network, occluders, tolerances);
  const strokes = strokesOf(network.nodes, links, tolerances, bodies.map(({ id }) => (options.apart?.has(id) ? id : null)));
  const rings = ringsOf(network.nodes, links, bodies.length)
    .map((own) => own.map((ring) => finish(network.nodes, ring, true, tolerances)).filter((ring) => ring.length > 2));
  return { strokes, regions: regionsOf(bodies, rings), visibleShare: sharesOf(bodies, stage, rings, caches), bounds: boundsOf(strokes) };
}

/** Strokes of all bodies together, and of each body that is wanted apart (`apart` has its id at its place, null else). */
function strokesOf(nodes: Nodes, links: WeightedLinks, tolerances: Tolerances, apart: readonly (string | null)[]): readonly Stroke[] {
  const firstAt = new Int32Array(nodes.x.count).fill(-1);
  const chained = (weight: Stroke['weight'], chosen: Int32Array): Stroke[] => chainLinks(nodes, links, chosen, firstAt)
    .map((chain) => ({ weight, points: finish(nodes, chain.nodes, chain.closed, tolerances), closed: chain.closed }))
    .filter(({ points }) => points.length > 1);
  return (['outline', 'edge'] as const).flatMap((weight) => {
    const { together, byOwner } = sortedOut(links, weight, apart);
    const byBody = apart.flatMap((body, index) => {
      const own = byOwner.get(index);
      return body === null || own === undefined ? [] : chained(weight, own.done()).map((stroke) => ({ ...stroke, body }));
    });
    return [...chained(weight, together.done()), ...byBody];
  });
}

/** Links of a weight: those of bodies that are drawn together, and those of each other body, all found in one pass. */
function sortedOut(links: WeightedLinks, weight: Stroke['weight'], apart: readonly (string | null)[]): { readonly together: Wholes; readonly byOwner: ReadonlyMap<number, Wholes> } {
  const together = new Wholes();
  const byOwner = new Map<number, Wholes>();
  const wanted = weight === 'outline' ? 1 : 0;
  for (let l = 0; l < links.count; l++) {
    if (whole(links.outline, l) !== wanted) continue;
    const owner = whole(links.owner, l);
    if ((apart[owner] ?? null) === null) together.push(l);
    else remembered(byOwner, owner, () => new Wholes()).push(l);
  }
  return { together, byOwner };
}

/** Nodes as points: straight runs without points between, rounded. */
function finish(nodes: Nodes, chain: readonly number[], closed: boolean, tolerances: Tolerances): readonly Vec2[] {
  const points = chain.map((n): Vec2 => [real(nodes.x.values, n), real(nodes.y.values, n)]);
  return roundPoints(dropStraight(points, closed, tolerances.straight), closed, tolerances.rounding);
}

function regionsOf(bodies: readonly Body[], rings: readonly (readonly (readonly Vec2[])[])[]): readonly Region[] {
  return bodies.map(({ id }, b) => ({ body: id, rings: item(rings, b) })).filter((region) => region.rings.length > 0);
}

/** Visible area over own outline area, to four decimals. Few bodies are asked after, so only theirs are reckoned. */
function sharesOf(bodies: readonly Body[], { topologies, matrices }: Pick<Stage, 'topologies' | 'matrices'>, rings: readonly (readonly (readonly Vec2[])[])[], caches: LineCaches): LineDrawing['visibleShare'] {
  const places = new Map(bodies.map(({ id }, b) => [id, b]));
  return (id) => {
    const b = places.get(id);
    if (b === undefined) return 0;
    const own = ownOutlineArea(caches, item(bodies, b).mesh, item(topologies, b), item(matrices, b));
    const seen = item(rings, b).reduce((sum, ring) => sum + ringArea(ring), 0);
    return own > 0 ? roundTo(Math.min(1, Math.max(0, seen / own)), 1e-4) : 0;
  };
}

/** A turn about the view axis leaves the area as it is, so the direction to the eye alone is the key. */
function ownOutlineArea(caches: LineCaches, mesh: Body['mesh'], topology: Stage['topologies'][number], matrix: Matrix4): number {
  const m = matrix.elements;
  const areas = remembered(caches.outlineAreas, mesh, () => new Map<string, number>());
  return remembered(areas, numbersKey([m[2], m[6], m[10]]), () => outlineArea(topology, m));
}

function boundsOf(strokes: readonly Stroke[]): LineDrawing['bounds'] {
  if (strokes.length === 0) return { min: [0, 0], max: [0, 0] };
  const [min, max]: [[number, number], [number, number]] = [[Infinity, Infinity], [-Infinity, -Infinity]];
  for (const { points } of strokes) {
    for (const [x, y] of points) {
      min[0] = Math.min(min[0], x);
      min[1] = Math.min(min[1], y);
      max[0] = Math.max(max[0], x);
      max[1] = Math.max(max[1], y);
    }
  }
  return { min, max };
}
