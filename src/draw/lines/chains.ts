import { flag, item, real, whole } from './arrays.ts';
import type { Nodes } from './nodes.ts';
import type { WeightedLinks } from './weights.ts';

/** Nodes that one pen stroke follows; closed where it comes back to its start (which stands once). */
export interface Chain {
  readonly nodes: readonly number[];
  readonly closed: boolean;
}

/**
 * Joins links to long strokes: at each node a line goes on in the straightest one left.
 * @param chosen places of the links to be joined, ascending.
 * @param firstAt a number for each node, all −1; it is left so.
 */
export function chainLinks(nodes: Nodes, links: WeightedLinks, chosen: Int32Array, firstAt: Int32Array): readonly Chain[] {
  const own = { count: chosen.length, from: chosen.map((l) => whole(links.from, l)), to: chosen.map((l) => whole(links.to, l)) };
  const partners = partnersOf(nodes, own, firstAt);
  const used = new Uint8Array(own.count);
  const chains: Chain[] = [];
  for (let l = 0; l < own.count; l++) {
    const [ahead, back] = [whole(partners, 2 * l + 1), whole(partners, 2 * l)];
    if (flag(used, l) === 0 && (ahead < 0 || back < 0)) chains.push(follow(own, partners, used, l, back < 0 ? whole(own.from, l) : whole(own.to, l)));
  }
  for (let l = 0; l < own.count; l++) {
    if (flag(used, l) === 0) chains.push(follow(own, partners, used, l, whole(own.from, l)));
  }
  return chains;
}

/** Links by their nodes. */
interface Ends {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** For both ends of every link (2 l, 2 l + 1) the link in which the stroke goes on, or −1. */
type Partners = Int32Array;

function follow({ from, to }: Ends, partners: Partners, used: Uint8Array, first: number, start: number): Chain {
  const walk = [start];
  let next = first;
  for (let node = start; next >= 0 && flag(used, next) === 0;) {
    used[next] = 1;
    const atStart = node === whole(from, next);
    node = atStart ? whole(to, next) : whole(from, next);
    next = whole(partners, 2 * next + (atStart ? 1 : 0));
    walk.push(node);
  }
  return next === first && walk.length > 3 ? { nodes: walk.slice(1), closed: true } : { nodes: walk, closed: false };
}

function partnersOf(nodes: Nodes, ends: Ends, firstAt: Int32Array): Partners {
  const next = listEnds(ends, firstAt);
  const partners = new Int32Array(2 * ends.count).fill(-1);
  for (let l = 0; l < ends.count; l++) {
    for (let end = 2 * l; end < 2 * l + 2; end++) {
      const node = nodeOf(ends, end);
      if (whole(firstAt, node) < 0) continue;
      pairAt(nodes, ends, partners, next, node, whole(firstAt, node));
      firstAt[node] = -1;
    }
  }
  return partners;
}

const nodeOf = ({ from, to }: Ends, end: number): number => whole(end % 2 === 0 ? from : to, end >> 1);

/** Lists the ends at each node, ascending: the first in `firstAt`, the one after each end in what is given back, −1 after the last. */
function listEnds(ends: Ends, firstAt: Int32Array): Int32Array {
  const next = new Int32Array(2 * ends.count);
  for (let end = 2 * ends.count - 1; end >= 0; end--) {
    const node = nodeOf(ends, end);
    next[end] = whole(firstAt, node);
    firstAt[node] = end;
  }
  return next;
}

/** Pairs the ends that meet at a node. */
function pairAt(nodes: Nodes, ends: Ends, partners: Partners, next: Int32Array, node: number, first: number): void {
  const second = whole(next, first);
  if (second < 0) return;
  if (whole(next, second) < 0) {
    join(partners, first, second);
    return;
  }
  const here: number[] = [];
  for (let end = first; end >= 0; end = whole(next, end)) here.push(end);
  pairStraightest(nodes, ends, partners, node, here);
}

function join(partners: Partners, one: number, other: number): void {
  partners[one] = other >> 1;
  partners[other] = one >> 1;
}

/** Pairs ends at a node, the straightest pair first. */
function pairStraightest(nodes: Nodes, ends: Ends, partners: Partners, node: number, here: readonly number[]): void {
  const directions = here.map((end) => directionFrom(nodes, nodeOf(ends, end ^ 1), node));
  const pairs = here.flatMap((one, i) => here.slice(i + 1).map((other, k) => {
    const [[ax, ay], [bx, by]] = [item(directions, i), item(directions, i + 1 + k)];
    return { one, other, fold: ax * bx + ay * by };
  }));
  for (const { one, other } of pairs.sort((p, q) => p.fold - q.fold || p.one - q.one || p.other - q.other)) {
    if (whole(partners, one) < 0 && whole(partners, other) < 0) join(partners, one, other);
  }
}

function directionFrom({ x: { values: x }, y: { values: y } }: Nodes, far: number, node: number): readonly [number, number] {
  const [dx, dy] = [real(x, far) - real(x, node), real(y, far) - real(y, node)];
  const length = Math.hypot(dx, dy);
  return [dx / length, dy / length];
}
