import { connectionSchema, orderSchema } from './item-schema.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { pieceNames } from './pieces.ts';
import { inOrderOfNeed } from './rings.ts';
import type { Connection, Fault, OrderWish } from './types.ts';
import { goodItems, sectionEntries } from './validate.ts';
import type { YamlSource } from './yaml-source.ts';

/** The connections that can be read; faults of the pieces they name. */
export function readConnections(
  source: YamlSource, raw: unknown, rawPieces: unknown,
): { readonly connections: readonly Connection[]; readonly faults: readonly Fault[] } {
  const [decks, posts] = [pieceNames(rawPieces, 'deck'), pieceNames(rawPieces, 'post')];
  const pieces = new Map(sectionEntries(rawPieces));
  const ofUnknownKind = [...pieces.keys()].filter((name) => !decks.includes(name) && !posts.includes(name));
  const faults: Fault[] = [];
  const expect = (place: number, field: string, name: string, known: readonly string[], what: string): void => {
    if (!known.includes(name) && !ofUnknownKind.includes(name)) faults.push(source.fault(['connections', place, field], messages.pieceName(what, nearestName(name, known), known)));
  };
  const connections = [...goodItems(raw, connectionSchema)].map(([place, given]): Connection => {
    const position = source.positionOf(['connections', place]);
    if ('brace' in given) {
      expect(place, 'brace', given.brace, decks, messages.aDeck);
      return { kind: 'brace', piece: given.brace, faces: given.faces, position };
    }
    expect(place, 'pin', given.pin, posts, messages.aPost);
    expect(place, 'to', given.to, decks, messages.aDeck);
    const through = new Map(sectionEntries(pieces.get(given.pin))).get('through');
    if (typeof through === 'string' && decks.includes(through) && decks.includes(given.to) && through !== given.to) {
      faults.push(source.fault(['connections', place, 'to'], messages.postGoesThrough(through)));
    }
    return { kind: 'pin', piece: given.pin, to: given.to, position };
  });
  return { connections, faults };
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
