import { flag, item, real, whole } from './arrays.ts';
import type { Nodes } from './nodes.ts';
import type { WeightedLinks } from './weights.ts';

/** Sides of links with a body on their left, body by body. */
interface Rims {
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Where each body's rims begin; one more entry than bodies. */
  readonly starts: Int32Array;
}

/** Numbers for each node that one body's walk needs; they are left as they were. */
interface AtNodes {
  /** The first rim that leaves, or −1. */
  readonly firstLeaving: Int32Array;
  /** Rims that leave less rims that arrive. */
  readonly spare: Int32Array;
}

/** Rings of nodes round the visible part of each body: the body lies on the left. */
export function ringsOf(nodes: Nodes, links: WeightedLinks, bodies: number): readonly (readonly (readonly number[])[])[] {
  const rims = rimsOf(links, bodies);
  const at = { firstLeaving: new Int32Array(nodes.x.count).fill(-1), spare: new Int32Array(nodes.x.count) };
  const next = new Int32Array(rims.from.length);
  const used = new Uint8Array(rims.from.length);
  return Array.from({ length: bodies }, (_, b) => closeRings(nodes, walkRims(nodes, rims, whole(rims.starts, b), whole(rims.starts, b + 1), at, next, used)));
}

function rimsOf(links: WeightedLinks, bodies: number): Rims {
  const starts = new Int32Array(bodies + 1);
  eachRim(links, (body) => { starts[body + 1] = whole(starts, body + 1) + 1; });
  for (let b = 0; b < bodies; b++) starts[b + 1] = whole(starts, b + 1) + whole(starts, b);
  const place = starts.slice();
  const [from, to] = [new Int32Array(whole(starts, bodies)), new Int32Array(whole(starts, bodies))];
  eachRim(links, (body, start, end) => {
    const rim = whole(place, body);
    place[body] = rim + 1;
    from[rim] = start;
    to[rim] = end;
  });
  return { from, to, starts };
}

function eachRim({ count, from, to, left, right }: WeightedLinks, take: (body: number, from: number, to: number) => void): void {
  for (let l = 0; l < count; l++) {
    const [onLeft, onRight] = [whole(left, l), whole(right, l)];
    if (onLeft === onRight) continue;
    if (onLeft >= 0) take(onLeft, whole(from, l), whole(to, l));
    if (onRight >= 0) take(onRight, whole(to, l), whole(from, l));
  }
}

/** Walks from rim to rim, turning as sharply left as can be, so that each ring goes round one face. */
function walkRims(nodes: Nodes, { from, to }: Rims, first: number, end: number, { firstLeaving, spare }: AtNodes, next: Int32Array, used: Uint8Array): readonly (readonly number[])[] {
  for (let rim = end - 1; rim >= first; rim--) {
    next[rim] = whole(firstLeaving, whole(from, rim));
    firstLeaving[whole(from, rim)] = rim;
    spare[whole(from, rim)] = whole(spare, whole(from, rim)) + 1;
    spare[whole(to, rim)] = whole(spare, whole(to, rim)) - 1;
  }
  const walks: number[][] = [];
  const walkFrom = (start: number): void => {
    const walk = [whole(from, start)];
    for (let rim = start; rim >= 0; rim = sharpestLeft(nodes, from, to, rim, whole(firstLeaving, whole(to, rim)), next, used)) {
      used[rim] = 1;
      walk.push(whole(to, rim));
      if (whole(to, rim) === whole(from, start)) break;
    }
    walks.push(walk);
  };
  for (let rim = first; rim < end; rim++) if (flag(used, rim) === 0 && whole(spare, whole(from, rim)) > 0) walkFrom(rim);
  for (let rim = first; rim < end; rim++) if (flag(used, rim) === 0) walkFrom(rim);
  for (let rim = first; rim < end; rim++) {
    for (const node of [whole(from, rim), whole(to, rim)]) {
      firstLeaving[node] = -1;
      spare[node] = 0;
    }
  }
  return walks;
}

/** Of the unused rims in a list the one that turns most to the left, or −1. */
function sharpestLeft(nodes: Nodes, from: Int32Array, to: Int32Array, arriving: number, choices: number, next: Int32Array, used: Uint8Array): number {
  let best = -1;
  let most = -Infinity;
  for (let rim = choices; rim >= 0; rim = whole(next, rim)) {
    if (flag(used, rim) === 1) continue;
    const turn = turnBetween(nodes, from, to, arriving, rim);
    if (best >= 0 && turn <= most) continue;
    best = rim;
    most = turn;
  }
  return best;
}

/** Turn to the left between two rims, −π…π. */
function turnBetween({ x: { values: x }, y: { values: y } }: Nodes, from: Int32Array, to: Int32Array, one: number, next: number): number {
  const ax = real(x, whole(to, one)) - real(x, whole(from, one));
  const ay = real(y, whole(to, one)) - real(y, whole(from, one));
  const bx = real(x, whole(to, next)) - real(x, whole(from, next));
  const by = real(y, whole(to, next)) - real(y, whole(from, next));
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/** Closes walks that lack a link: each open end goes on at the nearest open start. */
function closeRings(nodes: Nodes, walks: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const isClosed = (walk: readonly number[]): boolean => walk[0] === walk[walk.length - 1];
  const rings = walks.filter(isClosed).map((walk) => walk.slice(1));
  const open = walks.filter((walk) => !isClosed(walk)).map((walk) => [...walk]);
  for (let walk = open.pop(); walk; walk = open.pop()) {
    const end = item(walk, walk.length - 1);
    const away = (other: readonly number[]): number => distance(nodes, end, item(other, 0));
    const nearest = [...open, walk].reduce((best, other) => (away(other) < away(best) ? other : best));
    if (nearest === walk) rings.push(walk);
    else open.splice(open.indexOf(nearest), 1, [...walk, ...nearest]);
  }
  return rings.filter((ring) => ring.length > 2);
}

function distance({ x: { values: x }, y: { values: y } }: Nodes, a: number, b: number): number {
  return Math.hypot(real(x, a) - real(x, b), real(y, a) - real(y, b));
}
