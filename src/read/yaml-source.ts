import { isAlias, isMap, isNode, isPair, isScalar, isSeq, parseDocument, visit } from 'yaml';
import type { Document, Node, Pair } from 'yaml';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import type { Fault, Position } from './types.ts';

/** The way from the top of a file to a value: names of fields and places in lists (from 0). */
export type FieldPath = readonly PropertyKey[];

/** A YAML file as plain values, and where each of them stands. */
export interface YamlSource {
  readonly file: string;
  /** Plain values: objects without prototype, arrays, text, numbers, booleans, null. */
  readonly raw: unknown;
  /** Faults of the YAML itself; when there are any, `raw` is null. */
  readonly faults: readonly Fault[];
  /** A fault at the value of `path`, or at its nearest parent when there is none. `found` is read from the file unless given. */
  readonly fault: (path: FieldPath, remedy: string, found?: string) => Fault;
  /** A fault at the name of the field, not at its value. */
  readonly faultAtName: (path: FieldPath, remedy: string) => Fault;
  readonly positionOf: (path: FieldPath) => Position;
}

/** Reads YAML 1.2 without aliases, merges, tags or odd names. Never throws: faults are kept in the result. */
export function yamlSource(file: string, fileText: string): YamlSource {
  const text = fileText.replace(/^\uFEFF/, '');
  const at = (offset: number): Position => ({ file, ...lineAndColumn(text, offset) });
  if (text.length > limits.fileLength) {
    return withoutValues(file, at(0), [{ position: at(0), field: '', found: `${text.length} characters`, remedy: messages.tooLong(limits.fileLength) }]);
  }
  const document = parsed(text);
  if (document === null) {
    return withoutValues(file, at(0), [{ position: at(0), field: '', found: messages.aSection, remedy: messages.tooDeep(limits.fileDepth) }]);
  }
  const faults = [...syntaxFaults(document, text, at), ...habitFaults(document, text, at)];
  if (faults.length > 0) return withoutValues(file, at(0), faults);
  return { ...lookup(document, text, at), file, raw: plainValue(document.contents), faults };
}

/** The library goes down one level of its own stack for each level of the text: a hostile text overflows it. */
function parsed(text: string): Document.Parsed | null {
  try {
    return parseDocument(text, { prettyErrors: false, uniqueKeys: true, version: '1.2', schema: 'core', merge: false, logLevel: 'error' });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function withoutValues(file: string, start: Position, faults: readonly Fault[]): YamlSource {
  const fault = (path: FieldPath, remedy: string, found: string = messages.nothing): Fault => ({ position: start, field: fieldName(path), found, remedy });
  return { file, raw: null, faults, fault, faultAtName: fault, positionOf: () => start };
}

/** Every name that stands twice, and of the other faults the first only: those after it mostly come from it. */
function syntaxFaults(document: Document.Parsed, text: string, at: (offset: number) => Position): Fault[] {
  const all = [...document.errors, ...document.warnings];
  const twice = all.filter(({ code }) => code === 'DUPLICATE_KEY');
  const first = all.filter(({ code }) => code !== 'DUPLICATE_KEY').slice(0, 1);
  return [...twice, ...first].map((error) => {
    const offset = error.code === 'MISSING_CHAR' ? openingQuote(document, error.pos[0]) : error.pos[0];
    return { position: at(offset), field: '', found: quoted(firstLine(text.slice(offset))), remedy: messages.yaml(error.code, firstLine(error.message)) };
  });
}

/** The library tells of an open quote where the text ends; the reader looks for where it began. */
function openingQuote(document: Document.Parsed, end: number): number {
  let start = end;
  visit(document, {
    Scalar: (_, { type, range }) => {
      const isQuoted = type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE';
      if (isQuoted && range && range[0] < end && end <= range[2]) start = range[0];
    },
  });
  return start;
}

/** What YAML allows and these files do not. */
function habitFaults(document: Document.Parsed, text: string, at: (offset: number) => Position): Fault[] {
  const faults: Fault[] = [];
  let deepest = false;
  const complain = (node: Node, remedy: string): void => {
    faults.push({ position: at(startOf(node)), field: '', found: quoted(firstLine(text.slice(startOf(node)))), remedy });
  };
  visit(document, {
    Node: (key, node, path) => {
      if (isAlias(node)) complain(node, messages.noAlias);
      else if (node.anchor !== undefined) complain(node, messages.noAlias);
      else if (node.tag !== undefined) complain(node, messages.noTag);
      if (key === 'key') {
        const name = isScalar(node) ? node.value : null;
        if (name === '<<') complain(node, messages.noAlias);
        else if (typeof name !== 'string' || name === '') complain(node, messages.plainName);
        else if (name in Object.prototype) complain(node, messages.reservedName);
      }
      if (path.length > 2 * limits.fileDepth) {
        if (!deepest) complain(node, messages.tooDeep(limits.fileDepth));
        deepest = true;
        return visit.SKIP;
      }
      return undefined;
    },
  });
  return faults;
}

function lookup(document: Document.Parsed, text: string, at: (offset: number) => Position): Pick<YamlSource, 'fault' | 'faultAtName' | 'positionOf'> {
  const top = document.contents;
  const positionOf = (path: FieldPath): Position => at(startOf(nodeAt(top, path).node));
  return {
    positionOf,
    fault: (path, remedy, found) => {
      const { node, exact } = nodeAt(top, path);
      return { position: at(startOf(node)), field: fieldName(path), found: found ?? (exact ? foundText(node, text) : messages.nothing), remedy };
    },
    faultAtName: (path, remedy) => {
      const parent = nodeAt(top, path.slice(0, -1)).node;
      const key = isMap(parent) ? parent.items.find((pair) => nameOf(pair) === path.at(-1))?.key : null;
      return { position: at(startOf(isNode(key) ? key : parent)), field: fieldName(path), found: quoted(String(path.at(-1))), remedy };
    },
  };
}

/** The node at `path`, or its nearest parent that is there. */
function nodeAt(top: Node | null, path: FieldPath): { readonly node: Node | null; readonly exact: boolean } {
  let node = top;
  for (const step of path) {
    const next = childOf(node, step);
    if (next === null) return { node, exact: false };
    node = next;
  }
  return { node, exact: true };
}

function childOf(node: Node | null, step: PropertyKey): Node | null {
  if (isMap(node)) {
    const pair = node.items.find((item) => nameOf(item) === step);
    if (pair === undefined) return null;
    return isNode(pair.value) ? pair.value : isNode(pair.key) ? pair.key : null;
  }
  const item = isSeq(node) && typeof step === 'number' ? node.items[step] : null;
  return isNode(item) ? item : null;
}

function nameOf(pair: Pair): unknown {
  return isScalar(pair.key) ? pair.key.value : null;
}

function plainValue(node: unknown): unknown {
  if (isMap(node)) {
    const section: Record<string, unknown> = Object.create(null);
    for (const pair of node.items) section[String(nameOf(pair))] = plainValue(pair.value);
    return section;
  }
  if (isSeq(node)) return node.items.map((item) => plainValue(isPair(item) ? null : item));
  return isScalar(node) ? node.value : null;
}

function startOf(node: Node | null): number {
  return node?.range?.[0] ?? 0;
}

function foundText(node: Node | null, text: string): string {
  if (isMap(node)) return messages.aSection;
  if (isSeq(node)) return messages.aList;
  if (!isScalar(node) || node.value === null) return messages.nothing;
  if (typeof node.value === 'string') return quoted(node.value);
  const [start, end] = node.range ?? [0, 0];
  return quoted(text.slice(start, end));
}

/** A found text in quotes, on one line and not too long. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  const letters = [...line];
  return `"${letters.length > limits.foundLength ? `${letters.slice(0, limits.foundLength).join('')}…` : line}"`;
}

function firstLine(text: string): string {
  return text.split(/\r?\n/, 1)[0] ?? '';
}

/** `sizes.standard.width`, `connections.2.to`: entries of a list count from 1, as lines do. */
export function fieldName(path: FieldPath): string {
  return path.map((step) => (typeof step === 'number' ? String(step + 1) : String(step))).join('.');
}

function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, Math.max(0, Math.min(offset, text.length)));
  return { line: before.split('\n').length, column: before.length - before.lastIndexOf('\n') };
}
