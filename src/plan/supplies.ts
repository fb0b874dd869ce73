import type { Plan, Supply, Tool } from './types.ts';

const isLike = (one: Supply, other: Supply): boolean => one.name === other.name && one.size.join() === other.size.join();

/** All that the steps take beside the item's parts, each thing of a size once. */
export function suppliesOf({ steps }: Pick<Plan, 'steps'>): readonly Supply[] {
  const all = steps.flatMap(({ supplies }) => supplies);
  return all.filter((supply, index) => all.findIndex((other) => isLike(other, supply)) === index)
    .map((supply) => ({ ...supply, count: all.filter((other) => isLike(other, supply)).reduce((sum, { count }) => sum + count, 0) }));
}

/** A size of a tool: the diameter of a bit or punch, the radius of a wheel's rim, mm. */
export interface ToolSize {
  readonly is: 'diameter' | 'radius';
  readonly mm: number;
}

/** Radius of the creasing wheel's rim across the crease, mm: blunt, so that it presses and does not cut (common practice, no source). */
export const WHEEL_RIM = 1.5;

/** Sizes of a tool that the steps need, each once, the smallest first; none for a tool of one size. */
export function toolSizesOf({ steps }: Pick<Plan, 'steps'>, tool: Tool): readonly ToolSize[] {
  if (tool === 'creaser') return [{ is: 'radius', mm: WHEEL_RIM }];
  return [...new Set(steps.flatMap(({ sizes }) => sizes[tool] ?? []))].sort((a, b) => a - b).map((mm) => ({ is: 'diameter', mm }));
}
