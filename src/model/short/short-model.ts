import { PARTS } from '../../parts/facts.ts';
import type { Face, Item } from '../../read/index.ts';
import { dimensionsOf } from '../dimensions.ts';
import { WRAPPED } from '../folding.ts';
import { joiningsFrom } from '../joinings.ts';
import { flatPattern } from '../pattern.ts';
import { alikePatterns } from '../patterns/alike.ts';
import { placesOfShortForm } from '../places.ts';
import { buildStructure, type BuiltStructure } from '../structure/build-structure.ts';
import { platesOf } from '../structure/structure-model.ts';
import type { Connection, FlatPattern, Group, Model, Part, Shape, TubeNeed } from '../types.ts';
import { highestOf, lowestOf, plateId, shortBlueprint, tubeId, type BracedFace } from './blueprint.ts';
import { standingIn, type Names, type ShortForm, type Standing } from './standing.ts';

/** A size of an item of decks, frames, posts and flat panels, built as the points and bars that these are short for. */
export function shortModel(item: Item, size: string, given: Names): Model {
  const form = standingIn(item, given);
  const faces = bracedFaces(item, form.standing);
  const built = buildStructure(item.kit, shortBlueprint(item, form, faces));
  const pattern = flatPattern(item.kit, form.axes);
  const made = partsById(item, built, pattern);
  const groups = form.standing.map((standing) => groupOf(standing, built));
  const parts = [...groups.flatMap(({ partIds }) => partIds), ...looseIds(built)].flatMap((id) => made.get(id) ?? []);
  const connections = inOrder(built.connections, form, built);
  return {
    item: item.name, size, use: item.use, kit: item.kit, parameters: given, parts, groups,
    joinings: joiningsFrom(connections, parts),
    connections, pattern,
    patterns: alikePatterns(built.patterns),
    places: placesOfShortForm(item, size, groups, parts, new Map(form.panels.map((piece) => [piece.name, piece.on.map((face) => plateId(piece, face))]))),
    plates: platesOf(built),
    dimensions: dimensionsOf({ parts, connections, kit: item.kit }, form.firstTops),
    tubes: tubesOf(parts),
    bracedFaces: faces.map(({ face }): Face => face),
    deckTops: form.tops,
  };
}

function bracedFaces(item: Item, standing: readonly Standing[]): readonly BracedFace[] {
  return item.connections.flatMap((connection) => {
    if (connection.kind !== 'brace') return [];
    const [low, high] = [lowestOf(standing, connection.piece), highestOf(standing, connection.to ?? connection.piece)];
    return low === undefined || high === undefined ? [] : connection.faces.map((face) => ({ face, low, high }));
  });
}

/** A deck or frame: joints, tubes, panel and its pins, in this order. */
function groupOf({ name, piece, kind, sides, level, pose }: Standing, { joints, bars, panels }: BuiltStructure): Group {
  const own = [...joints, ...bars.map(({ built }) => built.part), ...panels.flatMap(({ part, pins }) => [part, ...pins])].filter(({ group }) => group === name);
  return { name, piece, kind, sides, level, pose, partIds: own.map(({ id }) => id) };
}

/** Posts with their pins, flat panels with theirs, cables. */
const looseIds = ({ bars, panels, cables }: BuiltStructure): readonly string[] => [
  ...bars.filter(({ built }) => built.plan.group === null).flatMap(({ built, pins }) => [built.part, ...pins]),
  ...panels.filter(({ plan }) => plan.group === null).flatMap(({ part, pins }) => [part, ...pins]),
  ...cables,
].map(({ id }) => id);

/** The parts by their ids; a deck's panel keeps the form that decks know it by. */
function partsById(item: Item, { joints, bars, panels, cables }: BuiltStructure, pattern: FlatPattern): ReadonlyMap<string, Part> {
  const shape: Shape = { form: 'panel', pattern, folding: WRAPPED };
  const wrapped = panels.map(({ part, plan, pins }) => [plan.is === 'wrapped' ? { ...part, shape, mass: PARTS[part.kind].mass(shape, item.kit.panel.density) } : part, ...pins]);
  return new Map([...joints, ...bars.flatMap(({ built, pins }) => [built.part, ...pins]), ...wrapped.flat(), ...cables].map((part) => [part.id, part]));
}

/** Connections in the order of the work: those of each deck and frame by its sides, of posts, of flat panels, of cables. */
function inOrder(connections: readonly Connection[], { standing }: ShortForm, { bars, panels, cables }: BuiltStructure): readonly Connection[] {
  const owners = [
    ...standing.flatMap((each) => [...each.sides.map((side) => tubeId(each, side)), ...panels.filter(({ plan }) => plan.group === each.name).map(({ plan }) => plan.id)]),
    ...bars.filter(({ built }) => built.plan.group === null).map(({ built }) => built.plan.id),
    ...panels.filter(({ plan }) => plan.group === null).map(({ plan }) => plan.id),
    ...cables.map(({ id }) => id),
  ];
  const rank = new Map(owners.map((id, place) => [id, place]));
  return connections.map((connection, place) => ({ connection, place, owner: rank.get(ownerOf(connection)) ?? owners.length }))
    .sort((a, b) => a.owner - b.owner || a.place - b.place).map(({ connection }) => connection);
}

function ownerOf(connection: Connection): string {
  switch (connection.is) {
    case 'socket':
    case 'sleeve': return connection.bar;
    case 'pin': return connection.holds[0] ?? '';
    case 'panel-pin':
    case 'lay':
    case 'wrap': return connection.panel;
    case 'hook': return connection.cable;
    case 'cap':
    case 'foot':
    case 'bracket': return connection.bar;
    case 'hinge': return connection.leaves[0];
  }
}

/** Tubes to cut, posts first, from the longest to the shortest of a kind. */
function tubesOf(parts: readonly Part[]): readonly TubeNeed[] {
  return (['post', 'long-tube', 'short-tube'] as const).flatMap((kind) => {
    const lengths = parts.flatMap((part) => (part.kind === kind && part.shape.form === 'tube' ? [part.shape.length] : []));
    const different = [...new Set(lengths)].sort((a, b) => b - a);
    return different.map((length): TubeNeed => ({ kind, length, count: lengths.filter((each) => each === length).length }));
  });
}
