import type { z } from 'zod';
import { connectionSchema, orderSchema } from './item-schema.ts';
import type { braceSchema, pinSchema } from './item-schema.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { hasCornersOf, namesOfKind, placedWords } from './piece-names.ts';
import type { ReadPiece } from './pieces.ts';
import { inOrderOfNeed } from './rings.ts';
import type { Connection, Fault, OrderWish } from './types.ts';
import { goodItems, sectionEntries } from './validate.ts';
import type { FieldPath, YamlSource } from './yaml-source.ts';

/** A connection and its place in the list, from 0. */
export interface PlacedConnection {
  readonly place: number;
  readonly connection: Connection;
}

/** Names of the declared pieces by what they can do in a connection. */
interface Names {
  readonly posts: readonly string[];
  readonly standing: readonly string[];
  /** Pieces that do not say what they are: told already, so not told again. */
  readonly ofUnknownKind: readonly string[];
}

/** The connections that can be read; faults of the pieces they name. */
export function readConnections(
  source: YamlSource, raw: unknown, rawPieces: unknown, pieces: readonly ReadPiece[],
): { readonly connections: readonly PlacedConnection[]; readonly faults: readonly Fault[] } {
  const [posts, standing, panels] = [namesOfKind(rawPieces, 'post'), namesOfKind(rawPieces, 'deck', 'frame'), namesOfKind(rawPieces, 'panel')];
  const ofUnknownKind = sectionEntries(rawPieces).map(([name]) => name).filter((name) => ![...posts, ...standing, ...panels].includes(name));
  const names = { posts, standing, ofUnknownKind };
  const good = [...goodItems(raw, connectionSchema)];
  return {
    connections: good.map(([place, given]) => ({ place, connection: connectionOf(source, place, given) })),
    faults: [
      ...good.flatMap(([place, given]) => ('pin' in given ? pinFaults(source, place, given, names) : braceFaults(source, place, given, names, pieces))),
      ...facesBracedTwice(source, good.flatMap(([place, given]) => ('pin' in given ? [] : [{ place, given }]))),
    ],
  };
}

type GivenPin = z.output<typeof pinSchema>;
type GivenBrace = z.output<typeof braceSchema>;

function connectionOf(source: YamlSource, place: number, given: GivenPin | GivenBrace): Connection {
  const position = source.positionOf(['connections', place]);
  return 'pin' in given
    ? { kind: 'pin', piece: given.pin, to: typeof given.to === 'string' ? [given.to] : given.to, position }
    : { kind: 'brace', piece: given.brace, to: given.to ?? null, faces: given.faces, position };
}

/** A fault when `name` is none of `known`, and is not a piece that is told of already. */
function nameFaults(source: YamlSource, path: FieldPath, name: string, known: readonly string[], what: string, { ofUnknownKind }: Names): Fault[] {
  return known.includes(name) || ofUnknownKind.includes(name) ? [] : [source.fault(path, messages.pieceName(what, nearestName(name, known), known))];
}

function pinFaults(source: YamlSource, place: number, given: GivenPin, names: Names): Fault[] {
  return [
    ...nameFaults(source, ['connections', place, 'pin'], given.pin, names.posts, messages.aPost, names),
    ...placedWords(given.to, ['connections', place, 'to']).flatMap(({ word, path }) => nameFaults(source, path, word, names.standing, messages.aDeckOrFrame, names)),
  ];
}

function braceFaults(source: YamlSource, place: number, given: GivenBrace, names: Names, pieces: readonly ReadPiece[]): Fault[] {
  const at = (...field: FieldPath): FieldPath => ['connections', place, ...field];
  const faults = nameFaults(source, at('brace'), given.brace, names.standing, messages.aDeckOrFrame, names);
  if (given.to !== undefined) {
    faults.push(...nameFaults(source, at('to'), given.to, names.standing, messages.aDeckOrFrame, names));
    if (given.to === given.brace) faults.push(source.fault(at('to'), messages.otherPiece));
  }
  const ends = pieces.map(({ piece }) => piece).filter(({ name }) => name === given.brace || name === given.to);
  given.faces.forEach((face, index) => {
    const bare = ends.find((piece) => piece.is === 'frame' && !hasCornersOf(face, piece.sides));
    if (bare !== undefined) faults.push(source.fault(at('faces', index), messages.cornersOf(bare.name)));
  });
  return faults;
}

/** Faces with two pairs of cables between the same pieces: they would lie in one another. */
function facesBracedTwice(source: YamlSource, braces: readonly { readonly place: number; readonly given: GivenBrace }[]): Fault[] {
  const braced = new Set<string>();
  return braces.flatMap(({ place, given: { brace, to, faces } }) => faces.flatMap((face, index) => {
    const between = [brace, to ?? brace, face].join(' ');
    const isTaken = braced.has(between);
    braced.add(between);
    return isTaken ? [source.fault(['connections', place, 'faces', index], messages.bracedAlready(face))] : [];
  }));
}

/** The designer's wishes that can be read; faults of wishes that contradict themselves or one another. */
export function readOrder(source: YamlSource, raw: unknown): { readonly order: readonly OrderWish[]; readonly faults: readonly Fault[] } {
  const given = [...goodItems(raw, orderSchema)];
  const faults = given.filter(([, { first, then }]) => first === then).map(([place]) => source.fault(['order', place, 'then'], messages.orderTwoKinds));
  const later = new Map<string, string[]>();
  for (const [, { first, then }] of given) {
    if (first !== then) later.set(first, [...(later.get(first) ?? []), then]);
  }
  for (const ring of inOrderOfNeed(later).rings) {
    const place = given.find(([, { first, then }]) => first === ring[0] && then === ring[1])?.[0] ?? 0;
    faults.push(source.fault(['order', place], messages.orderRing(ring)));
  }
  return { order: given.map(([place, wish]) => ({ ...wish, position: source.positionOf(['order', place]) })), faults };
}
