import { readExpression } from './expressions.ts';
import type { ReadExpression, Wanted } from './expressions.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import type { Fault } from './types.ts';
import type { FieldPath, YamlSource } from './yaml-source.ts';

/** An expression at its place in the file. */
export interface PlacedExpression extends ReadExpression {
  readonly path: FieldPath;
}

/** What an expression may name at its place in the file. */
export interface Known {
  readonly names: readonly string[];
  /** Names that only pieces further down may use, each with the piece that gives it. */
  readonly later?: ReadonlyMap<string, string>;
}

export type ExpressionReader = (path: FieldPath, text: string | number, wanted: Wanted, known: Known) => PlacedExpression | null;

/** Reads expressions, or puts their faults (text, unknown names) into `faults` and gives null. */
export function expressionReader(source: YamlSource, faults: Fault[]): ExpressionReader {
  return (path, text, wanted, { names, later }) => {
    const { position, field } = source.fault(path, '');
    const reading = readExpression(text, position, field, wanted);
    if ('remedy' in reading) {
      faults.push(source.fault(path, reading.remedy));
      return null;
    }
    const unknown = reading.value.needs.filter((name) => !names.includes(name));
    for (const name of unknown) {
      const giver = later?.get(name);
      const remedy = giver === undefined ? messages.unknownName(name, nearestName(name, names), names) : messages.laterPoint(name, giver);
      faults.push(source.fault(path, remedy));
    }
    return unknown.length > 0 ? null : { ...reading.value, path };
  };
}
