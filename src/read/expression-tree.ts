import type { MathNode } from 'mathjs';
import mathjs from 'mathjs/lib/browser/math.js';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { inBaseUnit, isInExpressions, measuredBy, unitsFor } from './units.ts';
import type { Quantity } from './types.ts';
import type { Reading } from './quantities.ts';

/** All an expression can be made of. Nothing of mathjs is ever run: its parser gives a tree, and this is copied from it. */
export type Tree =
  | { readonly is: 'number'; readonly value: number; readonly dimension: Quantity['dimension'] }
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: 'minus'; readonly of: Tree }
  | { readonly is: 'sign'; readonly sign: Sign; readonly left: Tree; readonly right: Tree }
  | { readonly is: 'call'; readonly name: FunctionName; readonly values: readonly Tree[] };

const signs = ['+', '-', '*', '/', '^'] as const;
export type Sign = (typeof signs)[number];

export const functionNames = ['min', 'max', 'floor', 'ceil', 'round', 'abs', 'sqrt', 'sin', 'cos', 'tan'] as const;
export type FunctionName = (typeof functionNames)[number];

/** Units that may stand in an expression: those of the dimensions a quantity can have. */
export const expressionUnits: readonly string[] = (['length', 'angle', 'force', 'mass'] as const)
  .flatMap((measured) => unitsFor(measured)).filter((unit) => /^[A-Za-z]+$/.test(unit));

const parser = mathjs.create({});

/** Thrown and caught inside this file only. */
class Refused extends Error {}

/** The tree of an expression, or the remedy for its first fault. */
export function expressionTree(text: string): Reading<Tree> {
  const remedy = textRemedy(text);
  if (remedy !== null) return { remedy };
  try {
    return { value: allowedTree(parsedTree(text), 0) };
  } catch (error) {
    if (error instanceof Refused) return { remedy: error.message };
    throw error;
  }
}

/** All names in a tree, each once, in the order of the text. */
export function namesIn(tree: Tree): readonly string[] {
  switch (tree.is) {
    case 'number': return [];
    case 'name': return [tree.name];
    case 'minus': return namesIn(tree.of);
    case 'sign': return [...new Set([...namesIn(tree.left), ...namesIn(tree.right)])];
    case 'call': return [...new Set(tree.values.flatMap(namesIn))];
  }
}

/** What can be seen before parsing: length, letters, depth of brackets. */
function textRemedy(text: string): string | null {
  if (text.length > limits.expressionLength) return messages.expressionLong(limits.expressionLength);
  const odd = /[^A-Za-z0-9_ .,+\-*/^()]/u.exec(text);
  if (odd !== null) return messages.expressionCharacter(odd[0] === '\n' ? 'a new line' : odd[0], odd.index + 1);
  let depth = 0;
  for (const letter of text) {
    depth += letter === '(' ? 1 : letter === ')' ? -1 : 0;
    if (depth > limits.expressionDepth) return messages.expressionDeep(limits.expressionDepth);
  }
  if (/\b0[xob]/i.test(text)) return messages.expressionPart;
  return text.trim() === '' ? messages.expression : null;
}

function parsedTree(text: string): MathNode {
  try {
    return parser.parse(text);
  } catch (error) {
    const place = error instanceof Error ? /\(char (\d+)\)/.exec(error.message)?.[1] : undefined;
    throw new Refused(place === undefined ? messages.expression : messages.expressionStopped(Number(place) - 1));
  }
}

function allowedTree(node: MathNode, depth: number): Tree {
  if (depth > limits.expressionDepth) throw new Refused(messages.expressionDeep(limits.expressionDepth));
  const inner = (child: MathNode | undefined): Tree => {
    if (child === undefined) throw new Refused(messages.expression);
    return allowedTree(child, depth + 1);
  };
  if (parser.isConstantNode(node)) return { is: 'number', value: plainNumber(node.value), dimension: 'ratio' };
  if (parser.isSymbolNode(node)) return allowedName(node.name);
  if (parser.isParenthesisNode(node)) return inner(node.content);
  if (parser.isOperatorNode(node)) {
    const [left, right] = node.args;
    if ('implicit' in node && node.implicit === true) return numberWithUnit(left, right);
    if (node.args.length === 1 && node.op === '-') return { is: 'minus', of: inner(left) };
    const sign = signs.find((known) => known === node.op);
    if (node.args.length === 2 && sign !== undefined) return { is: 'sign', sign, left: inner(left), right: inner(right) };
  }
  // A call may also hang on a property (`min.min(…)`); only a bare name is let through.
  if (parser.isFunctionNode(node) && parser.isSymbolNode(node.fn)) return allowedCall(node.fn.name, node.args.map(inner));
  throw new Refused(messages.expressionPart);
}

function plainNumber(value: unknown): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new Refused(messages.expressionPart);
  return value;
}

function allowedName(name: string): Tree {
  if (name in Object.prototype || !/^[a-z][a-z0-9_]*$/i.test(name)) throw new Refused(messages.expressionPart);
  if (expressionUnits.includes(name)) throw new Refused(messages.unitAlone(name));
  return { is: 'name', name };
}

/** mathjs reads `3 mm` as a product without a sign; only a plain number before a unit may be left so. */
function numberWithUnit(figure: MathNode | undefined, unit: MathNode | undefined): Tree {
  const negative = figure !== undefined && parser.isOperatorNode(figure) && figure.op === '-' && figure.args.length === 1;
  const constant = negative ? figure.args[0] : figure;
  if (constant === undefined || unit === undefined || !parser.isConstantNode(constant) || !parser.isSymbolNode(unit)) throw new Refused(messages.timesSign(expressionUnits));
  const measured = measuredBy(unit.name);
  if (measured === null || !isInExpressions(measured)) {
    throw new Refused(messages.timesSign(expressionUnits));
  }
  const value = inBaseUnit(String(plainNumber(constant.value)), unit.name, measured);
  if (!Number.isFinite(value)) throw new Refused(messages.finite);
  const number: Tree = { is: 'number', value, dimension: measured };
  return negative ? { is: 'minus', of: number } : number;
}

function allowedCall(called: string, values: readonly Tree[]): Tree {
  const name = functionNames.find((known) => known === called);
  if (name === undefined) throw new Refused(messages.unknownFunction(nearestName(String(called), functionNames), functionNames));
  const [least, most, words] = name === 'min' || name === 'max' ? [2, 10, messages.twoToTen] as const : [1, 1, messages.oneValue] as const;
  if (values.length < least || values.length > most) throw new Refused(messages.argumentCount(name, words));
  return { is: 'call', name, values };
}
