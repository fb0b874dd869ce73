import type { FunctionName, Sign, Tree } from './expression-tree.ts';
import { ranges } from './limits.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import type { Dimension, Quantity } from './types.ts';

/** A value on its way through an expression: powers of the base units, so that areas and the like can occur in between. */
interface Amount {
  readonly value: number;
  /** Powers of mm, rad, N, kg. */
  readonly powers: readonly [length: number, angle: number, force: number, mass: number];
  /** True for counts: a whole number without a unit. */
  readonly whole: boolean;
}

/** Why an expression has no value; `result` when the sum itself went wrong and is not a number. */
export class NoValue extends Error {
  readonly result: number | null;
  constructor(remedy: string, result: number | null = null) {
    super(remedy);
    this.result = result;
  }
}

const plain = [0, 0, 0, 0] as const;
const measuredOrder = ['length', 'angle', 'force', 'mass'] as const;

/** The value of a tree in base units. Throws NoValue. */
export function treeValue(tree: Tree, names: Readonly<Record<string, Quantity>>): Quantity {
  const amount = amountOf(tree, names);
  if (!Number.isFinite(amount.value)) throw new NoValue(messages.finiteResult, amount.value);
  const dimension = dimensionOf(amount);
  if (dimension === null) throw new NoValue(messages.resultDimension(messages.aQuantity, inWords(amount)));
  if (Math.abs(amount.value) > ranges[dimension === 'count' ? 'ratio' : dimension][1]) throw new NoValue(messages.inRange(dimension === 'count' ? 'ratio' : dimension), amount.value);
  return { value: amount.value === 0 ? 0 : amount.value, dimension };
}

/** A dimension with its article, for messages. */
export function dimensionWords(dimension: Dimension): string {
  return dimension === 'count' ? 'a count' : dimension === 'ratio' ? 'a ratio' : messages.measured(dimension);
}

function amountOf(tree: Tree, names: Readonly<Record<string, Quantity>>): Amount {
  switch (tree.is) {
    case 'number': return amount(tree.value, tree.dimension === 'ratio' && Number.isInteger(tree.value) ? 'count' : tree.dimension);
    case 'name': return named(tree.name, names);
    case 'minus': return negative(amountOf(tree.of, names));
    case 'sign': return tree.sign === '^'
      ? power(amountOf(tree.left, names), amountOf(tree.right, names), writtenNumber(tree.right))
      : combined(tree.sign, amountOf(tree.left, names), amountOf(tree.right, names));
    case 'call': return called(tree.name, tree.values.map((value) => amountOf(value, names)));
  }
}

function amount(value: number, dimension: Dimension): Amount {
  const [length, angle, force, mass] = measuredOrder.map((measured) => (measured === dimension ? 1 : 0));
  return { value, powers: [length ?? 0, angle ?? 0, force ?? 0, mass ?? 0], whole: dimension === 'count' };
}

function named(name: string, names: Readonly<Record<string, Quantity>>): Amount {
  const quantity = Object.hasOwn(names, name) ? names[name] : undefined;
  const known = Object.keys(names);
  if (quantity === undefined) throw new NoValue(messages.unknownName(name, nearestName(name, known), known));
  return amount(quantity.value, quantity.dimension);
}

function negative(of: Amount): Amount {
  return { ...of, value: -of.value };
}

function combined(sign: Exclude<Sign, '^'>, left: Amount, right: Amount): Amount {
  const added = (turn: 1 | -1): Amount['powers'] => combinedPowers(left, right, turn);
  switch (sign) {
    case '*': return { value: left.value * right.value, powers: added(1), whole: left.whole && right.whole };
    case '/': return { value: left.value / right.value, powers: added(-1), whole: false };
    case '+':
    case '-':
      if (!alike(left, right)) throw new NoValue(messages.sameDimension(sign, inWords(left), inWords(right)));
      return { value: left.value + (sign === '+' ? right.value : -right.value), powers: left.powers, whole: left.whole && right.whole };
  }
}

function combinedPowers(left: Amount, right: Amount, turn: 1 | -1): Amount['powers'] {
  const [a, b, c, d] = left.powers;
  const [e, f, g, h] = right.powers;
  return [a + turn * e, b + turn * f, c + turn * g, d + turn * h];
}

function power(base: Amount, exponent: Amount, written: number | null): Amount {
  if (!isPlain(exponent)) throw new NoValue(messages.exponentPlain);
  const value = base.value ** exponent.value;
  if (isPlain(base)) return { value, powers: plain, whole: base.whole && exponent.whole && exponent.value >= 0 };
  if (written === null || !Number.isInteger(written) || Math.abs(written) > 4) throw new NoValue(messages.exponentWhole);
  const [a, b, c, d] = base.powers;
  return { value, powers: [a * written, b * written, c * written, d * written], whole: false };
}

function writtenNumber(tree: Tree): number | null {
  if (tree.is === 'minus') {
    const inner = writtenNumber(tree.of);
    return inner === null ? null : -inner;
  }
  return tree.is === 'number' ? tree.value : null;
}

function called(name: FunctionName, values: readonly Amount[]): Amount {
  const first = values[0];
  if (first === undefined) throw new NoValue(messages.argumentCount(name, messages.oneValue));
  switch (name) {
    case 'min':
    case 'max': {
      const odd = values.find((value) => !alike(value, first));
      if (odd !== undefined) throw new NoValue(messages.sameDimensionArguments(name, inWords(first), inWords(odd)));
      const figures = values.map(({ value }) => value);
      return { ...first, value: name === 'min' ? Math.min(...figures) : Math.max(...figures), whole: values.every(({ whole }) => whole) };
    }
    case 'floor':
    case 'ceil':
    case 'round':
      if (!isPlain(first)) throw new NoValue(messages.plainArgument(name, inWords(first)));
      return { value: Math[name](first.value), powers: plain, whole: true };
    case 'abs': return { ...first, value: Math.abs(first.value) };
    case 'sqrt': {
      if (first.powers.some((exponent) => exponent % 2 !== 0)) throw new NoValue(messages.evenPower(inWords(first)));
      const [a, b, c, d] = first.powers;
      return { value: Math.sqrt(first.value), powers: [a / 2, b / 2, c / 2, d / 2], whole: false };
    }
    case 'sin':
    case 'cos':
    case 'tan':
      if (dimensionOf(first) !== 'angle') throw new NoValue(messages.angleArgument(name, inWords(first)));
      return { value: Math[name](first.value), powers: plain, whole: false };
  }
}

function isPlain({ powers }: Amount): boolean {
  return powers.every((exponent) => exponent === 0);
}

function alike(left: Amount, right: Amount): boolean {
  return left.powers.every((exponent, place) => exponent === right.powers[place]);
}

function dimensionOf(of: Amount): Dimension | null {
  if (isPlain(of)) return of.whole ? 'count' : 'ratio';
  const places = of.powers.flatMap((exponent, place) => (exponent === 0 ? [] : [place]));
  const [only] = places;
  return places.length === 1 && only !== undefined && of.powers[only] === 1 ? measuredOrder[only] ?? null : null;
}

function inWords(of: Amount): string {
  const dimension = dimensionOf(of);
  if (dimension !== null) return dimensionWords(dimension);
  return of.powers.flatMap((exponent, place) => (exponent === 0 ? [] : `${measuredOrder[place]}^${exponent}`)).join(' · ').replaceAll('^1', '');
}
