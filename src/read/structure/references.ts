import { messages } from '../messages.ts';
import { nearestName } from '../nearest.ts';
import type { PlacedExpression } from '../placed-expressions.ts';
import { quoted, type FieldPath } from '../yaml-source.ts';
import { amount, type Scope, type Values } from './scope.ts';
import type { Named } from './types.ts';

/** What references may call: the parts made so far of one kind, by name. */
export interface Callable<Part extends Named> {
  /** A word for messages: "a point". */
  readonly what: string;
  readonly parts: ReadonlyMap<string, Part>;
  /** Names of the file whose parts could not all be made: told already. */
  readonly broken: ReadonlySet<string>;
}

/** Gives the parts that a reference calls, for each instance; null when there is none, which is told. */
export type Caller<Part extends Named> = (indexes: Values) => readonly Part[] | null;

interface Step {
  readonly name: string;
  readonly indexes: readonly ('*' | PlacedExpression)[];
}

const NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/** Reads references such as `c.0.y+1`, `post.*.0` or `trestle.x/leg.1`. */
export function references<Part extends Named>(scope: Scope, path: FieldPath, given: string | readonly string[], indexNames: readonly string[], callable: Callable<Part>): Caller<Part> {
  const texts = typeof given === 'string' ? [{ text: given, at: path }] : given.map((text, place) => ({ text, at: [...path, place] }));
  const read = texts.map(({ text, at }) => ({ text, at, steps: stepsOf(scope, at, text, indexNames, callable) }));
  return (indexes) => {
    const called = read.map(({ text, at, steps }) => (steps === null ? null : calledBy(scope, at, text, steps, indexes, callable)));
    return called.some((each) => each === null) ? null : called.flatMap((each) => each ?? []);
  };
}

/** A reference to just one part. */
export function reference<Part extends Named>(scope: Scope, path: FieldPath, given: string | undefined, indexNames: readonly string[], callable: Callable<Part>): (indexes: Values) => Part | null {
  if (given === undefined) return () => null;
  const call = references(scope, path, given, indexNames, callable);
  return (indexes) => {
    const called = call(indexes);
    if (called === null) return null;
    const [only] = called;
    if (called.length === 1 && only !== undefined) return only;
    scope.tell(path, messages.structure.oneOnly);
    return null;
  };
}

function stepsOf<Part extends Named>(scope: Scope, path: FieldPath, text: string, indexNames: readonly string[], { what, parts, broken }: Callable<Part>): readonly Step[] | null {
  const steps = splitOutside(text, '/').map((word) => splitOutside(word, '.').map((piece) => piece.trim()));
  if (steps.length > 2 || steps.some(([name = '']) => !NAME.test(name))) {
    scope.tell(path, messages.structure.reference);
    return null;
  }
  const called = steps.map(([name = '']) => name).join('/');
  const known = [...new Set([...parts.values()].map(({ of }) => of))];
  if (!known.includes(called)) {
    if (broken.has(called)) return null;
    scope.tell(path, messages.structure.unknown(what, nearestName(called, known), known));
    return null;
  }
  const read = steps.map(([name = '', ...indexes]) => ({ name, indexes: indexes.map((index) => (index === '*' ? '*' as const : scope.read(path, index, indexNames))) }));
  if (read.some(({ indexes }) => indexes.includes(null))) return null;
  const example = [...parts.values()].find(({ of }) => of === called);
  const count = read.reduce((sum, { indexes }) => sum + indexes.length, 0);
  if (example !== undefined && count !== example.index.length) {
    scope.tell(path, messages.structure.indexes(called, example.index.length, count === 0 ? `, for example ${example.name}` : ''));
    return null;
  }
  return read as readonly Step[];
}

/** Splits where a sign stands outside brackets. */
function splitOutside(text: string, sign: string): readonly string[] {
  const pieces = [''];
  let depth = 0;
  for (const letter of text) {
    depth += letter === '(' ? 1 : letter === ')' ? -1 : 0;
    if (letter === sign && depth === 0) pieces.push('');
    else pieces[pieces.length - 1] += letter;
  }
  return pieces;
}

function calledBy<Part extends Named>(scope: Scope, path: FieldPath, text: string, steps: readonly Step[], indexes: Values, { parts, broken }: Callable<Part>): readonly Part[] | null {
  const values = steps.map((step) => ({ name: step.name, indexes: step.indexes.map((index) => (index === '*' ? '*' : wholeIndex(scope, index, indexes))) }));
  if (values.some((step) => step.indexes.includes(null))) return null;
  const wanted = values.flatMap((step) => step.indexes);
  if (!wanted.includes('*')) {
    const name = values.map((step) => [step.name, ...step.indexes].join('.')).join('/');
    const part = parts.get(name);
    if (part === undefined && !broken.has(values.map((step) => step.name).join('/'))) scope.tell(path, messages.structure.notThere(name), quoted(text));
    return part === undefined ? null : [part];
  }
  const of = values.map(({ name }) => name).join('/');
  return [...parts.values()].filter((part) => part.of === of && part.index.every((value, place) => wanted[place] === '*' || wanted[place] === value));
}

function wholeIndex(scope: Scope, index: PlacedExpression, indexes: Values): number | null {
  const value = amount(scope, index, indexes, ['count']);
  if (value === null || (Number.isSafeInteger(value) && value >= 0)) return value;
  scope.tell(index.path, messages.structure.indexWhole, messages.gives(quoted(index.expression.text), String(value)));
  return null;
}
