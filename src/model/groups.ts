import { pointName, type DeckPiece, type FramePiece, type Item, type Kit, type Quantity } from '../read/index.ts';
import { connectionsInPlace } from './connections.ts';
import { buildDeck, type Deck } from './deck.ts';
import { buildFrame, SIDES, type Frame } from './frame.ts';
import { chained, moved, turned } from './pose.ts';
import type { Connection, Group, Joining, Part, Pose, Vec2 } from './types.ts';

export type Names = Readonly<Record<string, Quantity>>;

/** The decks and frames of a size variant, placed, and the names they give to later expressions. */
export interface Groups {
  readonly groups: readonly Group[];
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
  readonly names: Names;
  readonly decks: readonly { readonly piece: string; readonly deck: Deck; readonly tops: readonly number[] }[];
}

/** Builds the decks and frames in the order of the file; each publishes its named points to those after it. */
export function buildGroups(item: Item, given: Names, axes: Vec2): Groups {
  return item.pieces.reduce<Groups>((done, piece) => {
    switch (piece.is) {
      case 'deck': return withDeck(done, item.kit, piece);
      case 'frame': return withFrame(done, item.kit, piece, axes);
      default: return done;
    }
  }, { groups: [], parts: [], joinings: [], connections: [], names: given, decks: [] });
}

const mm = (value: number): Quantity => ({ value, dimension: 'length' });

const repeated = (piece: { readonly count: DeckPiece['count'] }, height: DeckPiece['top'], names: Names): readonly number[] =>
  Array.from({ length: piece.count.evaluate(names).value }, (_, index) =>
    height.evaluate({ ...names, index: { value: index, dimension: 'count' } }).value);

function withDeck(done: Groups, kit: Kit, piece: DeckPiece): Groups {
  const { names } = done;
  const deck = buildDeck(kit, piece.width.evaluate(names).value, piece.depth.evaluate(names).value);
  const tops = repeated(piece, piece.top, names);
  const levels = tops.map((top) => top - deck.pattern.wrapRadius - deck.pattern.thickness);
  const placed = levels.map((level, index) => placedGroup(piece.name, index, 'deck', SIDES, level, deckInUse(deck, level), deck));
  return joined(done, placed, { [pointName(piece.name, 'top')]: mm(Math.min(...tops)), ...levelNames(piece.name, levels) },
    [{ piece: piece.name, deck, tops }]);
}

function withFrame(done: Groups, kit: Kit, piece: FramePiece, axes: Vec2): Groups {
  const { names } = done;
  const frame = buildFrame(kit, axes, piece.width.evaluate(names).value, piece.depth.evaluate(names).value, piece.sides, 'up', 0);
  const levels = repeated(piece, piece.level, names);
  const placed = levels.map((level, index) => placedGroup(piece.name, index, 'frame', piece.sides, level, moved([0, 0, level]), frame));
  return joined(done, placed, levelNames(piece.name, levels), []);
}

const levelNames = (name: string, levels: readonly number[]): Names => ({
  [pointName(name, 'level')]: mm(Math.min(...levels)),
  [pointName(name, 'high')]: mm(Math.max(...levels)),
});

/** A deck is used the other way up than it is built: turned over about its long side, then lifted to its level. */
const deckInUse = (deck: Deck, level: number): Pose =>
  chained(moved([0, 0, level]), turned([1, 0, 0], Math.PI), moved([0, 0, -deck.pattern.wrapRadius]));

interface PlacedGroup {
  readonly group: Group;
  readonly parts: readonly Part[];
  readonly joinings: readonly Joining[];
  readonly connections: readonly Connection[];
}

function placedGroup(piece: string, index: number, kind: Group['kind'], sides: Group['sides'], level: number, pose: Pose, made: Frame): PlacedGroup {
  const name = `${piece}-${index + 1}`;
  const own = (id: string): string => `${name}/${id}`;
  return {
    group: { name, piece, kind, sides, level, pose, partIds: made.parts.map((part) => own(part.id)) },
    parts: made.parts.map((part) => ({ ...part, id: own(part.id), group: name, pose: chained(pose, part.pose) })),
    joinings: made.joinings.map((joining) => ownJoining(joining, own)),
    connections: connectionsInPlace(made.connections, own, pose),
  };
}

/** A joining inside a deck or frame, by the names its parts have in the item. */
function ownJoining(joining: Joining, own: (id: string) => string): Joining {
  switch (joining.by) {
    case 'socket': return { ...joining, joint: own(joining.joint), tube: own(joining.tube) };
    case 'tab-pin': return { ...joining, pin: own(joining.pin), panel: own(joining.panel) };
    default: return joining;
  }
}

const joined = (done: Groups, placed: readonly PlacedGroup[], names: Names, decks: Groups['decks']): Groups => ({
  groups: [...done.groups, ...placed.map((each) => each.group)],
  parts: [...done.parts, ...placed.flatMap((each) => each.parts)],
  joinings: [...done.joinings, ...placed.flatMap((each) => each.joinings)],
  connections: [...done.connections, ...placed.flatMap((each) => each.connections)],
  names: { ...done.names, ...names },
  decks: [...done.decks, ...decks],
});
