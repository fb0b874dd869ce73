import { joinedBy } from './connections.ts';
import type { Connection, Model, Vec3 } from './types.ts';
import { dot, times } from './vectors.ts';

/** What holds by friction alone: a bar in a sleeve without its pin, an end in its socket. */
export type PushFit = Extract<Connection, { is: 'socket' | 'sleeve' }>;

/** Ways that are less apart than this are one (the cosine). */
const ALIKE = 0.999;

/**
 * The fewest push fits of some parts, found one after the other, that have to be taped so that no part can come out of the others
 * in any straight way: what pins, panels and fittings hold, or others keep from coming out, needs none.
 */
export function looseFits(model: Pick<Model, 'connections'>, present: readonly string[]): readonly PushFit[] {
  const there = new Set(present);
  const made = model.connections.filter((each) => joinedBy(each).every((id) => there.has(id)));
  const taped: PushFit[] = [];
  for (let next = looseFit(made, taped); next !== null; next = looseFit(made, taped)) taped.push(next);
  return taped;
}

/** What moves along with one part, and what does with the other where that leaves it. */
interface Bond {
  readonly one: string;
  readonly other: string;
  /** Ways in which the first may leave the second. */
  readonly free: readonly Vec3[];
}

/** A push fit by which the least of some parts would come out; null where all hold. */
function looseFit(made: readonly Connection[], taped: readonly Connection[]): PushFit | null {
  const fits = made.filter((each): each is PushFit => (each.is === 'socket' || each.is === 'sleeve') && !taped.includes(each));
  const bonds = made.flatMap((each) => (taped.includes(each) ? chained(joinedBy(each)) : bondsOf(each)));
  const ids = [...new Set(bonds.flatMap(({ one, other }) => [one, other]))];
  const ways = fits.flatMap(freeOf).flatMap((way) => [way, times(way, -1)]).filter((way, index, all) => all.findIndex((other) => dot(way, other) > ALIKE) === index);
  let least: ReadonlySet<string> | null = null;
  for (const way of ways) {
    const drags = dragsAlong(bonds, way);
    for (const id of ids) {
      const set = reachedFrom(id, drags);
      if (set.size < ids.length && set.size < (least?.size ?? Infinity)) least = set;
    }
  }
  const out = least;
  return out === null ? null : fits.filter(({ bar, joint }) => out.has(bar) !== out.has(joint)).toSorted((a, b) => rank(a) - rank(b))[0] ?? null;
}

/** Sleeves first: they hold the least. */
const rank = ({ is }: PushFit): number => (is === 'sleeve' ? 0 : 1);

const freeOf = (fit: PushFit): readonly Vec3[] => (fit.is === 'socket' ? [fit.out] : [fit.along, times(fit.along, -1)]);

function bondsOf(connection: Connection): readonly Bond[] {
  switch (connection.is) {
    case 'socket':
    case 'sleeve': return [{ one: connection.bar, other: connection.joint, free: freeOf(connection) }];
    case 'lay': return [{ one: connection.panel, other: connection.bar, free: [connection.out] }];
    default: return chained(joinedBy(connection));
  }
}

/** Parts that nothing parts. */
const chained = (ids: readonly string[]): readonly Bond[] => ids.slice(1).map((id, index) => ({ one: ids[index] ?? id, other: id, free: [] }));

/** What each part takes along where it moves a way. */
function dragsAlong(bonds: readonly Bond[], way: Vec3): ReadonlyMap<string, readonly string[]> {
  const drags = new Map<string, string[]>();
  const drag = (id: string, along: string): void => { drags.set(id, [...drags.get(id) ?? [], along]); };
  for (const { one, other, free } of bonds) {
    if (!free.some((each) => dot(each, way) > ALIKE)) drag(one, other);
    if (!free.some((each) => dot(each, way) < -ALIKE)) drag(other, one);
  }
  return drags;
}

function reachedFrom(id: string, drags: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const set = new Set([id]);
  for (const each of set) drags.get(each)?.forEach((other) => set.add(other));
  return set;
}
