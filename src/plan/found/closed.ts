import { addBit, emptyBits, indicesOf, type Bits } from './bits.ts';

/** The walk that finds them (Tarjan 1972): in which order units were met, and which are still open. */
interface Walk {
  readonly table: readonly Bits[];
  readonly set: Bits;
  readonly met: Int32Array;
  readonly low: Int32Array;
  readonly open: Uint8Array;
  readonly stack: number[];
  readonly closed: Bits[];
  count: number;
}

/** Of a set, the smallest parts that block each other in a ring and are blocked by nothing else in it; `table` tells who blocks whom. */
export function closedIn(table: readonly Bits[], set: Bits, size: number): readonly Bits[] {
  const walk: Walk = {
    table, set, met: new Int32Array(size).fill(-1), low: new Int32Array(size), open: new Uint8Array(size), stack: [], closed: [], count: 0,
  };
  for (const index of indicesOf(set)) if (walk.met[index] === -1) visit(walk, index);
  return walk.closed;
}

/** Visits a unit and all it is blocked by; tells whether the way from it leads out of its own ring. */
function visit(walk: Walk, index: number): boolean {
  walk.met[index] = walk.count;
  walk.low[index] = walk.count;
  walk.count += 1;
  walk.stack.push(index);
  walk.open[index] = 1;
  const leadsOut = visitBlockers(walk, index);
  if (walk.low[index] !== walk.met[index]) return leadsOut;
  const ring = takenRing(walk, index, walk.set.length * 32);
  if (!leadsOut) walk.closed.push(ring);
  return true;
}

function visitBlockers(walk: Walk, index: number): boolean {
  const blockers = walk.table[index] ?? new Uint32Array();
  let leadsOut = false;
  for (let at = 0; at < blockers.length; at++) {
    for (let word = ((blockers[at] ?? 0) & (walk.set[at] ?? 0)) >>> 0; word !== 0; word = (word & (word - 1)) >>> 0) {
      if (follow(walk, index, at * 32 + 31 - Math.clz32(word & -word))) leadsOut = true;
    }
  }
  return leadsOut;
}

function follow(walk: Walk, from: number, to: number): boolean {
  if (walk.met[to] === -1) {
    const leadsOut = visit(walk, to);
    walk.low[from] = Math.min(walk.low[from] ?? 0, walk.low[to] ?? 0);
    return leadsOut;
  }
  if (walk.open[to] === 0) return true;
  walk.low[from] = Math.min(walk.low[from] ?? 0, walk.met[to] ?? 0);
  return false;
}

function takenRing(walk: Walk, first: number, size: number): Bits {
  const ring = emptyBits(size);
  for (let index = walk.stack.pop(); index !== undefined; index = walk.stack.pop()) {
    addBit(ring, index);
    walk.open[index] = 0;
    if (index === first) break;
  }
  return ring;
}
