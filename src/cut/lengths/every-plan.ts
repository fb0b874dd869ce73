import type { Wishes } from '../cover/index.ts';

/** Steps looked at: beyond so many the solver is faster. A limit that gives the same answer on every machine, as a clock would not. */
const MOST = 300_000;
/** Figures closer than this are the same: the first found stays, so that the answer hangs on no rounding. */
const SAME = 1e-9;

/** Some stock pieces cut alike. */
interface Cut {
  readonly makes: readonly number[];
  readonly times: number;
}

/** The best that can be done with some pieces left: stock pieces, what the wishes weigh, and the first step towards it. */
interface Best {
  readonly tubes: number;
  readonly weight: number;
  readonly way: number;
  readonly times: number;
}

const nothing: Best = { tubes: 0, weight: 0, way: -1, times: 0 };
const unknown: Best = { tubes: Infinity, weight: Infinity, way: -1, times: 0 };

/**
 * Of all plans that saw exactly the `demand` from as few stock pieces as can be, all of one length, the one that the
 * wishes weigh best: dynamic programming over the pieces left, `ways` being every way to fill a stock piece. Null where
 * that takes too many steps, or where a piece fits in no stock piece.
 */
export function bestOfEveryPlan(demand: readonly number[], ways: readonly (readonly number[])[], sizes: readonly number[], room: number, wishes: Wishes): readonly Cut[] | null {
  const strides = demand.map((_, piece) => demand.slice(0, piece).reduce((product, count) => product * (count + 1), 1));
  const states = demand.reduce((product, count) => product * (count + 1), 1);
  const known = new Map<number, Best>();
  let looked = 0;
  const fullestFirst = [...ways].map((makes) => ({ makes, filled: filled(makes, sizes), steps: filled(makes, strides) }))
    .sort((a, b) => b.filled - a.filled).map((way) => ({ ...way, nicety: wishes.nicety({ stock: 0, makes: way.makes }) }));
  const byFirst = demand.map((_, piece) => fullestFirst.flatMap((way, index) => (way.makes.findIndex((count) => count > 0) === piece ? [{ ...way, index }] : [])));

  const bestFor = (left: readonly number[], state: number): Best => {
    const before = known.get(state);
    if (before !== undefined) return before;
    const first = left.findIndex((count) => count > 0);
    let best = first < 0 ? nothing : unknown;
    for (const { makes, nicety, steps, index } of byFirst[first] ?? []) {
      for (let times = 1; makes.every((count, piece) => count * times <= (left[piece] ?? 0)); times += 1) {
        const rest = left.map((count, piece) => count - times * (makes[piece] ?? 0));
        looked += 1;
        if (looked > MOST) return unknown;
        if (times + Math.ceil(filled(rest, sizes) / room - SAME) > best.tubes) continue;
        const after = bestFor(rest, state - times * steps);
        const [tubes, weight] = [times + after.tubes, wishes.perWay - times * nicety + after.weight];
        if (tubes < best.tubes || (tubes === best.tubes && weight < best.weight - SAME)) best = { tubes, weight, way: index, times };
      }
    }
    known.set(state, best);
    return best;
  };

  const cuts: Cut[] = [];
  let left = demand;
  let best = bestFor(left, states - 1);
  if (looked > MOST) return null;
  while (best.way >= 0) {
    const { makes } = fullestFirst[best.way] ?? { makes: [] };
    const { times } = best;
    cuts.push({ makes, times });
    left = left.map((count, piece) => count - times * (makes[piece] ?? 0));
    best = bestFor(left, filled(left, strides));
  }
  return left.every((count) => count === 0) ? cuts : null;
}

const filled = (makes: readonly number[], sizes: readonly number[]): number => makes.reduce((sum, count, piece) => sum + count * (sizes[piece] ?? 0), 0);
