import type { Connection, Model, Part, Shape, Solids, Vec3 } from '../../model/index.ts';
import type { Piece } from './convex.ts';
import { flapForms, type FlapForm } from './flap-forms.ts';
import { piecesOf, seenFrom } from './pieces.ts';

/** What is handled as one while an item is taken apart. */
export type Unit = UnitBase & (
  | { readonly is: 'part' }
  /** A pin with its nut through what it holds. */
  | { readonly is: 'fastener'; readonly connection: Extract<Connection, { is: 'pin' }> }
  /** The pins of a flap, which are put in together. */
  | { readonly is: 'row'; readonly panel: string; readonly flap: string; readonly out: Vec3 }
  /** A flap round its bar, and the same flap still straight: one of the two is there. */
  | { readonly is: 'folded' | 'flat'; readonly panel: string; readonly flap: FlapForm });

interface UnitBase {
  readonly index: number;
  readonly parts: readonly string[];
  /** Where it stands in the finished item; a nut apart from its pin, for it goes another way. */
  readonly pieces: readonly Piece[];
  readonly nut: readonly Piece[];
  readonly mass: number;
  /** Units of one number look alike, whatever holes they have. */
  readonly look: number;
}

/** All units of an item, each known by its index. */
export interface Units {
  readonly all: readonly Unit[];
  /** The unit that a part is, or is in. */
  readonly of: ReadonlyMap<string, Unit>;
  readonly parts: ReadonlyMap<string, Part>;
  /** By panel: its flaps; those of one pattern are the same. */
  readonly flaps: ReadonlyMap<string, readonly FlapForm[]>;
}

type Draft = Unit extends infer Each ? (Each extends Unit ? Omit<Each, 'index' | 'look'> & { readonly seen: string } : never) : never;

/** The units of a model's parts. Throws when a connection names a part that is not there. */
export function unitsOf(model: Pick<Model, 'parts'>, connections: readonly Connection[], solids: Solids): Units {
  const parts = new Map(model.parts.map((part) => [part.id, part]));
  const find = (id: string): Part => {
    const part = parts.get(id);
    if (part === undefined) throw new RangeError(`a connection names a part that is not there: ${id}`);
    return part;
  };
  const pins = connections.filter((each) => each.is === 'pin');
  const small = new Set([...pins.flatMap(({ pin, nut }) => [pin, nut]), ...connections.flatMap((each) => (each.is === 'panel-pin' ? [each.pin] : []))]);
  const flaps = formsOf(model.parts);
  const wraps = connections.flatMap((each) => (each.is === 'wrap' ? [each] : []));
  const inBox = connections.flatMap((each) => (each.is === 'panel-pin' && !wraps.some(({ panel, flap }) => panel === each.panel && flap === each.flap) ? [each] : []));
  const drafts: readonly Draft[] = [
    ...model.parts.filter(({ id }) => !small.has(id)).map((part) => partDraft(part, inBox.filter(({ panel }) => panel === part.id).map(({ pin }) => find(pin)), solids)),
    ...model.parts.flatMap((part) => flapDrafts(part, flaps.get(part.id) ?? [], connections)),
    ...pins.map((pin) => fastenerDraft(pin, find(pin.pin), find(pin.nut), solids)),
    ...rowDrafts(connections.filter((each) => !inBox.some((pin) => pin === each)), find, solids),
  ];
  return numbered(drafts, parts, flaps);
}

function numbered(drafts: readonly Draft[], parts: ReadonlyMap<string, Part>, flaps: Units['flaps']): Units {
  const looks = new Map<string, number>();
  const all = drafts.map(({ seen, ...draft }, index): Unit => {
    const look = looks.get(seen) ?? looks.size;
    looks.set(seen, look);
    return { ...draft, index, look } as Unit;
  });
  const own = all.filter((unit) => unit.is !== 'folded' && unit.is !== 'flat');
  return { all, parts, flaps, of: new Map(own.flatMap((unit) => unit.parts.map((id) => [id, unit]))) };
}

/** A part; a box that is folded and pinned before it is hung, with its pins. */
const partDraft = (part: Part, pins: readonly Part[], solids: Solids): Draft => ({
  is: 'part', parts: [part, ...pins].map(({ id }) => id), mass: [part, ...pins].reduce((sum, { mass }) => sum + mass, 0), seen: lookOf(part.shape), nut: [],
  pieces: [part, ...pins].flatMap(({ shape, pose }) => piecesOf(shape, pose, solids)),
});

function fastenerDraft(connection: Extract<Connection, { is: 'pin' }>, pin: Part, nut: Part, solids: Solids): Draft {
  return {
    is: 'fastener', connection, parts: [pin.id, nut.id], mass: pin.mass + nut.mass, seen: `${lookOf(pin.shape)} ${lookOf(nut.shape)}`,
    pieces: piecesOf(pin.shape, pin.pose, solids), nut: piecesOf(nut.shape, nut.pose, solids),
  };
}

/** The flaps of each panel; a pattern's are worked out once. */
function formsOf(parts: readonly Part[]): Units['flaps'] {
  const known = new Map<unknown, readonly FlapForm[]>();
  return new Map(parts.flatMap(({ id, shape }) => {
    if (shape.form !== 'panel' && shape.form !== 'folded') return [];
    const forms = known.get(shape.pattern) ?? flapForms(shape);
    known.set(shape.pattern, forms);
    return [[id, forms] as const];
  }));
}

function flapDrafts(part: Part, forms: readonly FlapForm[], connections: readonly Connection[]): readonly Draft[] {
  const wrapped = new Set(connections.flatMap((each) => (each.is === 'wrap' && each.panel === part.id ? [each.flap] : [])));
  return forms.filter(({ name }) => wrapped.has(name)).flatMap((flap): readonly Draft[] => {
    const common = { parts: [part.id], panel: part.id, flap, mass: 0, nut: [] };
    const size = `${(flap.to - flap.from).toFixed(2)} ${flap.creases}`;
    const at = (stage: number): readonly Piece[] => flap.piecesAt(stage).map((piece) => seenFrom(part.pose, piece));
    return [
      { ...common, is: 'folded', seen: `folded ${size}`, pieces: at(1) },
      { ...common, is: 'flat', seen: `flat ${size}`, pieces: at(flap.raised) },
    ];
  });
}

/** The pins of each flap, as the model lists them: both ends first. */
function rowDrafts(connections: readonly Connection[], find: (id: string) => Part, solids: Solids): readonly Draft[] {
  const pins = connections.filter((each) => each.is === 'panel-pin');
  const flaps = new Map<string, typeof pins>();
  for (const each of pins) {
    const key = JSON.stringify([each.panel, each.flap]);
    flaps.set(key, [...(flaps.get(key) ?? []), each]);
  }
  return [...flaps.values()].flatMap(([first, ...more]): readonly Draft[] => {
    if (first === undefined) return [];
    const parts = [first, ...more].map(({ pin }) => find(pin));
    return [{
      is: 'row', panel: first.panel, flap: first.flap, out: first.out, nut: [],
      parts: parts.map(({ id }) => id), mass: parts.reduce((sum, { mass }) => sum + mass, 0),
      seen: `row ${parts.length} ${lookOf((parts[0] ?? find(first.pin)).shape)}`,
      pieces: parts.flatMap(({ shape, pose }) => piecesOf(shape, pose, solids)),
    }];
  });
}

/** A shape without what is done to it on the way: holes drilled in place, flaps folded. */
function lookOf(shape: Shape): string {
  switch (shape.form) {
    case 'tube': return `tube ${shape.length.toFixed(2)} ${shape.outside} ${shape.inside}`;
    case 'joint': return `joint ${JSON.stringify(shape.joint)}`;
    case 'panel': return `panel ${shape.pattern.blank.map((side) => side.toFixed(2)).join(' ')}`;
    case 'folded': return `folded ${shape.pattern.form} ${[...shape.pattern.min, ...shape.pattern.max].map((side) => side.toFixed(2)).join(' ')} ${shape.pattern.flaps.length}`;
    case 'ported-joint': return `joint ${shape.joint.name}`;
    case 'plate': return `plate ${shape.width.toFixed(2)} ${shape.height.toFixed(2)} ${shape.thickness}`;
    default: return JSON.stringify(shape);
  }
}
