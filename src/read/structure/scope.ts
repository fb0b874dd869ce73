import { dimensionedText } from '../dimensioned-text.ts';
import { dimensionWords, NoValue } from '../expression-value.ts';
import { limits } from '../limits.ts';
import { messages } from '../messages.ts';
import { expressionReader, type PlacedExpression } from '../placed-expressions.ts';
import type { Dimension, Fault, Quantity } from '../types.ts';
import { fieldName, quoted, type FieldPath, type YamlSource } from '../yaml-source.ts';
import type { KitNames } from './kit-names.ts';
import type { Named, Triple } from './types.ts';

export type Values = Readonly<Record<string, Quantity>>;

/** One size of one file while its structure is written out. */
export interface Scope {
  readonly source: YamlSource;
  readonly size: string;
  readonly kit: KitNames;
  /** All names an expression may use here, whether they have a value in this size or not. */
  readonly known: readonly string[];
  readonly values: Values;
  /** Tells a fault of a field, the first only. */
  readonly tell: (path: FieldPath, remedy: string, found?: string) => void;
  /** The same of a part that is written out, where its file tells of it. */
  readonly tellOf: (part: Named, remedy: string, found: string) => void;
  /** Reads an expression; tells its fault and gives null when it is none. */
  readonly read: (path: FieldPath, text: string | number, more: readonly string[]) => PlacedExpression | null;
  /** How many of each section there are so far, all repeats together. */
  readonly made: Map<string, number>;
}

/** Where faults go, and the fields that are told of: what is wrong with another repeat or in another size comes right with the first. */
export interface Telling {
  readonly faults: Fault[];
  readonly told: Set<string>;
}

export function newScope(source: YamlSource, size: string, kit: KitNames, known: readonly string[], values: Values, { faults, told }: Telling, made: Map<string, number>): Scope {
  const once = (fault: Fault): void => {
    const key = `${fault.position.file} ${fault.field}`;
    if (!told.has(key)) faults.push(fault);
    told.add(key);
  };
  return {
    source, size, kit, known, values, made,
    tell: (path, remedy, found) => once(source.fault(path, remedy, found === undefined ? undefined : messages.inSize(found, size))),
    tellOf: ({ position, field }, remedy, found) => once({ position, field, found, remedy }),
    read: (path, text, more) => {
      const own: Fault[] = [];
      const placed = expressionReader(source, own)(path, text, null, { names: [...new Set([...known, ...more])] });
      own.forEach(once);
      return placed;
    },
  };
}

/** One of the parts that an entry of the file makes: its name, and the values of its indexes. */
export interface Instance extends Named {
  readonly path: FieldPath;
  readonly indexes: Values;
}

export type Section = 'points' | 'bars' | 'panels' | 'cables' | 'fittings' | 'uses';

/** Every part that an entry makes: one, or one for each value of its indexes. */
export function instancesOf(scope: Scope, section: Section, name: string, repeats: Readonly<Record<string, string>> | undefined): readonly Instance[] {
  const path: FieldPath = [section, name];
  const ranges = Object.entries(repeats ?? {}).map(([index, text]) => ({ index, range: rangeOf(scope, [...path, 'for', index], index, text) }));
  if (ranges.some(({ range }) => range === null)) return [];
  const count = ranges.reduce((product, { range }) => product * (range === null ? 0 : range[1] - range[0] + 1), 1);
  const all = (scope.made.get(section) ?? 0) + count;
  if (all > limits.parts) {
    scope.tell(repeats === undefined ? path : [...path, 'for'], messages.structure.tooMany(limits.parts));
    return [];
  }
  scope.made.set(section, all);
  const combined = ranges.reduce<readonly (readonly number[])[]>((sofar, { range }) =>
    sofar.flatMap((index) => counted(range ?? [0, 0]).map((value) => [...index, value])), [[]]);
  const { position, field } = scope.source.fault(path, '');
  return combined.map((index) => ({
    name: [name, ...index].join('.'), of: name, index, path, position, field,
    indexes: Object.fromEntries(ranges.map(({ index: called }, place) => [called, { value: index[place] ?? 0, dimension: 'count' }])),
  }));
}

const counted = ([first, last]: readonly [number, number]): readonly number[] => Array.from({ length: last - first + 1 }, (_, place) => first + place);

/** `0..decks-1`: whole numbers in order, few enough. */
function rangeOf(scope: Scope, path: FieldPath, index: string, text: string): readonly [number, number] | null {
  if (scope.known.includes(index)) scope.tell(path, messages.structure.indexTaken(index));
  const ends = text.split('..');
  const [first, last] = ends.map((end) => scope.read(path, end.trim(), []));
  if (ends.length !== 2 || first === undefined || last === undefined) {
    scope.tell(path, messages.structure.range);
    return null;
  }
  if (first === null || last === null) return null;
  const values = [first, last].map((end) => amount(scope, end, {}, ['count']));
  const [least, most] = values;
  if (least === null || most === null || least === undefined || most === undefined) return null;
  const isRange = Number.isSafeInteger(least) && Number.isSafeInteger(most) && least >= 0 && most >= least;
  if (isRange && most - least < limits.parts) return [least, most];
  scope.tell(path, isRange ? messages.structure.tooMany(limits.parts) : messages.structure.rangeEnds, messages.gives(quoted(text), `${least}..${most}`));
  return null;
}

/** The value of an expression, of one of some dimensions; nought may stand without a unit. Null when it has none, which is told or comes of what is told. */
export function amount(scope: Scope, placed: PlacedExpression, indexes: Values, wanted: readonly Dimension[]): number | null {
  const known = { ...scope.values, ...indexes };
  if (!placed.needs.every((name) => Object.hasOwn(known, name))) return null;
  try {
    const { value, dimension } = placed.value(known);
    const isPlain = dimension === 'count' || dimension === 'ratio';
    if (wanted.includes(dimension) || (value === 0 && isPlain) || (isPlain && wanted.includes('ratio'))) return value;
    scope.tell(placed.path, messages.resultInstead(dimensionWords(wanted[0] ?? 'length'), dimensionWords(dimension)), quoted(placed.expression.text));
  } catch (error) {
    if (!(error instanceof NoValue)) throw error;
    scope.tell(placed.path, error.message, messages.gives(quoted(placed.expression.text), messages.noNumber));
  }
  return null;
}

/** A field of an entry, read once: gives its value for each instance. */
export function measuredField(scope: Scope, path: FieldPath, text: string | number | undefined, indexNames: readonly string[], wanted: readonly Dimension[]): (indexes: Values) => number | null {
  if (text === undefined) return () => null;
  const placed = scope.read(path, text, indexNames);
  return (indexes) => (placed === null ? null : amount(scope, placed, indexes, wanted));
}

/** As `measuredField`, for a length above zero. */
export function lengthField(scope: Scope, path: FieldPath, text: string | number | undefined, indexNames: readonly string[]): (indexes: Values) => number | null {
  const value = measuredField(scope, path, text, indexNames, ['length']);
  return (indexes) => {
    const length = value(indexes);
    if (length === null || length > 0) return length;
    scope.tell(path, messages.positiveResult, messages.gives(quoted(String(text)), dimensionedText({ value: length, dimension: 'length' })));
    return null;
  };
}

/** Three values: a place in mm, or a direction of plain numbers. */
export function tripleField(
  scope: Scope, path: FieldPath, texts: readonly (string | number)[], indexNames: readonly string[], wanted: 'length' | 'ratio',
): (indexes: Values) => Triple | null {
  const fields = texts.map((text, place) => measuredField(scope, [...path, place], text, indexNames, [wanted]));
  return (indexes) => {
    const [x, y, z] = fields.map((field) => field(indexes));
    return typeof x === 'number' && typeof y === 'number' && typeof z === 'number' ? [x, y, z] : null;
  };
}

/** Directions as item files name them. */
export const FACES: Readonly<Record<string, Triple>> = {
  up: [0, 0, 1], down: [0, 0, -1], left: [-1, 0, 0], right: [1, 0, 0], front: [0, -1, 0], back: [0, 1, 0],
};

/** A direction by name or by three plain numbers, of length 1. */
export function directionField(scope: Scope, path: FieldPath, given: string | readonly (string | number)[], indexNames: readonly string[]): (indexes: Values) => Triple | null {
  if (typeof given === 'string') return () => FACES[given] ?? null;
  const triple = tripleField(scope, path, given, indexNames, 'ratio');
  return (indexes) => {
    const direction = triple(indexes);
    if (direction === null) return null;
    const length = Math.hypot(...direction);
    if (length > 1e-9) return [direction[0] / length, direction[1] / length, direction[2] / length];
    scope.tell(path, messages.structure.direction, `${fieldName(path)} of length 0`);
    return null;
  };
}
