import { dimensionedText } from './dimensioned-text.ts';
import { NoValue } from './expression-value.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import type { NamedExpression, PlacedExpression, ReadPiece } from './pieces.ts';
import type { Fault, Item, Quantity } from './types.ts';
import { quoted } from './yaml-source.ts';
import type { YamlSource } from './yaml-source.ts';

type Names = Readonly<Record<string, Quantity>>;

/**
 * Every name an expression of the item may use in one size: its parameters and its named expressions, in base units.
 * Throws a RangeError for a size the item does not have. For `top` of a deck add `index` (a count from 0).
 */
export function namesOf(item: Item, sizeName: string): Names {
  const size = item.sizes.find(({ name }) => name === sizeName);
  if (size === undefined) throw new RangeError(`${item.name} has no size ${sizeName}`);
  const names: Record<string, Quantity> = { ...size.values };
  for (const { name, expression } of item.expressions) names[name] = expression.evaluate(names);
  return names;
}

/** Works out every expression for one size and tells those that give nothing, or nothing that can be built. */
export function valueFaults(
  source: YamlSource, size: { readonly name: string; readonly values: Names }, expressions: readonly NamedExpression[], pieces: readonly ReadPiece[],
): Fault[] {
  const faults: Fault[] = [];
  const names: Record<string, Quantity> = { ...size.values };
  const work = (placed: PlacedExpression, known: Names): Quantity | null => {
    if (!placed.needs.every((name) => Object.hasOwn(known, name))) return null;
    const value = valueOrFault(source, placed, known, size.name);
    if ('dimension' in value) return value;
    faults.push(value);
    return null;
  };
  for (const named of expressions) {
    const value = work(named, names);
    if (value !== null) names[named.name] = value;
  }
  for (const { expressions: { length, width, depth, count, top } } of pieces) {
    for (const placed of [length, width, depth]) {
      if (placed !== undefined) faults.push(...notBuildable(source, placed, work(placed, names), size.name, messages.positiveResult, (value) => value > 0));
    }
    if (count === undefined || top === undefined) continue;
    const howMany = work(count, names);
    const buildable = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= limits.pieceCount;
    faults.push(...notBuildable(source, count, howMany, size.name, messages.countResult(limits.pieceCount), buildable));
    const places = howMany !== null && buildable(howMany.value) ? Array.from({ length: howMany.value }, (_, place) => place) : [0];
    for (const place of places) {
      const height = work(top, { ...names, index: { value: place, dimension: 'count' } });
      const sunk = notBuildable(source, top, height, size.name, messages.positiveResult, (value) => value > 0);
      faults.push(...sunk);
      if (sunk.length > 0) break;
    }
  }
  return faults;
}

function valueOrFault(source: YamlSource, { path, value, expression }: PlacedExpression, names: Names, size: string): Quantity | Fault {
  try {
    return value(names);
  } catch (error) {
    if (!(error instanceof NoValue)) throw error;
    return error.result === null
      ? source.fault(path, error.message)
      : source.fault(path, error.message, messages.inSize(messages.gives(quoted(expression.text), messages.noNumber), size));
  }
}

function notBuildable(
  source: YamlSource, { path, expression }: PlacedExpression, result: Quantity | null, size: string, remedy: string, holds: (value: number) => boolean,
): Fault[] {
  if (result === null || holds(result.value)) return [];
  return [source.fault(path, remedy, messages.inSize(messages.gives(quoted(expression.text), dimensionedText(result)), size))];
}
