import type { Vec2, Vec3 } from '../../model/index.ts';
import type { Mark, Scene } from '../../scene/index.ts';
import type { Body, Box, LineDrawing } from '../types.ts';
import { drawArrow, pathArrow, arrowReach, type Arrow } from './arrows.ts';
import { clipToDisc } from './clip.ts';
import { cornersOf } from './corners.ts';
import { takenByDisc, type Cover } from './cover.ts';
import { fills } from './fills.ts';
import { boundsOf, toPaper, type Fit } from './fit.ts';
import { apart, distanceToPath, minus, pathLength, plus, unit, type Segment } from './flat.ts';
import type { Disc } from './ground.ts';
import type { LineDrawer } from './line-drawer.ts';
import type { Paints } from './looks.ts';
import { project, type Plane } from './plane.ts';
import { arrow, detail, haloWidth, ink, lengthLine, plainPen, rim, white } from './sizes.ts';
import { strokes } from './strokes.ts';
import { circle, line, lineStyle } from './svg.ts';

/** A spot to enlarge: where it is on the view plane, its radius in mm of the scene, and its own line drawing. */
export interface Spot {
  readonly centre: Vec2;
  readonly radius: number;
  readonly drawing: LineDrawing;
}

/** The two rings of a detail on paper. */
export interface Rings {
  readonly spot: Spot;
  readonly small: Disc;
  readonly big: Disc;
}

/** The spots of a scene, each drawn anew from the bodies near it and clipped to its ring. */
export function spotsOf(scene: Scene, plane: Plane, lineDrawing: LineDrawer): Spot[] {
  return scene.marks
    .filter((mark) => mark.mark === 'detail')
    .map(({ at, radius }) => {
      const centre = project(plane, at);
      const near = scene.bodies.filter((body) => comesNear(body, plane, centre, radius));
      return { centre, radius, drawing: clipToDisc(lineDrawing(near, scene.view), centre, radius) };
    });
}

function comesNear(body: Body, plane: Plane, centre: Vec2, radius: number): boolean {
  const { least, most } = boundsOf(cornersOf(body.mesh, body.pose).map((corner) => project(plane, corner)));
  const x = Math.max(least[0], Math.min(centre[0], most[0]));
  const y = Math.max(least[1], Math.min(centre[1], most[1]));
  return Math.hypot(x - centre[0], y - centre[1]) <= radius;
}

/** In mm of distance that one would rather accept; `covered` for a ring that lies wholly on what it hides. */
const costs = { fresh: 900, body: 220, lines: 60, arrow: 250, smaller: 12, middle: 6, reach: 0.1 } as const;

/**
 * Sets the big ring of each spot in the freest corner of the picture, or else at the middle of an edge.
 * Null when there is no room for it beside its own small ring and the others.
 */
export function setRings(spots: readonly Spot[], fit: Fit, cover: Cover, arrows: readonly Arrow[], paper: Box): { readonly rings: readonly Rings[]; readonly cost: number } | null {
  const rings: Rings[] = [];
  let sum = 0;
  for (const spot of spots) {
    const small = { centre: toPaper(fit, spot.centre), radius: Math.max(detail.smallLeast, spot.radius * fit.scale) };
    const taken = [...rings.flatMap(({ small: s, big }) => [s, big]), small];
    let best: { big: Disc; cost: number } | null = null;
    for (const { big, cost } of bigRings(paper)) {
      if (taken.some((disc) => apart(disc.centre, big.centre) < disc.radius + big.radius + 2)) continue;
      const whole = cost + bigRingCost(big, small, fit, cover, arrows);
      if (whole < (best?.cost ?? Infinity)) best = { big, cost: whole };
    }
    if (!best) return null;
    rings.push({ spot, small, big: best.big });
    sum += best.cost;
  }
  return { rings, cost: sum };
}

function bigRings(paper: Box): { readonly big: Disc; readonly cost: number }[] {
  const widest = Math.min(detail.most, Math.max(detail.least, detail.share * Math.min(paper.width, paper.height)));
  const spots: readonly (readonly [number, number, number])[] = [
    [1, 0, 0], [1, 1, 0], [0, 0, 0], [0, 1, 0], [1, 0.5, 1], [0, 0.5, 1], [0.5, 0, 1], [0.5, 1, 1],
  ];
  return [1, 0.8].flatMap((share) =>
    spots.map(([x, y, middles]) => {
      const radius = widest * share;
      const edge = radius + detail.ring / 2 + rim;
      const centre: Vec2 = [edge + x * (paper.width - 2 * edge), edge + y * (paper.height - 2 * edge)];
      return { big: { centre, radius }, cost: (share < 1 ? costs.smaller : 0) + middles * costs.middle };
    }),
  );
}

function bigRingCost(big: Disc, small: Disc, fit: Fit, cover: Cover, arrows: readonly Arrow[]): number {
  const taken = takenByDisc(cover, fit, big.centre, big.radius);
  const hit = arrows.filter((one) => reachOf(one, big.centre) < big.radius + 1).length;
  const between = apart(big.centre, small.centre) - big.radius - small.radius;
  return taken.fresh * costs.fresh + taken.body * costs.body + taken.lines * costs.lines + hit * costs.arrow + between * costs.reach;
}

function reachOf(one: Arrow, from: Vec2): number {
  const [first] = one.path;
  const distance = one.path.length > 1 ? distanceToPath(from, one.path) : first ? apart(first, from) : Infinity;
  return distance - arrowReach(one);
}

/** The line that joins the two rings. */
export function ringLeader({ small, big }: Rings): Segment {
  const way = unit(minus(big.centre, small.centre)) ?? [1, 0];
  return { from: plus(small.centre, way, small.radius), to: plus(big.centre, way, -big.radius) };
}

export function drawRings(one: Rings, marks: readonly Mark[], plane: Plane, paints: Paints): string {
  const { spot, small, big } = one;
  const { from, to } = ringLeader(one);
  const fit = enlargedFit(one);
  const halo = `fill="none" stroke="${white}" stroke-width="${detail.stroke + 2 * haloWidth}"`;
  return [
    circle(small.centre, small.radius, halo),
    line([from, to], halo),
    circle(small.centre, small.radius, lineStyle(detail.stroke, ink)),
    line([from, to], lineStyle(lengthLine.stroke, ink)),
    circle(big.centre, big.radius, `fill="${white}"`),
    fills(spot.drawing, paints, fit),
    strokes(spot.drawing, paints, fit, plainPen),
    ...marks.map((mark) => (mark.mark === 'arrow' ? enlargedArrow(mark.path, plane, one) : '')),
    circle(big.centre, big.radius, lineStyle(detail.ring, ink)),
  ]
    .filter((piece) => piece !== '')
    .join('\n');
}

function enlargedFit({ spot, big }: Rings): Fit {
  const scale = big.radius / spot.radius;
  return { scale, origin: [big.centre[0] - scale * spot.centre[0], big.centre[1] + scale * spot.centre[1]] };
}

/** The end of an arrow whose head lies in the spot, as far as it fits in the big ring. */
function enlargedArrow(places: readonly Vec3[], plane: Plane, one: Rings): string {
  const fit = enlargedFit(one);
  const path = places.map((place) => toPaper(fit, project(plane, place)));
  const tip = path[path.length - 1];
  const within = one.big.radius - arrow.broad.headWidth / 2;
  if (!tip || apart(tip, one.big.centre) > within) return '';
  const end = endWithin(path, one.big.centre, within);
  return pathLength(end) < arrow.least ? '' : drawArrow(pathArrow(end));
}

/** The last stretch of a path that stays in the disc. */
function endWithin(path: readonly Vec2[], centre: Vec2, radius: number): Vec2[] {
  const kept = path.slice(-1);
  for (let i = path.length - 2; i >= 0; i--) {
    const [from, to] = [path[i], path[i + 1]];
    if (!from || !to) break;
    if (apart(from, centre) <= radius) {
      kept.unshift(from);
      continue;
    }
    kept.unshift(leaving(to, from, centre, radius));
    break;
  }
  return kept;
}

/** Where the way from a place inside the disc to one outside crosses its edge. */
function leaving(inside: Vec2, outside: Vec2, centre: Vec2, radius: number): Vec2 {
  const way = unit(minus(outside, inside)) ?? [0, 0];
  const off = minus(inside, centre);
  const half = way[0] * off[0] + way[1] * off[1];
  return plus(inside, way, -half + Math.sqrt(Math.max(0, half * half - off[0] ** 2 - off[1] ** 2 + radius ** 2)));
}
