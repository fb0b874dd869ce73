import { readExpression } from './expressions.ts';
import type { ReadExpression, Wanted } from './expressions.ts';
import { expressionSchema, pieceSchema } from './item-schema.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { inOrderOfNeed } from './rings.ts';
import type { Fault, Piece } from './types.ts';
import { takenNameFaults } from './parameters.ts';
import { goodEntries, sectionEntries } from './validate.ts';
import type { FieldPath, YamlSource } from './yaml-source.ts';

/** An expression at its place in the file. */
export interface PlacedExpression extends ReadExpression {
  readonly path: FieldPath;
}

export interface NamedExpression extends PlacedExpression {
  readonly name: string;
}

/** A piece, and its expressions by field for the checks. */
export interface ReadPiece {
  readonly piece: Piece;
  readonly expressions: Readonly<Record<string, PlacedExpression>>;
}

/** The named expressions that can be read, each after those it needs; faults of texts, names and rings. */
export function readExpressions(
  source: YamlSource, raw: unknown, parameterNames: readonly string[],
): { readonly expressions: readonly NamedExpression[]; readonly faults: readonly Fault[] } {
  const names = sectionEntries(raw).map(([name]) => name);
  const faults = takenNameFaults(source, 'expressions', names);
  for (const name of names.filter((other) => parameterNames.includes(other))) faults.push(source.faultAtName(['expressions', name], messages.sameNameTwice));
  const reader = expressionReader(source, [...parameterNames, ...names], faults);
  const byName = new Map<string, NamedExpression>();
  for (const [name, text] of goodEntries(raw, expressionSchema)) {
    const read = reader(['expressions', name], text, null, []);
    if (read !== null) byName.set(name, { ...read, name });
  }
  const { order, rings } = inOrderOfNeed(new Map([...byName].map(([name, { needs }]) => [name, needs])));
  for (const ring of rings) faults.push(source.fault(['expressions', ring[0] ?? ''], messages.cycle(ring)));
  return { expressions: order.flatMap((name) => byName.get(name) ?? []), faults };
}

/** The pieces that can be read; faults of their expressions and of the decks they name. */
export function readPieces(
  source: YamlSource, raw: unknown, names: readonly string[],
): { readonly pieces: readonly ReadPiece[]; readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const reader = expressionReader(source, names, faults);
  const good = goodEntries(raw, pieceSchema);
  const decks = pieceNames(raw, 'deck');
  const pieces = [...good].flatMap(([name, given]): ReadPiece[] => {
    const read = (field: string, text: string | number, wanted: Wanted, more: readonly string[] = []) => reader(['pieces', name, field], text, wanted, more);
    if (given.is === 'post') {
      const length = read('length', given.length, 'length');
      if (!decks.includes(given.through)) {
        faults.push(source.fault(['pieces', name, 'through'], messages.pieceName(messages.aDeck, nearestName(given.through, decks), decks)));
      }
      return length === null ? [] : [{ piece: { is: 'post', name, length: length.expression, through: given.through }, expressions: { length } }];
    }
    const [width, depth, count] = [read('width', given.width, 'length'), read('depth', given.depth, 'length'), read('count', given.count, 'count')];
    const top = read('top', given.top, 'length', ['index']);
    if (width === null || depth === null || count === null || top === null) return [];
    const piece: Piece = { is: 'deck', name, width: width.expression, depth: depth.expression, count: count.expression, top: top.expression };
    return [{ piece, expressions: { width, depth, count, top } }];
  });
  return { pieces, faults };
}

/** Names of the pieces that say they are decks or posts, well written or not. */
export function pieceNames(raw: unknown, is: 'deck' | 'post'): readonly string[] {
  return sectionEntries(raw).filter(([, piece]) => new Map(sectionEntries(piece)).get('is') === is).map(([name]) => name);
}

type ExpressionReader = (path: FieldPath, text: string | number, wanted: Wanted, more: readonly string[]) => PlacedExpression | null;

/** Reads expressions, or puts their faults (text, unknown names) into `faults` and gives null. */
function expressionReader(source: YamlSource, known: readonly string[], faults: Fault[]): ExpressionReader {
  return (path, text, wanted, more) => {
    const { position, field } = source.fault(path, '');
    const reading = readExpression(text, position, field, wanted);
    if ('remedy' in reading) {
      faults.push(source.fault(path, reading.remedy));
      return null;
    }
    const all = [...new Set([...known, ...more])];
    const unknown = reading.value.needs.filter((name) => !all.includes(name));
    for (const name of unknown) faults.push(source.fault(path, messages.unknownName(name, nearestName(name, all), all)));
    return unknown.length > 0 ? null : { ...reading.value, path };
  };
}
