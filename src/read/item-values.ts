import { NoValue } from './expression-value.ts';
import { dimensionedText } from './dimensioned-text.ts';
import { messages } from './messages.ts';
import type { NamedExpression } from './named-expressions.ts';
import { kitValues } from './structure/kit-names.ts';
import type { PlacedExpression } from './placed-expressions.ts';
import type { Fault, Item, Quantity } from './types.ts';
import { quoted } from './yaml-source.ts';
import type { YamlSource } from './yaml-source.ts';

export type Names = Readonly<Record<string, Quantity>>;

/** One size variant as it is worked out: what is known so far, and the faults met on the way. */
export interface Working {
  readonly source: YamlSource;
  readonly size: string;
  readonly names: Record<string, Quantity>;
  readonly faults: Fault[];
}

/**
 * Every name an expression of the item may use in one size: its parameters and its named expressions, in base units.
 * Throws a RangeError for a size the item does not have. For `top` of a deck and `level` of a frame add `index`
 * (a count from 0); for expressions of pieces add the points of the pieces above (see `pointName`).
 */
export function namesOf(item: Item, sizeName: string): Names {
  const size = item.sizes.find(({ name }) => name === sizeName);
  if (size === undefined) throw new RangeError(`${item.name} has no size ${sizeName}`);
  const names: Record<string, Quantity> = { ...size.values };
  const ofKit = kitValues(item.kit);
  for (const { name, expression } of item.expressions) names[name] = expression.evaluate({ ...ofKit, ...names });
  return names;
}

/** Works out the named expressions into `names`. */
export function workOut(working: Working, expressions: readonly NamedExpression[]): void {
  for (const named of expressions) {
    const value = valueOf(working, named);
    if (value !== null) working.names[named.name] = value;
  }
}

/** The value of an expression; null when it has none, which is told, or when it needs a name without a value, which is told elsewhere. */
function valueOf({ source, size, names, faults }: Working, placed: PlacedExpression, more: Names = {}): Quantity | null {
  const known = { ...names, ...more };
  if (!placed.needs.every((name) => Object.hasOwn(known, name))) return null;
  const value = valueOrFault(source, placed, known, size);
  if ('dimension' in value) return value;
  faults.push(value);
  return null;
}

/** The value of an expression if it has one that `holds`; if it does not hold, that is told. */
export function valueThat(
  working: Working, placed: PlacedExpression, remedy: string, holds: (value: number) => boolean, more: Names = {},
): number | null {
  const result = valueOf(working, placed, more);
  if (result === null || holds(result.value)) return result?.value ?? null;
  const { source, size, faults } = working;
  faults.push(source.fault(placed.path, remedy, messages.inSize(messages.gives(quoted(placed.expression.text), dimensionedText(result)), size)));
  return null;
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
