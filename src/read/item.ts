import { createHash } from 'node:crypto';
import { readConnections, readOrder } from './connections.ts';
import { FaultError } from './faults.ts';
import type { ReadFiles } from './files.ts';
import { itemSchema } from './item-schema.ts';
import { kitOrFaults } from './kit.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { readParameters, readSize } from './parameters.ts';
import { readExpressions } from './named-expressions.ts';
import { sizeFaults } from './piece-values.ts';
import { readPieces } from './pieces.ts';
import { kitValues } from './structure/kit-names.ts';
import { shortPieces } from './structure/places.ts';
import { hasStructure, readStructure } from './structure/read-structure.ts';
import { declaredFaults, readDeclares } from './use-fields.ts';
import type { Fault, Item, Kit } from './types.ts';
import { validated, sectionEntries } from './validate.ts';
import { yamlSource } from './yaml-source.ts';
import type { YamlSource } from './yaml-source.ts';

/**
 * Reads `steps/<item>/item.yaml` and the kit it names, `steps/kits/<kit>.yaml`.
 * Throws one FaultError with every fault of both files.
 */
export function readItem(files: ReadFiles, itemFile: string): Item {
  const text = files.text(itemFile);
  if (text === null) {
    throw new FaultError([{ position: { file: itemFile, line: 1, column: 1 }, field: '', found: messages.nothing, remedy: messages.noFile }]);
  }
  const source = yamlSource(itemFile, text);
  if (source.faults.length > 0) throw new FaultError(source.faults);
  const kit = readKit(files, source);
  const body = readBody(source, kit.kit, files);
  const head = validated(source, itemSchema);
  const faults = [...head.faults, ...folderFaults(source), ...body.faults, ...kit.faults];
  const { declares, ...parts } = body.parts;
  if (faults.length > 0 || kit.kit === null || head.data === null || declares === null) throw new FaultError(faults);
  const sha256 = createHash('sha256').update([text, kit.text, ...body.texts].join('\0')).digest('hex');
  return { name: head.data.name, kit: kit.kit, use: head.data.use, declares, revision: head.data.revision, ...parts, source: { file: itemFile, sha256 } };
}

type Body = Omit<Item, 'name' | 'kit' | 'use' | 'declares' | 'revision' | 'source'> & { readonly declares: Item['declares'] | null };

/** Everything below the head of the file, as far as it can be read, and the faults that need more than one field to see. */
function readBody(source: YamlSource, kit: Kit | null, files: ReadFiles): { readonly parts: Body; readonly faults: readonly Fault[]; readonly texts: readonly string[] } {
  const raw = new Map(sectionEntries(source.raw));
  const declared = sectionEntries(raw.get('parameters')).map(([name]) => name);
  const named = sectionEntries(raw.get('expressions')).map(([name]) => name);
  const parameters = readParameters(source, raw.get('parameters'));
  const ofKit = kit === null ? {} : kitValues(kit);
  const kitNamed = kit === null ? namesLikeKits(raw.get('expressions')) : Object.keys(ofKit);
  const expressions = readExpressions(source, raw.get('expressions'), declared, kitNamed);
  const pieces = readPieces(source, raw.get('pieces'), [...declared, ...named]);
  const declares = readDeclares(source, [...declared, ...named]);
  const connections = readConnections(source, raw.get('connections'), raw.get('pieces'), pieces.pieces);
  const order = readOrder(source, raw.get('order'));
  const sizes = sectionEntries(raw.get('sizes'))
    .map(([name, given]) => ({ name, ...readSize(source, name, given, parameters.parameters, declared) }));
  const structure = kit === null ? { structures: {}, faults: [], texts: [] } : readStructure(source, sizes, {
    files, kit, known: [...declared, ...named], expressions: expressions.expressions, pieces: shortPieces(raw.get('pieces'), raw.get('use')),
  });
  return {
    texts: structure.texts,
    parts: {
      declares: declares.declares,
      parameters: parameters.parameters,
      expressions: expressions.expressions.map(({ name, expression }) => ({ name, expression })),
      sizes: sizes.map(({ name, values }) => ({ name, values })),
      pieces: pieces.pieces.map(({ piece }) => piece),
      connections: connections.connections.map(({ connection }) => connection),
      order: order.order,
      structures: structure.structures,
    },
    faults: [
      ...missingFaults(source, raw),
      ...structure.faults,
      ...[parameters, expressions, declares, pieces, connections, order, ...sizes].flatMap(({ faults }) => faults),
      ...sizes.flatMap((size) => declaredFaults(source, size, expressions.expressions, declares)),
      ...sizes.flatMap((size) => sizeFaults(source, kit, { name: size.name, values: { ...ofKit, ...size.values } }, expressions.expressions, pieces.pieces, connections.connections)),
    ],
  };
}

/** Without its kit it cannot be told which names the kit gives: any that looks like one will do, and has no value. */
const namesLikeKits = (expressions: unknown): readonly string[] => JSON.stringify(expressions ?? '').match(/kit_[a-z0-9_]+/g) ?? [];

/** Without points and bars, an item is made of pieces and what joins them. */
function missingFaults(source: YamlSource, raw: ReadonlyMap<string, unknown>): Fault[] {
  if (hasStructure(raw)) return raw.has('connections') ? [source.faultAtName(['connections'], messages.structure.notBoth)] : [];
  return [
    ...(raw.has('pieces') ? [] : [source.fault(['pieces'], messages.namedSection)]),
    ...(raw.has('connections') ? [] : [source.fault(['connections'], messages.list)]),
  ];
}

function folderFaults(source: YamlSource): Fault[] {
  const folder = source.file.split('/').at(-2);
  const name = itemSchema.shape.name.safeParse(new Map(sectionEntries(source.raw)).get('name'));
  return folder === undefined || !name.success || name.data === folder ? [] : [source.fault(['name'], messages.nameLike(folder))];
}

function readKit(files: ReadFiles, source: YamlSource): { readonly kit: Kit | null; readonly text: string; readonly faults: readonly Fault[] } {
  const name = itemSchema.shape.kit.safeParse(new Map(sectionEntries(source.raw)).get('kit'));
  if (!name.success) return { kit: null, text: '', faults: [] };
  const folder = kitsFolder(source.file);
  const file = `${folder}/${name.data}.yaml`;
  const text = files.text(file);
  if (text !== null) return { text, ...kitOrFaults(text, file) };
  const known = files.list(folder).filter((other) => other.endsWith('.yaml')).map((other) => other.slice(0, -'.yaml'.length));
  return { kit: null, text: '', faults: [source.fault(['kit'], messages.noKit(nearestName(name.data, known), known))] };
}

/** Kits stand beside the items' folders. */
const kitsFolder = (itemFile: string): string => [...itemFile.split('/').slice(0, -2), 'kits'].join('/');
