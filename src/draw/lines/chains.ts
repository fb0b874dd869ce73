import { flag, item, whole } from './arrays.ts';
import type { Nodes } from './nodes.ts';
import type { WeightedLink } from './weights.ts';

/** Nodes that one pen stroke follows; closed where it comes back to its start (which stands once). */
export interface Chain {
  readonly nodes: readonly number[];
  readonly closed: boolean;
}

/** For both ends of every link the link in which the stroke goes on, or −1. */
type Partners = Int32Array;

/** Joins links to long strokes: at each node a line goes on in the straightest one left. */
export function chainLinks(nodes: Nodes, links: readonly WeightedLink[]): readonly Chain[] {
  const partners = partnersOf(nodes, links);
  const used = new Uint8Array(links.length);
  const chains: Chain[] = [];
  links.forEach(({ from, to }, l) => {
    const [ahead, back] = [whole(partners, 2 * l + 1), whole(partners, 2 * l)];
    if (flag(used, l) === 0 && (ahead < 0 || back < 0)) chains.push(follow(links, partners, used, l, back < 0 ? from : to));
  });
  links.forEach(({ from }, l) => {
    if (flag(used, l) === 0) chains.push(follow(links, partners, used, l, from));
  });
  return chains;
}

function follow(links: readonly WeightedLink[], partners: Partners, used: Uint8Array, first: number, start: number): Chain {
  const walk = [start];
  let next = first;
  for (let node = start; next >= 0 && flag(used, next) === 0;) {
    used[next] = 1;
    const { from, to } = item(links, next);
    next = whole(partners, 2 * next + (node === from ? 1 : 0));
    node = node === from ? to : from;
    walk.push(node);
  }
  return next === first && walk.length > 3 ? { nodes: walk.slice(1), closed: true } : { nodes: walk, closed: false };
}

function partnersOf(nodes: Nodes, links: readonly WeightedLink[]): Partners {
  const meeting = new Map<number, number[]>();
  links.forEach(({ from, to }, l) => {
    for (const node of [from, to]) {
      const known = meeting.get(node);
      if (known) known.push(l);
      else meeting.set(node, [l]);
    }
  });
  const partners = new Int32Array(2 * links.length).fill(-1);
  for (const [node, here] of meeting) {
    for (const [one, other] of straightestPairs(nodes, links, node, here)) {
      partners[2 * one + (item(links, one).to === node ? 1 : 0)] = other;
      partners[2 * other + (item(links, other).to === node ? 1 : 0)] = one;
    }
  }
  return partners;
}

/** Pairs the links that meet at a node, the straightest pair first. */
function straightestPairs(nodes: Nodes, links: readonly WeightedLink[], node: number, here: readonly number[]): readonly (readonly [number, number])[] {
  if (here.length < 2) return [];
  if (here.length === 2) return [[item(here, 0), item(here, 1)]];
  const directions = here.map((l) => directionFrom(nodes, item(links, l), node));
  const pairs = here.flatMap((one, i) => here.slice(i + 1).map((other, k) => {
    const [[ax, ay], [bx, by]] = [item(directions, i), item(directions, i + 1 + k)];
    return { one, other, fold: ax * bx + ay * by };
  }));
  const taken = new Set<number>();
  return pairs.sort((p, q) => p.fold - q.fold || p.one - q.one || p.other - q.other).flatMap(({ one, other }) => {
    if (taken.has(one) || taken.has(other)) return [];
    taken.add(one).add(other);
    return [[one, other] as const];
  });
}

function directionFrom({ x, y }: Nodes, { from, to }: WeightedLink, node: number): readonly [number, number] {
  const far = node === from ? to : from;
  const [dx, dy] = [item(x, far) - item(x, node), item(y, far) - item(y, node)];
  const length = Math.hypot(dx, dy);
  return [dx / length, dy / length];
}
