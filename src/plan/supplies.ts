import type { Plan, Supply, Tool } from './types.ts';

const isLike = (one: Supply, other: Supply): boolean => one.name === other.name && one.size.join() === other.size.join();

/** All that the steps take beside the item's parts, each thing of a size once. */
export function suppliesOf({ steps }: Pick<Plan, 'steps'>): readonly Supply[] {
  const all = steps.flatMap(({ supplies }) => supplies);
  return all.filter((supply, index) => all.findIndex((other) => isLike(other, supply)) === index)
    .map((supply) => ({ ...supply, count: all.filter((other) => isLike(other, supply)).reduce((sum, { count }) => sum + count, 0) }));
}

/** Diameters of a tool's bits or punches that the steps need, each once, the smallest first, mm; none for a tool of one size. */
export const toolSizesOf = ({ steps }: Pick<Plan, 'steps'>, tool: Tool): readonly number[] =>
  [...new Set(steps.flatMap(({ sizes }) => sizes[tool] ?? []))].sort((a, b) => a - b);
