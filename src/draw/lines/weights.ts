import { Wholes, real, whole } from './arrays.ts';
import type { Network } from './arrangement.ts';
import { contour } from './candidates.ts';
import { clearancesOf } from './clearance.ts';
import { frontmost } from './frontmost.ts';
import type { Links } from './links.ts';
import type { Nodes } from './nodes.ts';
import type { Occluders } from './occluders.ts';
import type { Tolerances } from './tolerances.ts';

/** The links that are lines of the picture, with what lies beside them. */
export interface WeightedLinks {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** What lies on the left and on the right, seen from the first node: a body or −1. */
  readonly left: Int32Array;
  readonly right: Int32Array;
  /** 1 where a body ends, 0 for an edge within one. */
  readonly outline: Int32Array;
  /** The body whose edge it is: of two, the one on whose face the line lies. */
  readonly owner: Int32Array;
}

/** Looks to both sides of every link and drops those that are no line of the picture. */
export function weighLinks(network: Network, occluders: Occluders, tolerances: Tolerances): WeightedLinks {
  const { nodes, links } = network;
  const clearances = clearancesOf(network, 2 * tolerances.probe);
  const [from, to, left, right, outline, owner] = [new Wholes(), new Wholes(), new Wholes(), new Wholes(), new Wholes(), new Wholes()];
  for (let l = 0; l < links.count; l++) {
    const faceLeft = faceBeside(nodes, links, l, real(clearances, 2 * l) / 2, occluders, tolerances);
    const faceRight = faceBeside(nodes, links, l, -real(clearances, 2 * l + 1) / 2, occluders, tolerances);
    const weight = weightOf(links, l, faceLeft, faceRight, occluders, tolerances);
    if (weight === null) continue;
    from.push(whole(links.from.values, l));
    to.push(whole(links.to.values, l));
    left.push(bodyOf(occluders, faceLeft));
    right.push(bodyOf(occluders, faceRight));
    outline.push(weight === 'outline' ? 1 : 0);
    owner.push(ownerOf(links, l, faceLeft, faceRight, occluders, tolerances));
  }
  return { count: from.count, from: from.done(), to: to.done(), left: left.done(), right: right.done(), outline: outline.done(), owner: owner.done() };
}

/** The body of a face, −1 where there is none. */
const bodyOf = ({ body }: Occluders, face: number): number => (face < 0 ? -1 : whole(body, face));

function ownerOf(links: Links, link: number, left: number, right: number, occluders: Occluders, tolerances: Tolerances): number {
  const one = bodyOf(occluders, left);
  const other = bodyOf(occluders, right);
  if (one < 0 || other < 0) return Math.max(one, other);
  const nearer = Math.abs(heightOver(occluders, right, links, link)) - Math.abs(heightOver(occluders, left, links, link));
  // A thin body that lies on another shares its lower edges with it; it stands after it in the list.
  if (Math.abs(nearer) < tolerances.buried) return Math.max(one, other);
  return nearer > 0 ? one : other;
}

/** The face nearest to the eye at a distance to the left of a link's middle. */
function faceBeside({ x: { values: xs }, y: { values: ys } }: Nodes, links: Links, link: number, distance: number, occluders: Occluders, tolerances: Tolerances): number {
  const from = whole(links.from.values, link);
  const to = whole(links.to.values, link);
  const x = (real(xs, from) + real(xs, to)) / 2;
  const y = (real(ys, from) + real(ys, to)) / 2;
  const dx = real(xs, to) - real(xs, from);
  const dy = real(ys, to) - real(ys, from);
  const scale = distance / Math.sqrt(dx * dx + dy * dy);
  return frontmost(occluders, x - dy * scale, y + dx * scale, tolerances);
}

/** Outline where a body ends, edge within one, null for seams and for what lies under both faces. */
function weightOf(links: Links, link: number, left: number, right: number, occluders: Occluders, tolerances: Tolerances): 'outline' | 'edge' | null {
  if (left < 0 && right < 0) return null;
  if (left >= 0 && right >= 0 && Math.max(heightOver(occluders, left, links, link), heightOver(occluders, right, links, link)) < -tolerances.buried) return null;
  if (bodyOf(occluders, left) !== bodyOf(occluders, right)) return 'outline';
  if (isFlat(occluders, left, right, links, link, tolerances)) return null;
  return (whole(links.kinds.values, link) & contour) !== 0 ? 'outline' : 'edge';
}

/** Distance of a link's middle over a face, square to it. */
function heightOver({ numbers: f, starts }: Occluders, face: number, { middles: { values: middles } }: Links, link: number): number {
  const plane = whole(starts, face);
  return real(f, plane) * real(middles, 3 * link) + real(f, plane + 1) * real(middles, 3 * link + 1) + real(f, plane + 2) * real(middles, 3 * link + 2) - real(f, plane + 3);
}

function isFlat(occluders: Occluders, left: number, right: number, links: Links, link: number, tolerances: Tolerances): boolean {
  const { numbers: f, starts } = occluders;
  const [p, q] = [whole(starts, left), whole(starts, right)];
  const cosine = real(f, p) * real(f, q) + real(f, p + 1) * real(f, q + 1) + real(f, p + 2) * real(f, q + 2);
  return cosine > 0.99998 && Math.abs(heightOver(occluders, left, links, link) - heightOver(occluders, right, links, link)) < tolerances.buried;
}
