import { Reals, Wholes, real, whole } from './arrays.ts';
import { hashOf } from './hash.ts';

/** Points of the drawing's network; ends that nearly meet share one. */
export interface Nodes {
  readonly x: Reals;
  readonly y: Reals;
  readonly snap: number;
  /** Square cells of four snapping distances, by a hash of column and row: the first node of each, or −1. */
  buckets: Int32Array;
  /** The next node with the same hash, or −1. */
  readonly next: Wholes;
}

/** How many snapping distances the side of a cell is long. */
const cellShare = 4;

/** An empty network whose ends join within `snap` mm. */
export function newNodes(snap: number): Nodes {
  return { x: new Reals(), y: new Reals(), snap, buckets: new Int32Array(1024).fill(-1), next: new Wholes() };
}

/** The node at a place: the nearest one within the snapping distance, or a new one. */
export function nodeAt(nodes: Nodes, x: number, y: number): number {
  const { snap, buckets } = nodes;
  const [xs, ys, next] = [nodes.x.values, nodes.y.values, nodes.next.values];
  const cell = cellShare * snap;
  const lastColumn = Math.floor((x + snap) / cell);
  const lastRow = Math.floor((y + snap) / cell);
  let best = -1;
  let least = snap * snap;
  for (let column = Math.floor((x - snap) / cell); column <= lastColumn; column++) {
    for (let row = Math.floor((y - snap) / cell); row <= lastRow; row++) {
      for (let n = whole(buckets, hashOf(column, row, buckets.length)); n >= 0; n = whole(next, n)) {
        const dx = real(xs, n) - x;
        const dy = real(ys, n) - y;
        const away = dx * dx + dy * dy;
        if (away > least || (away === least && (best < 0 || n >= best))) continue;
        best = n;
        least = away;
      }
    }
  }
  return best >= 0 ? best : addNode(nodes, x, y);
}

function addNode(nodes: Nodes, x: number, y: number): number {
  const made = nodes.x.count;
  nodes.x.push(x);
  nodes.y.push(y);
  nodes.next.push(-1);
  if (2 * made >= nodes.buckets.length) spreadOut(nodes);
  else chain(nodes, made);
  return made;
}

/** Puts a node first in the list of its cell. */
function chain({ x, y, snap, buckets, next }: Nodes, n: number): void {
  const cell = cellShare * snap;
  const bucket = hashOf(Math.floor(real(x.values, n) / cell), Math.floor(real(y.values, n) / cell), buckets.length);
  next.values[n] = whole(buckets, bucket);
  buckets[bucket] = n;
}

function spreadOut(nodes: Nodes): void {
  nodes.buckets = new Int32Array(2 * nodes.buckets.length).fill(-1);
  for (let n = 0; n < nodes.x.count; n++) chain(nodes, n);
}
