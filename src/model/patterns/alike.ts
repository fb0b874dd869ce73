import type { CutPattern, Pattern } from '../types.ts';

/** Thousandths of a millimetre: below any cut. */
const DIGITS = 3;

/** Patterns that are cut alike become one, with the parts of all of them, in the order they first come. */
export function alikePatterns(patterns: readonly { readonly pattern: Pattern; readonly partId: string }[]): readonly CutPattern[] {
  const found = new Map<string, CutPattern>();
  for (const { pattern, partId } of patterns) {
    const key = patternText(pattern);
    const known = found.get(key) ?? { ...pattern, partIds: [] };
    found.set(key, { ...known, partIds: [...known.partIds, partId] });
  }
  return [...found.values()];
}

/** What is cut, marked and punched, as a text: names of flaps do not matter. */
export const patternText = ({ form, panel, outline, flaps, holes }: Pattern): string => JSON.stringify(
  { form, panel, outline, flaps: flaps.map(({ side, root, bends, edge, strips }) => ({ side, root, bends, edge, strips })), holes: holes.map(({ at, diameter, depth, face }) => ({ at, diameter, depth, face })) },
  (_, value: unknown) => (typeof value === 'number' ? Number(value.toFixed(DIGITS)) + 0 : value),
);
