import { item, real, whole } from './arrays.ts';
import type { Link, Network } from './arrangement.ts';
import { contour } from './candidates.ts';
import { clearancesOf } from './clearance.ts';
import { frontmost } from './frontmost.ts';
import type { Occluders } from './occluders.ts';
import { planeAt, stride } from './occluders.ts';
import type { Tolerances } from './tolerances.ts';

/** A link with what lies on its left and on its right, seen from its first node: a body or −1. */
export interface WeightedLink extends Link {
  readonly left: number;
  readonly right: number;
  readonly weight: 'outline' | 'edge';
  /** The body whose edge it is: of two, the one on whose face the line lies. */
  readonly owner: number;
}

/** Looks to both sides of every link and drops those that are no line of the picture. */
export function weighLinks(network: Network, occluders: Occluders, tolerances: Tolerances): readonly WeightedLink[] {
  const clearances = clearancesOf(network, 2 * tolerances.probe);
  return network.links.flatMap((link, l) => {
    const left = faceBeside(network, link, real(clearances, 2 * l) / 2, occluders, tolerances);
    const right = faceBeside(network, link, -real(clearances, 2 * l + 1) / 2, occluders, tolerances);
    const bodies = [left, right].map((face) => (face < 0 ? -1 : whole(occluders.body, face))) as [number, number];
    const weight = weightOf(link, left, right, bodies, occluders.numbers, tolerances);
    return weight ? [{ ...link, left: bodies[0], right: bodies[1], weight, owner: ownerOf(link, left, right, bodies, occluders.numbers, tolerances) }] : [];
  });
}

function ownerOf(link: Link, left: number, right: number, [one, other]: readonly [number, number], numbers: Float64Array, tolerances: Tolerances): number {
  if (one < 0 || other < 0) return Math.max(one, other);
  const nearer = Math.abs(heightOver(numbers, right, link)) - Math.abs(heightOver(numbers, left, link));
  // A thin body that lies on another shares its lower edges with it; it stands after it in the list.
  if (Math.abs(nearer) < tolerances.buried) return Math.max(one, other);
  return nearer > 0 ? one : other;
}

/** The face nearest to the eye at a distance to the left of a link's middle. */
function faceBeside({ nodes }: Network, { from, to }: Link, distance: number, occluders: Occluders, tolerances: Tolerances): number {
  const x = (item(nodes.x, from) + item(nodes.x, to)) / 2;
  const y = (item(nodes.y, from) + item(nodes.y, to)) / 2;
  const dx = item(nodes.x, to) - item(nodes.x, from);
  const dy = item(nodes.y, to) - item(nodes.y, from);
  const scale = distance / Math.hypot(dx, dy);
  return frontmost(occluders, x - dy * scale, y + dx * scale, tolerances);
}

/** Outline where a body ends, edge within one, null for seams and for what lies under both faces. */
function weightOf(link: Link, left: number, right: number, [one, other]: readonly [number, number], numbers: Float64Array, tolerances: Tolerances): 'outline' | 'edge' | null {
  if (one < 0 && other < 0) return null;
  if (left >= 0 && right >= 0 && Math.max(heightOver(numbers, left, link), heightOver(numbers, right, link)) < -tolerances.buried) return null;
  if (one !== other) return 'outline';
  if (isFlat(numbers, left, right, link, tolerances)) return null;
  return (link.kinds & contour) !== 0 ? 'outline' : 'edge';
}

/** Distance of a link's middle over a face, square to it. */
function heightOver(f: Float64Array, face: number, { middle: [x, y, z] }: Link): number {
  const plane = stride * face + planeAt;
  return real(f, plane) * x + real(f, plane + 1) * y + real(f, plane + 2) * z - real(f, plane + 3);
}

function isFlat(f: Float64Array, left: number, right: number, link: Link, tolerances: Tolerances): boolean {
  const [p, q] = [stride * left + planeAt, stride * right + planeAt];
  const cosine = real(f, p) * real(f, q) + real(f, p + 1) * real(f, q + 1) + real(f, p + 2) * real(f, q + 2);
  return cosine > 0.99998 && Math.abs(heightOver(f, left, link) - heightOver(f, right, link)) < tolerances.buried;
}
