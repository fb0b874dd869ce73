import { item } from './arrays.ts';
import type { Nodes } from './nodes.ts';
import type { WeightedLink } from './weights.ts';

/** A side of a link with a body on its left. */
interface Rim {
  readonly from: number;
  readonly to: number;
}

/** Rings of nodes round the visible part of each body: the body lies on the left. */
export function ringsOf(nodes: Nodes, links: readonly WeightedLink[], bodies: number): readonly (readonly (readonly number[])[])[] {
  const rims: Rim[][] = Array.from({ length: bodies }, () => []);
  for (const { from, to, left, right } of links) {
    if (left === right) continue;
    if (left >= 0) item(rims, left).push({ from, to });
    if (right >= 0) item(rims, right).push({ from: to, to: from });
  }
  return rims.map((own) => closeRings(nodes, walkRims(nodes, own)));
}

/** Walks from rim to rim, turning as sharply left as can be, so that each ring goes round one face. */
function walkRims(nodes: Nodes, rims: readonly Rim[]): readonly (readonly number[])[] {
  const leaving = new Map<number, Rim[]>();
  const arrivals = new Map<number, number>();
  for (const rim of rims) {
    leaving.set(rim.from, [...(leaving.get(rim.from) ?? []), rim]);
    arrivals.set(rim.to, (arrivals.get(rim.to) ?? 0) + 1);
  }
  const spare = ({ from }: Rim): number => (leaving.get(from)?.length ?? 0) - (arrivals.get(from) ?? 0);
  const loose = rims.filter((rim) => spare(rim) > 0);
  const used = new Set<Rim>();
  return [...loose, ...rims].filter((rim) => !used.has(rim)).flatMap((start) => {
    if (used.has(start)) return [];
    const walk = [start.from];
    for (let rim: Rim | undefined = start; rim; rim = sharpestLeft(nodes, rim, (leaving.get(rim.to) ?? []).filter((next) => !used.has(next)))) {
      used.add(rim);
      walk.push(rim.to);
      if (rim.to === start.from) break;
    }
    return [walk];
  });
}

function sharpestLeft(nodes: Nodes, arriving: Rim, choices: readonly Rim[]): Rim | undefined {
  if (choices.length < 2) return choices[0];
  const turn = (next: Rim): number => turnBetween(nodes, arriving, next);
  return choices.reduce((best, next) => (turn(next) > turn(best) ? next : best));
}

/** Turn to the left between two rims, −π…π. */
function turnBetween({ x, y }: Nodes, one: Rim, next: Rim): number {
  const [ax, ay] = [item(x, one.to) - item(x, one.from), item(y, one.to) - item(y, one.from)];
  const [bx, by] = [item(x, next.to) - item(x, next.from), item(y, next.to) - item(y, next.from)];
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

function distance({ x, y }: Nodes, a: number, b: number): number {
  return Math.hypot(item(x, a) - item(x, b), item(y, a) - item(y, b));
}
