import type { CoverTask, Way } from '../cover/index.ts';

/** More ways than this are not weighed against each other. */
const WEIGHED = 250;
/** The demand for a piece may be shared among so many panels. */
const SHARES = [1, 2, 3, 4];

/**
 * The ways found and lesser ones: without a kind of piece, or with just its share of the demand, so that few panels
 * take all of it and the others leave larger off-cuts.
 */
export function lesserWays(task: CoverTask, found: readonly Way[]): readonly Way[] {
  const ways = new Map<string, Way>();
  const add = (way: Way): void => { if (way.makes.some((count) => count > 0)) ways.set(`${way.stock}:${way.makes.join(',')}`, way); };
  found.forEach(add);
  for (const way of found) {
    way.makes.forEach((count, piece) => {
      if (count === 0) return;
      const lessened = [0, ...SHARES.map((share) => Math.ceil((task.demand[piece] ?? 0) / share))].filter((less) => less < count);
      for (const less of lessened) add({ ...way, makes: way.makes.map((each, at) => (at === piece ? less : each)) });
    });
  }
  return [...ways.values()].slice(0, WEIGHED);
}
