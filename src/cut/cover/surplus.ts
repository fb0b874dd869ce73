import type { CoverTask, Taken, Way } from './types.ts';

/** What is cut more often than wanted is left out of the way with the least in it by `filled`: for the longest off-cut. */
export function withoutSurplus(task: CoverTask, taken: readonly Taken[], filled: (way: Way) => number): readonly Taken[] {
  const surplus = task.demand.map((count, piece) => taken.reduce((sum, { way, times }) => sum + times * (way.makes[piece] ?? 0), 0) - count);
  const piece = surplus.findIndex((count) => count > 0);
  if (piece < 0) return taken;
  const [from] = taken.filter(({ way }) => (way.makes[piece] ?? 0) > 0).sort((a, b) => filled(a.way) - filled(b.way));
  if (from === undefined) return taken;
  const makes = from.way.makes.map((count, at) => (at === piece ? Math.max(0, count - (surplus[piece] ?? 0)) : count));
  const rest = taken.flatMap((each): Taken[] => (each !== from ? [each] : each.times > 1 ? [{ ...each, times: each.times - 1 }] : []));
  const lessened = makes.some((count) => count > 0) ? [{ way: { ...from.way, makes }, times: 1 }] : [];
  return withoutSurplus(task, joined([...rest, ...lessened]), filled);
}

/** Equal ways counted together. */
function joined(taken: readonly Taken[]): readonly Taken[] {
  const same = (a: Way, b: Way): boolean => a.stock === b.stock && a.makes.every((count, piece) => count === b.makes[piece]);
  return taken.reduce<readonly Taken[]>((all, each) => {
    const before = all.find(({ way }) => same(way, each.way));
    return before === undefined ? [...all, each] : all.map((other) => (other === before ? { ...other, times: other.times + each.times } : other));
  }, []);
}
