import type { Vec2, Vec3 } from '../../model/index.ts';
import type { Mark, Scene } from '../../scene/index.ts';
import type { Body } from '../types.ts';
import { drawArrow, pathArrow } from './arrows.ts';
import { discWindow } from '../kit/clip.ts';
import { clipDrawing } from './clip.ts';
import { cornersOf } from './corners.ts';
import { fills } from './fills.ts';
import { boundsOf, onPaper, type Fit } from '../kit/fit.ts';
import { apart, minus, pathLength, plus, unit } from '../kit/geometry.ts';
import { heldBack, type LineDrawer } from './line-drawer.ts';
import type { Paints } from './looks.ts';
import { project, type Plane } from './plane.ts';
import { ringLeader, type Rings, type Spot } from './rings.ts';
import { arrow } from './sizes.ts';
import { strokes } from './strokes.ts';
import { circle, line, type Mark as Drawn } from '../kit/marks.ts';
import { haloOf, pens, plainPens } from '../kit/pens.ts';

/** The spots of a scene, each drawn anew from the bodies near it and clipped to its ring. */
export function spotsOf(scene: Scene, plane: Plane, lineDrawing: LineDrawer): Spot[] {
  return scene.marks
    .filter((mark) => mark.mark === 'detail')
    .map(({ at, radius }) => {
      const centre = project(plane, at);
      const near = scene.bodies.filter((body) => comesNear(body, plane, centre, radius));
      return { centre, radius, drawing: clipDrawing(lineDrawing(near, scene.view, heldBack(near)), discWindow(centre, radius)) };
    });
}

function comesNear(body: Body, plane: Plane, centre: Vec2, radius: number): boolean {
  const { min, max } = boundsOf(cornersOf(body.mesh, body.pose).map((corner) => project(plane, corner)));
  const x = Math.max(min[0], Math.min(centre[0], max[0]));
  const y = Math.max(min[1], Math.min(centre[1], max[1]));
  return Math.hypot(x - centre[0], y - centre[1]) <= radius;
}

export function drawRings(one: Rings, marks: readonly Mark[], plane: Plane, paints: Paints): readonly Drawn[] {
  const { spot, small, big } = one;
  const { from, to } = ringLeader(one);
  const fit = enlargedFit(one);
  const halo = haloOf(pens.detail.width);
  return [
    circle(small.centre, small.radius, halo),
    line(halo, from, to),
    circle(small.centre, small.radius, pens.detail),
    line(pens.leader, from, to),
    circle(big.centre, big.radius, null, 'white'),
    ...fills(spot.drawing, paints, fit),
    ...strokes(spot.drawing, paints, fit, plainPens),
    ...marks.flatMap((mark) => (mark.mark === 'arrow' ? enlargedArrow(mark.path, plane, one) : [])),
    circle(big.centre, big.radius, pens.enlarged),
  ];
}

function enlargedFit({ spot, big }: Rings): Fit {
  const scale = big.radius / spot.radius;
  return { scale, origin: [big.centre[0] - scale * spot.centre[0], big.centre[1] + scale * spot.centre[1]] };
}

/** The end of an arrow whose head lies in the spot, as far as it fits in the big ring. */
function enlargedArrow(places: readonly Vec3[], plane: Plane, one: Rings): readonly Drawn[] {
  const fit = enlargedFit(one);
  const path = places.map((place) => onPaper(fit, project(plane, place)));
  const tip = path[path.length - 1];
  const within = one.big.radius - arrow.broad.headWidth / 2;
  if (!tip || apart(tip, one.big.centre) > within) return [];
  const end = endWithin(path, one.big.centre, within);
  return pathLength(end) < arrow.least ? [] : drawArrow(pathArrow(end));
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
