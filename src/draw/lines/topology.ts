import type { Mesh } from '../../model/index.ts';
import { real, whole } from './arrays.ts';
import { convexFacesOf, nextInTriangle } from './convexFaces.ts';
import type { ConvexFaces } from './convexFaces.ts';
import { flatsOf } from './flats.ts';
import type { Flats } from './flats.ts';
import { sliverShare, smoothCosine, weldShare } from './tolerances.ts';
import { boxesOfTriangles } from './triangleBoxes.ts';
import { weld } from './weld.ts';
import type { Welded } from './weld.ts';

/** A mesh with what the drawing must know of it whatever the view, in the mesh's own coordinates (mm). */
export interface Topology extends Welded, Flats, ConvexFaces {
  /** The triangle across each side of each triangle, or −1. Side k runs from corner k to the next. */
  readonly neighbours: Int32Array;
  /** Edges between different flat faces: point, point, triangle on the left, triangle on the right or −1. */
  readonly edges: Int32Array;
  /** For each edge, 1 where it turns less than the eye takes for a corner. */
  readonly smooth: Uint8Array;
  /** For each edge, 1 where it is an inside corner. */
  readonly concave: Uint8Array;
  /** Least x y z, then greatest x y z, of every triangle. */
  readonly triangleBoxes: Float64Array;
  /** Least x y z, then greatest x y z. */
  readonly box: Float64Array;
  readonly diagonal: number;
}

/** Reads the edges and flat faces of a closed mesh. */
export function topologyOf(mesh: Mesh): Topology {
  const box = boxOf(mesh.positions);
  const diagonal = Math.hypot(...[0, 1, 2].map((k) => real(box, k + 3) - real(box, k)));
  const welded = weld(mesh, Math.max(diagonal * weldShare, Number.MIN_VALUE));
  const neighbours = neighboursOf(welded.triangles);
  const flats = flatsOf(welded, neighbours, diagonal * sliverShare);
  const triangleBoxes = boxesOfTriangles(welded.triangles, welded.points, Array.from({ length: welded.triangles.length / 3 }, (_, t) => t));
  return { ...welded, ...flats, ...convexFacesOf(welded, flats, neighbours), neighbours, ...edgesOf(welded, flats, neighbours), triangleBoxes, box, diagonal };
}

/** Least x y z and greatest x y z of points; of no points, a box at the origin. */
function boxOf(points: Float64Array): Float64Array {
  const box = Float64Array.of(Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity);
  for (let i = 0; i < points.length; i++) {
    const k = i % 3;
    const value = real(points, i);
    if (value < real(box, k)) box[k] = value;
    if (value > real(box, k + 3)) box[k + 3] = value;
  }
  return points.length === 0 ? new Float64Array(6) : box;
}

/** Pairs every side with the one that runs the other way. A side without a partner stays a border. */
function neighboursOf(triangles: Int32Array): Int32Array {
  const neighbours = new Int32Array(triangles.length).fill(-1);
  const open = new Map<number, number>();
  const many = triangles.length + 1;
  for (let h = 0; h < triangles.length; h++) {
    const from = whole(triangles, h);
    const to = whole(triangles, nextInTriangle(h));
    const partner = open.get(to * many + from);
    if (partner === undefined) {
      open.set(from * many + to, h);
      continue;
    }
    open.delete(to * many + from);
    neighbours[h] = Math.floor(partner / 3);
    neighbours[partner] = Math.floor(h / 3);
  }
  return neighbours;
}

function edgesOf(welded: Welded, flats: Flats, neighbours: Int32Array): Pick<Topology, 'edges' | 'smooth' | 'concave'> {
  const edges: number[] = [];
  const smooth: number[] = [];
  const concave: number[] = [];
  for (let h = 0; h < neighbours.length; h++) {
    const left = Math.floor(h / 3);
    const right = whole(neighbours, h);
    if (right >= 0 && (right < left || whole(flats.planeOf, right) === whole(flats.planeOf, left))) continue;
    const from = whole(welded.triangles, h);
    const to = whole(welded.triangles, nextInTriangle(h));
    edges.push(from, to, left, right);
    const turn = right < 0 ? { cosine: -1, sine: 1 } : turnOf(welded, flats, from, to, left, right);
    smooth.push(turn.cosine > smoothCosine ? 1 : 0);
    concave.push(turn.sine < 0 ? 1 : 0);
  }
  return { edges: Int32Array.from(edges), smooth: Uint8Array.from(smooth), concave: Uint8Array.from(concave) };
}

/** How far the face turns over an edge; the sine is negative at an inside corner. */
function turnOf({ points }: Welded, { planeOf, planes }: Flats, from: number, to: number, left: number, right: number): { cosine: number; sine: number } {
  const [a, b] = [4 * whole(planeOf, left), 4 * whole(planeOf, right)];
  const [ax, ay, az] = [real(planes, a), real(planes, a + 1), real(planes, a + 2)];
  const [bx, by, bz] = [real(planes, b), real(planes, b + 1), real(planes, b + 2)];
  const sine = (ay * bz - az * by) * (real(points, 3 * to) - real(points, 3 * from))
    + (az * bx - ax * bz) * (real(points, 3 * to + 1) - real(points, 3 * from + 1))
    + (ax * by - ay * bx) * (real(points, 3 * to + 2) - real(points, 3 * from + 2));
  return { cosine: ax * bx + ay * by + az * bz, sine };
}
