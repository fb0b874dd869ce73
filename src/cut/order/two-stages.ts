/** A stock of either material, from the pile or from whole kits, with what one piece of it measures, damage left out. */
export interface Pile {
  readonly count: number | null;
  readonly from: 'stock' | 'kit';
  readonly measure: number;
}

interface Planned<Way extends { readonly stock: number; readonly times: number }> {
  readonly ways: readonly Way[];
  readonly missing: readonly number[];
  readonly bound: number;
  readonly cost: number;
  readonly proven: boolean;
}

export interface Staged<Way> {
  readonly ways: readonly Way[];
  readonly missing: readonly number[];
  readonly fromKits: number;
  readonly fewestFromKits: number;
  readonly leastStock: number;
  readonly proven: boolean;
}

/**
 * First as few pieces from whole kits as can be, then, with no more of those, as little stock as can be. `plan` plans
 * with a cost and a count for every pile, and the nicest of the cheapest where it is the `last` time. Where there is
 * nothing but kits the two are one.
 */
export function inTwoStages<Way extends { readonly stock: number; readonly times: number }>(
  piles: readonly Pile[], plan: (costs: readonly number[], counts: readonly (number | null)[], last: boolean) => Planned<Way>,
): Staged<Way> {
  const kitCosts = piles.map(({ from }) => (from === 'kit' ? 1 : 0));
  const onlyKits = piles.every(({ from }) => from === 'kit');
  const fewest = plan(kitCosts, piles.map(({ count }) => count), onlyKits);
  const fromKits = fewest.ways.reduce((sum, { stock, times }) => sum + (piles[stock]?.from === 'kit' ? times : 0), 0);
  const kitMeasure = Math.max(0, ...piles.map(({ from, measure }) => (from === 'kit' ? measure : 0)));
  const fewestFromKits = fewest.missing.some((count) => count > 0) ? fromKits : Math.max(0, Math.round(Math.min(fromKits, fewest.bound)));
  if (onlyKits) {
    return { ways: fewest.ways, missing: fewest.missing, fromKits, fewestFromKits, leastStock: fewestFromKits * kitMeasure, proven: fewest.proven };
  }
  const least = plan(piles.map(({ measure }) => measure), piles.map(({ from, count }) => (from === 'kit' ? fromKits : count)), true);
  return {
    ways: least.ways, missing: least.missing, fromKits, fewestFromKits,
    leastStock: Math.min(least.bound, least.cost), proven: fewest.proven && least.proven,
  };
}
