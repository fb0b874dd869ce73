import { FaultError, type DeckPiece, type Item, type PostPiece, type Quantity } from '../read/index.ts';
import { buildBraces } from './braces.ts';
import { buildDeck, type Deck } from './deck.ts';
import { chained, moved, turned } from './pose.ts';
import { buildPosts } from './posts.ts';
import type { Group, Joining, Model, NamedLength, Part, Pose, TubeNeed } from './types.ts';

type Names = Readonly<Record<string, Quantity>>;

/** One size variant of an item: every part shaped and placed. Throws when the item has no such size. */
export function buildModel(item: Item, size: string): Model {
  const names = valuesOf(item, size);
  const deckPiece = pieceOf(item, 'deck');
  const postPiece = pieceOf(item, 'post');
  const deck = buildDeck(item.kit, value(deckPiece.width, names), value(deckPiece.depth, names));
  const tops = deckTops(deckPiece, names);
  const levels = tops.map((top) => top - deck.pattern.wrapRadius - deck.pattern.thickness);
  const groups = levels.map((level, index) => deckGroup(deckPiece.name, deck, level, index));
  const deckNames = groups.map((group) => group.name);
  const height = value(postPiece.length, names);
  const posts = buildPosts(item.kit, deck.axes, height, levels, deckNames);
  const faces = item.connections.flatMap((connection) => connection.kind === 'brace' ? connection.faces : []);
  const braces = buildBraces(item.kit, deck.axes, levels, faces, deckNames);
  return {
    item: item.name,
    size,
    kit: item.kit,
    parameters: names,
    parts: [...groups.flatMap((group) => deckParts(deck, group)), ...posts.parts, ...braces.parts],
    groups,
    joinings: [...groups.flatMap((group) => deckJoinings(deck, group)), ...posts.joinings, ...braces.joinings],
    pattern: deck.pattern,
    dimensions: dimensionsOf(item, deck, tops, height),
    tubes: tubesOf(deck, groups.length, height),
    bracedFaces: faces,
    deckTops: tops,
  };
}

/** The parameters of a size and the expressions over them, in the order of the file. */
function valuesOf(item: Item, size: string): Names {
  const chosen = item.sizes.find((candidate) => candidate.name === size);
  if (chosen === undefined) {
    throw new RangeError(`${item.source.file}: no size "${size}"; would be right: one of ${item.sizes.map((each) => each.name).join(', ')}`);
  }
  return item.expressions.reduce<Names>(
    (names, { name, expression }) => ({ ...names, [name]: expression.evaluate(names) }),
    chosen.values,
  );
}

const value = (expression: DeckPiece['width'], names: Names): number => expression.evaluate(names).value;

function pieceOf<Kind extends 'deck' | 'post'>(item: Item, kind: Kind): Extract<DeckPiece | PostPiece, { is: Kind }> {
  const piece = item.pieces.find((candidate) => candidate.is === kind);
  if (piece === undefined) {
    throw new FaultError([{
      position: { file: item.source.file, line: 1, column: 1 },
      field: 'pieces',
      found: `no piece that is a ${kind}`,
      remedy: `a piece with "is: ${kind}"`,
    }]);
  }
  return piece as Extract<DeckPiece | PostPiece, { is: Kind }>;
}

function deckTops(piece: DeckPiece, names: Names): readonly number[] {
  const count = value(piece.count, names);
  return Array.from({ length: count }, (_, index) =>
    value(piece.top, { ...names, index: { value: index, dimension: 'count' } }));
}

/** A deck is used the other way up than it is built: turned over about its long side, then lifted to its level. */
const inUse = (deck: Deck, level: number): Pose =>
  chained(moved([0, 0, level]), turned([1, 0, 0], Math.PI), moved([0, 0, -deck.pattern.wrapRadius]));

function deckGroup(piece: string, deck: Deck, level: number, index: number): Group {
  const name = `${piece}-${index + 1}`;
  return { name, piece, pose: inUse(deck, level), partIds: deck.parts.map((part) => `${name}/${part.id}`) };
}

const deckParts = (deck: Deck, group: Group): Part[] => deck.parts.map((part) => ({
  ...part,
  id: `${group.name}/${part.id}`,
  group: group.name,
  pose: chained(group.pose, part.pose),
}));

const deckJoinings = (deck: Deck, group: Group): Joining[] => deck.joinings.map(({ by, parts }) => ({
  by: `${group.name}/${by}`,
  parts: parts.map((id) => `${group.name}/${id}`),
}));

/** Lettered lengths for the drawing and the table, from the outermost ends of the finished item. */
function dimensionsOf(item: Item, deck: Deck, tops: readonly number[], height: number): readonly NamedLength[] {
  const x = deck.axes[0] + item.kit.joint.studReach;
  const y = deck.axes[1] + item.kit.joint.studReach;
  const [low = 0, next = low] = tops;
  return [
    { letter: 'A', name: 'width', value: 2 * x, from: [-x, -y, 0], to: [x, -y, 0] },
    { letter: 'B', name: 'depth', value: 2 * y, from: [x, -y, 0], to: [x, y, 0] },
    { letter: 'C', name: 'height', value: height, from: [-x, -y, 0], to: [-x, -y, height] },
    { letter: 'D', name: 'lowest-deck', value: low, from: [x, -y, 0], to: [x, -y, low] },
    { letter: 'E', name: 'deck-spacing', value: next - low, from: [x, -y, low], to: [x, -y, next] },
  ];
}

function tubesOf(deck: Deck, decks: number, height: number): readonly TubeNeed[] {
  const lengthOf = (kind: string): number => {
    const tube = deck.parts.find((part) => part.kind === kind);
    return tube?.shape.form === 'tube' ? tube.shape.length : 0;
  };
  return [
    { kind: 'post', length: height, count: 4 },
    { kind: 'long-tube', length: lengthOf('long-tube'), count: 2 * decks },
    { kind: 'short-tube', length: lengthOf('short-tube'), count: 2 * decks },
  ];
}
