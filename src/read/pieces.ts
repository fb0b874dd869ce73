import type { z } from 'zod';
import type { Wanted } from './expressions.ts';
import { pieceSchema } from './item-schema.ts';
import type { deckSchema, frameSchema, panelSchema, postSchema } from './item-schema.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { declaredPieces, namesOfKind, placedWords, pointFaults, pointNames } from './piece-names.ts';
import { expressionReader } from './placed-expressions.ts';
import type { PlacedExpression } from './placed-expressions.ts';
import type { Expression, Face, Fault, Piece } from './types.ts';
import { goodEntries } from './validate.ts';
import type { FieldPath, YamlSource } from './yaml-source.ts';

/** A piece, and the expressions written in it by field, for the checks. */
export interface ReadPiece {
  readonly piece: Piece;
  readonly expressions: Readonly<Record<string, PlacedExpression>>;
}

/** Where a piece stands: what it may use of the pieces above it, and where its faults go. */
interface Place {
  readonly source: YamlSource;
  readonly name: string;
  readonly faults: Fault[];
  /** Decks and frames above it in the file, well written or not. */
  readonly above: readonly string[];
  /** Those of all pieces that could be read so far. */
  readonly read: readonly ReadPiece[];
  /** Every deck and frame of the file, and those of them that are decks. */
  readonly standing: readonly string[];
  readonly decks: readonly string[];
  readonly expression: (field: string, text: string | number, wanted: Wanted, more?: readonly string[]) => PlacedExpression | null;
}

/** The pieces that can be read, in the order of the file; faults of their expressions and of the pieces they name. */
export function readPieces(
  source: YamlSource, raw: unknown, names: readonly string[],
): { readonly pieces: readonly ReadPiece[]; readonly faults: readonly Fault[] } {
  const faults = [...pointFaults(source, raw, names), ...postFaults(source, raw)];
  const standing = namesOfKind(raw, 'deck', 'frame');
  const decks = namesOfKind(raw, 'deck');
  const declared = declaredPieces(raw);
  const reader = expressionReader(source, faults);
  const pieces: ReadPiece[] = [];
  for (const [name, given] of goodEntries(raw, pieceSchema)) {
    const place = declared.findIndex((other) => other.name === name);
    const points = new Map(declared.map((other, at) => [other, at] as const).flatMap(([{ name: giver, is }, at]) =>
      (is === 'deck' || is === 'frame' ? pointNames(giver, is).map((point) => [point, { giver, at }] as const) : [])));
    const known = [...names, ...[...points].filter(([, { at }]) => at < place).map(([point]) => point)];
    const later = new Map([...points].filter(([, { at }]) => at >= place).map(([point, { giver }]) => [point, giver]));
    const above = declared.slice(0, place).map((other) => other.name).filter((other) => standing.includes(other));
    const expression: Place['expression'] = (field, text, wanted, more = []) =>
      reader(['pieces', name, field], text, wanted, { names: [...new Set([...known, ...more])], later });
    const read = readPiece(given, { source, name, faults, above, read: pieces, standing, decks, expression });
    if (read !== null) pieces.push(read);
  }
  return { pieces, faults };
}

/** All decks and frames stand between the same posts, so a second post piece has no place. */
function postFaults(source: YamlSource, raw: unknown): Fault[] {
  return namesOfKind(raw, 'post').slice(1).map((name) => source.faultAtName(['pieces', name], messages.onePost));
}

function readPiece(given: z.output<typeof pieceSchema>, place: Place): ReadPiece | null {
  switch (given.is) {
    case 'deck': return readDeck(given, place);
    case 'frame': return readFrame(given, place);
    case 'post': return readPost(given, place);
    case 'panel': return readPanel(given, place);
  }
}

function readDeck(given: z.output<typeof deckSchema>, { name, expression }: Place): ReadPiece | null {
  const [width, depth, count] = [expression('width', given.width, 'length'), expression('depth', given.depth, 'length'), expression('count', given.count, 'count')];
  const top = expression('top', given.top, 'length', ['index']);
  if (width === null || depth === null || count === null || top === null) return null;
  const piece: Piece = { is: 'deck', name, width: width.expression, depth: depth.expression, count: count.expression, top: top.expression };
  return { piece, expressions: { width, depth, count, top } };
}

function readFrame(given: z.output<typeof frameSchema>, place: Place): ReadPiece | null {
  const { name, expression } = place;
  const own = (field: 'width' | 'depth') => {
    const text = given[field];
    return text === undefined ? null : expression(field, text, 'length');
  };
  const [width, depth, count] = [own('width'), own('depth'), expression('count', given.count, 'count')];
  const level = expression('level', given.level, 'length', ['index']);
  const between = {
    width: given.width === undefined ? sizeAbove('width', place) : width?.expression ?? null,
    depth: given.depth === undefined ? sizeAbove('depth', place) : depth?.expression ?? null,
  };
  if (between.width === null || between.depth === null || count === null || level === null) return null;
  const piece: Piece = { is: 'frame', name, width: between.width, depth: between.depth, count: count.expression, level: level.expression, sides: given.sides };
  return { piece, expressions: { ...(width && { width }), ...(depth && { depth }), count, level } };
}

/** The width or depth of the first deck or frame above; a fault when none is there to give one. */
function sizeAbove(field: 'width' | 'depth', { source, name, faults, above, read }: Place): Expression | null {
  for (const { piece } of read) {
    if (piece.is === 'deck' || piece.is === 'frame') return piece[field];
  }
  if (above.length === 0) faults.push(source.fault(['pieces', name, field], messages.sizeAbove(field)));
  return null;
}

function readPost(given: z.output<typeof postSchema>, { source, name, faults, standing, expression }: Place): ReadPiece | null {
  const places = placedWords(given.through, ['pieces', name, 'through']);
  const unknown = places.filter(({ word }) => !standing.includes(word));
  for (const { word, path } of unknown) faults.push(source.fault(path, messages.pieceName(messages.aDeckOrFrame, nearestName(word, standing), standing)));
  const through = places.map(({ word }) => word);
  const missing = standing.filter((other) => !through.includes(other));
  if (unknown.length === 0 && missing.length > 0) faults.push(source.fault(['pieces', name, 'through'], messages.throughAll(missing)));
  const length = given.length === undefined ? null : expression('length', given.length, 'length');
  const front = given.front === undefined ? length : expression('front', given.front, 'length');
  const back = given.back === undefined ? length : expression('back', given.back, 'length');
  if (front === null || back === null) return null;
  const piece: Piece = { is: 'post', name, front: front.expression, back: back.expression, through };
  return { piece, expressions: length === null ? { front, back } : { length } };
}

function readPanel(given: z.output<typeof panelSchema>, place: Place): ReadPiece | null {
  const { name } = place;
  const on = placedWords(given.on, ['pieces', name, 'on']);
  for (const field of ['from', 'to'] as const) place.faults.push(...edgeFaults(given[field], ['pieces', name, field], on, place));
  return { piece: { is: 'panel', name, on: on.map(({ word }) => word), from: given.from, to: given.to }, expressions: {} };
}

/** An edge of a panel needs a bare tube, of a frame above in the file, on every side the panel is for. */
function edgeFaults(
  edge: string, path: FieldPath, on: readonly { readonly word: Face; readonly path: FieldPath }[], { source, above, decks, read }: Place,
): Fault[] {
  if (decks.includes(edge)) return [source.fault(path, messages.wrappedTubes)];
  const frames = above.filter((other) => !decks.includes(other));
  if (!frames.includes(edge)) return [source.fault(path, messages.pieceName(messages.aFrameAbove, nearestName(edge, frames), frames))];
  const frame = read.map(({ piece }) => piece).find((piece) => piece.name === edge);
  if (frame?.is !== 'frame') return [];
  return on.filter(({ word }) => !frame.sides.includes(word)).map((side) => source.fault(side.path, messages.tubeOn(edge, frame.sides)));
}
