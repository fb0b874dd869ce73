import { FaultError, namesOf, type Face, type Item, type PanelPiece, type PostPiece } from '../read/index.ts';
import { buildBraces, type BracedFace } from './braces.ts';
import { axesFor } from './deck.ts';
import { dimensionsOf } from './dimensions.ts';
import { CORNERS } from './frame.ts';
import { buildGroups, type Groups, type Names } from './groups.ts';
import { alikePatterns } from './patterns/alike.ts';
import { placesOfShortForm } from './places.ts';
import { patternOfDeck, patternOfPlate } from './short-patterns.ts';
import { structureModel } from './structure/structure-model.ts';
import { holdsAt } from './levels.ts';
import { buildPlate, type Plate } from './plates.ts';
import { buildPost, type Posts } from './posts.ts';
import type { FlatPanel, Group, Model, Part, TubeNeed, Vec2 } from './types.ts';

/** One size variant of an item: every part shaped and placed. Throws when the item has no such size. */
export function buildModel(item: Item, size: string): Model {
  const given = valuesOf(item, size);
  const { skeleton, places } = item.structures[size] ?? { skeleton: null, places: [] };
  return skeleton === null ? shortFormModel(item, size, given) : structureModel(item, size, skeleton, places, given);
}

/** A size of an item of decks, frames, posts and flat panels. */
function shortFormModel(item: Item, size: string, given: Names): Model {
  const axes = axesOf(item, given);
  const groups = buildGroups(item, given, axes);
  const [first] = groups.decks;
  if (first === undefined) throw missing(item, 'a deck');
  const posts = buildPosts(item, groups, axes);
  const faces = bracedFaces(item, groups.groups);
  const braces = buildBraces(item.kit, axes, faces, groups.parts);
  const plates = item.pieces.flatMap((piece) => (piece.is === 'panel' ? platesOf(item, piece, groups, axes) : []));
  const parts = [...drilledFor(plates, groups.parts), ...posts.parts, ...plates.flatMap(({ plate }) => plate.parts), ...braces.parts];
  return {
    item: item.name,
    size,
    use: item.use,
    kit: item.kit,
    parameters: given,
    parts,
    groups: groups.groups,
    joinings: [...groups.joinings, ...posts.joinings, ...plates.flatMap(({ plate }) => plate.joinings), ...braces.joinings],
    connections: [...groups.connections, ...posts.connections, ...plates.flatMap(({ plate }) => plate.connections), ...braces.connections],
    pattern: first.deck.pattern,
    patterns: alikePatterns([
      ...groups.decks.flatMap(({ piece, deck }) => groups.parts.filter((part) => part.kind === 'panel' && groups.groups.some(({ name, piece: of }) => name === part.group && of === piece))
        .map((part) => ({ pattern: patternOfDeck(item.kit, deck.pattern), partId: part.id }))),
      ...plates.map(({ plate }) => ({ pattern: patternOfPlate(item.kit, plate.panel), partId: plate.panel.partIds[0] ?? '' })),
    ]),
    places: placesOfShortForm(item, size, groups.groups, groups.parts, platesByPiece(plates)),
    plates: alikeTogether(plates.map(({ plate }) => plate.panel)),
    dimensions: dimensionsOf(item, axes, first.tops, parts),
    tubes: tubesOf(parts),
    bracedFaces: faces.map(({ face }) => face),
    deckTops: groups.decks.flatMap(({ tops }) => tops),
  };
}

/** The parameters of a size and the expressions over them, in the order of the file. */
function valuesOf(item: Item, size: string): Names {
  const chosen = item.sizes.find((candidate) => candidate.name === size);
  if (chosen === undefined) {
    throw new RangeError(`${item.source.file}: no size "${size}"; would be right: one of ${item.sizes.map((each) => each.name).join(', ')}`);
  }
  return namesOf(item, size);
}

const missing = (item: Item, what: string): FaultError => new FaultError([{
  position: { file: item.source.file, line: 1, column: 1 }, field: 'pieces', found: `no ${what.replace(/^an? /, '')}`, remedy: `${what} among the pieces`,
}]);

/** All decks and frames stand between the same posts: the first one tells how far apart these are. */
function axesOf(item: Item, names: Names): Vec2 {
  const piece = item.pieces.find((each) => each.is === 'deck' || each.is === 'frame');
  if (piece?.is !== 'deck' && piece?.is !== 'frame') throw missing(item, 'a deck');
  return axesFor(item.kit, piece.width.evaluate(names).value, piece.depth.evaluate(names).value);
}

function buildPosts(item: Item, { groups, parts, names }: Groups, axes: Vec2): Posts {
  const piece = item.pieces.find((each): each is PostPiece => each.is === 'post');
  if (piece === undefined) throw missing(item, 'a post');
  const made = CORNERS.map((corner) => {
    const length = (corner.y === 'front' ? piece.front : piece.back).evaluate(names).value;
    return buildPost(item.kit, corner, axes, length, holdsAt(corner, groups, parts, axes));
  });
  return { parts: made.flatMap((each) => each.parts), joinings: made.flatMap((each) => each.joinings), connections: made.flatMap((each) => each.connections) };
}

const lowestOf = (groups: readonly Group[], piece: string): Group | undefined =>
  groups.filter((group) => group.piece === piece).sort((a, b) => a.level - b.level)[0];

const highestOf = (groups: readonly Group[], piece: string): Group | undefined =>
  groups.filter((group) => group.piece === piece).sort((a, b) => b.level - a.level)[0];

function bracedFaces(item: Item, groups: readonly Group[]): readonly BracedFace[] {
  return item.connections.flatMap((connection) => {
    if (connection.kind !== 'brace') return [];
    const low = lowestOf(groups, connection.piece);
    const high = highestOf(groups, connection.to ?? connection.piece);
    return low === undefined || high === undefined ? [] : connection.faces.map((face) => ({ face, low, high }));
  });
}

/** The flat panels of each panel piece, by its name. */
function platesByPiece(plates: readonly PlacedPlate[]): ReadonlyMap<string, readonly string[]> {
  const names = [...new Set(plates.map(({ piece }) => piece))];
  return new Map(names.map((name) => [name, plates.filter(({ piece }) => piece === name).flatMap(({ plate }) => plate.panel.partIds)]));
}

interface PlacedPlate {
  readonly piece: string;
  readonly plate: Plate;
  readonly tubeIds: readonly [string, string];
}

function platesOf(item: Item, piece: PanelPiece, { groups, parts }: Groups, axes: Vec2): readonly PlacedPlate[] {
  const low = lowestOf(groups, piece.from);
  const high = highestOf(groups, piece.to);
  if (low === undefined || high === undefined) return [];
  return piece.on.map((face) => {
    const tubeIds = [tubeOf(low, face, parts), tubeOf(high, face, parts)] as const;
    return { piece: piece.name, plate: buildPlate(item.kit, axes, face, piece.name, low.level, high.level, tubeIds), tubeIds };
  });
}

/** The tube of a deck or frame on one side. */
function tubeOf(group: Group, face: Face, parts: readonly Part[]): string {
  const tube = parts.find(({ group: name, shape, place }) => name === group.name && shape.form === 'tube' && place.at === 'side' && place.side === face);
  if (tube === undefined) throw new RangeError(`${group.name} has no tube on its ${face}`);
  return tube.id;
}

/** The tubes that plates are pinned to get their holes. */
function drilledFor(plates: readonly PlacedPlate[], parts: readonly Part[]): readonly Part[] {
  return parts.map((part) => {
    const along = plates.filter(({ tubeIds }) => tubeIds.includes(part.id)).flatMap(({ plate }) => plate.along);
    if (along.length === 0 || part.shape.form !== 'tube') return part;
    const diameter = plates[0]?.plate.panel.holes[0]?.diameter ?? 0;
    return { ...part, shape: { ...part.shape, holes: [...part.shape.holes, ...along.map((at) => ({ at, diameter }))] } };
  });
}

/** Plates of one size are cut alike. */
function alikeTogether(plates: readonly FlatPanel[]): readonly FlatPanel[] {
  const sizeOf = (plate: FlatPanel): string => `${plate.width.toFixed(3)} ${plate.height.toFixed(3)} ${plate.holes.length}`;
  return [...new Set(plates.map(sizeOf))].map((size) => {
    const alike = plates.filter((plate) => sizeOf(plate) === size);
    return { ...(alike[0] ?? { width: 0, height: 0, holes: [] }), partIds: alike.flatMap((plate) => plate.partIds) };
  });
}

/** Tubes to cut, posts first, from the longest to the shortest of a kind. */
function tubesOf(parts: readonly Part[]): readonly TubeNeed[] {
  return (['post', 'long-tube', 'short-tube'] as const).flatMap((kind) => {
    const lengths = parts.flatMap((part) => (part.kind === kind && part.shape.form === 'tube' ? [part.shape.length] : []));
    const different = [...new Set(lengths)].sort((a, b) => b - a);
    return different.map((length): TubeNeed => ({ kind, length, count: lengths.filter((each) => each === length).length }));
  });
}

