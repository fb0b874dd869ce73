import type { CoverStock } from './types.ts';

/** Costs are reckoned to this; of finer ones nothing is rounded up. */
const FINEST = 0.01;
/** More sums than these are not looked through. */
const MOST_SUMS = 4_000_000;
const NEAR = 1e-6;
/** Error of a bound against its size. */
const NOISE = 1e-9;

/**
 * What whole covers can cost: sums of the stocks' costs, no stock more often than it is there. Gives for a bound the
 * least such sum that is not below it; `most`, a cost known to be possible, where there is none under that.
 */
export function wholeCosts(stocks: readonly CoverStock[], most: number): (bound: number) => number {
  const costs = stocks.map(({ cost }) => Math.round(cost / FINEST));
  if (stocks.some(({ cost }, index) => Math.abs(cost - (costs[index] ?? 0) * FINEST) > NEAR)) return (bound) => bound;
  const unit = costs.reduce(greatestCommon, 0) || 1;
  const size = Math.floor((most / FINEST + NEAR) / unit) + 1;
  if (size > MOST_SUMS) return (bound) => Math.max(bound, Math.ceil(eased(bound) / (unit * FINEST)) * unit * FINEST);
  const sums = sumsOf(stocks.flatMap(({ count }, index) => {
    const cost = (costs[index] ?? 0) / unit;
    return cost === 0 || count === 0 ? [] : [{ cost, count: count ?? Infinity }];
  }), size);
  return (bound) => {
    const from = Math.max(0, Math.ceil(eased(bound) / (unit * FINEST)));
    const least = sums.indexOf(1, from);
    return least < 0 ? Math.max(bound, most) : Math.max(bound, least * unit * FINEST);
  };
}

/** A bound less what reckoning may have added to it. */
const eased = (bound: number): number => bound - Math.max(NEAR, bound * NOISE);

/** Which sums under `size` the costs give: 1 where one can be reached. */
function sumsOf(costs: readonly { readonly cost: number; readonly count: number }[], size: number): Uint8Array {
  const reached = new Uint8Array(size);
  reached[0] = 1;
  for (const { cost, count } of costs) {
    // How many of this cost the nearest way to a sum takes.
    const taken = new Int32Array(size);
    for (let sum = cost; sum < size; sum += 1) {
      if (reached[sum] === 1 || reached[sum - cost] !== 1) continue;
      const times = (taken[sum - cost] ?? 0) + 1;
      if (times > count) continue;
      reached[sum] = 1;
      taken[sum] = times;
    }
  }
  return reached;
}

export function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}
