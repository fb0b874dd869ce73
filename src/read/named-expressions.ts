import { expressionSchema } from './item-schema.ts';
import { messages } from './messages.ts';
import { takenNameFaults } from './parameters.ts';
import { expressionReader } from './placed-expressions.ts';
import type { PlacedExpression } from './placed-expressions.ts';
import { inOrderOfNeed } from './rings.ts';
import type { Fault } from './types.ts';
import { goodEntries, sectionEntries } from './validate.ts';
import type { YamlSource } from './yaml-source.ts';

export interface NamedExpression extends PlacedExpression {
  readonly name: string;
}

/** The named expressions that can be read, each after those it needs; faults of texts, names and rings. */
export function readExpressions(
  source: YamlSource, raw: unknown, parameterNames: readonly string[], kitNames: readonly string[] = [],
): { readonly expressions: readonly NamedExpression[]; readonly faults: readonly Fault[] } {
  const names = sectionEntries(raw).map(([name]) => name);
  const faults = takenNameFaults(source, 'expressions', names);
  for (const name of names.filter((other) => parameterNames.includes(other))) faults.push(source.faultAtName(['expressions', name], messages.sameNameTwice));
  const reader = expressionReader(source, faults);
  const known = { names: [...new Set([...parameterNames, ...names, ...kitNames])] };
  const byName = new Map<string, NamedExpression>();
  for (const [name, text] of goodEntries(raw, expressionSchema)) {
    const read = reader(['expressions', name], text, null, known);
    if (read !== null) byName.set(name, { ...read, name });
  }
  const { order, rings } = inOrderOfNeed(new Map([...byName].map(([name, { needs }]) => [name, needs])));
  for (const ring of rings) faults.push(source.fault(['expressions', ring[0] ?? ''], messages.cycle(ring)));
  return { expressions: order.flatMap((name) => byName.get(name) ?? []), faults };
}
