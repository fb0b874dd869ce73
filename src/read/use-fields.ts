import { namesOf, valueThat, workOut, type Names, type Working } from './item-values.ts';
import { messages } from './messages.ts';
import type { NamedExpression } from './named-expressions.ts';
import { expressionReader, type PlacedExpression } from './placed-expressions.ts';
import type { Declared, Declares, Fault, Item, Use, WallKind } from './types.ts';
import { mattressFields, peopleNames, useFields } from './use-schema.ts';
import { sectionEntries } from './validate.ts';
import type { YamlSource } from './yaml-source.ts';

/** What most walls are made of that an item file says nothing of. */
const USUAL_WALL: WallKind = 'masonry';

const uses: readonly string[] = ['storage', 'table', 'seat', 'bed'] satisfies readonly Use[];

/** What a file says of its use, with the expressions ready to be worked out for a size; null where it cannot be read. */
interface ReadDeclares {
  readonly declares: Declares | null;
  readonly mark: PlacedExpression | null;
  readonly mattress: readonly PlacedExpression[];
  readonly faults: readonly Fault[];
}

/** Reads place, wall, people, mark and mattress. A field that the use asks for and lacks is a fault, and so is one that it has no place for. */
export function readDeclares(source: YamlSource, names: readonly string[]): ReadDeclares {
  const raw = new Map(sectionEntries(source.raw));
  const faults: Fault[] = [...peopleFaults(source, raw), ...missingFaults(source, raw)];
  const reader = expressionReader(source, faults);
  const read = (path: readonly string[], text: unknown, wanted: 'length' | null): PlacedExpression | null =>
    (typeof text === 'string' || typeof text === 'number' ? reader(path, text, wanted, { names }) : null);
  const given = new Map(sectionEntries(raw.get('mattress')));
  const mark = read(['mark'], raw.get('mark'), null);
  const sides = mattressFields.map((field) => read(['mattress', field], given.get(field), 'length'));
  return { declares: declaresOf(raw, mark, sides), mark, mattress: sides.flatMap((side) => side ?? []), faults };
}

function declaresOf(raw: ReadonlyMap<string, unknown>, mark: PlacedExpression | null, sides: readonly (PlacedExpression | null)[]): Declares | null {
  const people = useFields.for.safeParse(raw.get('for'));
  const place = useFields.place.safeParse(raw.get('place'));
  const wall = useFields.wall.safeParse(raw.get('wall'));
  if (!people.success || !place.success || !wall.success) return null;
  const [length, width, thickness] = sides;
  const mattress = length && width && thickness
    ? { length: length.expression, width: width.expression, thickness: thickness.expression } : null;
  return { place: place.data, wall: wall.data ?? USUAL_WALL, people: people.data, mark: mark?.expression ?? null, mattress };
}

/** A bed here is for small children who walk, and nothing else is: cots, bunks and longer beds are not checked. */
function peopleFaults(source: YamlSource, raw: ReadonlyMap<string, unknown>): Fault[] {
  const [use, people] = [raw.get('use'), raw.get('for')];
  if (typeof use !== 'string' || !uses.includes(use) || !useFields.for.safeParse(people).success) return [];
  const forSmall = people === 'small-children';
  if (use === 'bed') return forSmall ? [] : [source.fault(['for'], messages.bedPeople)];
  if (forSmall) return [source.fault(['for'], messages.people(peopleNames.slice(0, 3)))];
  return use === 'storage' && people === 'pupils' ? [source.fault(['for'], messages.people(peopleNames.slice(0, 2)))] : [];
}

function missingFaults(source: YamlSource, raw: ReadonlyMap<string, unknown>): Fault[] {
  const use = raw.get('use');
  const bed = use === 'bed';
  const pupils = raw.get('for') === 'pupils';
  return [
    ...(bed && !raw.has('mattress') ? [source.fault(['mattress'], messages.mattressMissing)] : []),
    ...(!bed && raw.has('mattress') ? [source.faultAtName(['mattress'], messages.mattressForBeds)] : []),
    ...(pupils && !raw.has('mark') ? [source.fault(['mark'], messages.markMissing)] : []),
    ...(use !== 'storage' && raw.has('wall') ? [source.faultAtName(['wall'], messages.wallForStorage)] : []),
    ...(!pupils && raw.has('mark') ? [source.faultAtName(['mark'], messages.markForPupils)] : []),
  ];
}

/** Faults of a size's mark and mattress: values that are none. */
export function declaredFaults(
  source: YamlSource, size: { readonly name: string; readonly values: Names }, expressions: readonly NamedExpression[], read: ReadDeclares,
): readonly Fault[] {
  const told: Working = { source, size: size.name, names: { ...size.values }, faults: [] };
  workOut(told, expressions);
  // What the named expressions lack is told by the pieces.
  const working: Working = { ...told, faults: [] };
  if (read.mark !== null) valueThat(working, read.mark, messages.markValue, (mark) => Number.isInteger(mark) && mark >= 0 && mark <= 7);
  for (const side of read.mattress) valueThat(working, side, messages.positiveResult, (value) => value > 0);
  return working.faults;
}

/** What the item's file says of its use, worked out for one size: mm, and the size mark. Throws a RangeError for a size it does not have. */
export const declaredFor = (item: Item, size: string): Declared => declaredBy(item.declares, namesOf(item, size));

/** The same from the values of the item's parameters and named expressions. */
export function declaredBy({ place, wall, people, mark, mattress }: Declares, names: Names): Declared {
  return {
    place, wall, people,
    mark: mark === null ? null : mark.evaluate(names).value,
    mattress: mattress === null ? null : {
      length: mattress.length.evaluate(names).value, width: mattress.width.evaluate(names).value, thickness: mattress.thickness.evaluate(names).value,
    },
  };
}
