import type { ReadFiles } from '../files.ts';
import { workOut } from '../item-values.ts';
import { messages } from '../messages.ts';
import type { NamedExpression } from '../named-expressions.ts';
import type { Fault, Kit } from '../types.ts';
import { goodEntries, sectionEntries } from '../validate.ts';
import type { YamlSource } from '../yaml-source.ts';
import { givenStructure } from './given.ts';
import { grown, newGrowing } from './growing.ts';
import { kitNames, kitValues } from './kit-names.ts';
import { writePlaces, type ShortPieces } from './places.ts';
import { useSchema } from './schema.ts';
import { newScope, type Telling, type Values } from './scope.ts';
import type { Structure } from './types.ts';
import { readPieceFile, writeUse, type GivenUse, type PieceFile } from './uses.ts';
import { writeOut } from './write-out.ts';

/** What the sections of an item need besides themselves. */
export interface StructureGivens {
  readonly files: ReadFiles;
  readonly kit: Kit;
  /** Parameters and expressions by name. */
  readonly known: readonly string[];
  readonly expressions: readonly NamedExpression[];
  readonly pieces: ShortPieces;
}

export interface ReadStructure {
  readonly structures: Readonly<Record<string, Structure>>;
  readonly faults: readonly Fault[];
  /** Texts of the files of pieces, in the order of their uses. */
  readonly texts: readonly string[];
}

const SECTIONS = ['points', 'bars', 'panels', 'cables', 'fittings', 'uses'] as const;

/** True for an item that tells points and bars of its own. */
export const hasStructure = (raw: ReadonlyMap<string, unknown>): boolean => SECTIONS.some((section) => raw.has(section));

/** Writes out the points, bars, panels, cables and fittings of an item in every size; faults of their names and values. */
export function readStructure(source: YamlSource, sizes: readonly { readonly name: string; readonly values: Values }[], givens: StructureGivens): ReadStructure {
  const raw = new Map(sectionEntries(source.raw));
  if (!hasStructure(raw) && !raw.has('places')) return { structures: {}, faults: [], texts: [] };
  const faults: Fault[] = hasStructure(raw) && raw.has('pieces') ? [source.faultAtName(['pieces'], messages.structure.notBoth)] : [];
  const uses = usesOf(source, raw, givens.files, faults);
  const telling: Telling = { faults, told: new Set() };
  const structures = sizes.map(({ name, values }) => [name, structureOf(source, raw, name, values, givens, uses, telling)] as const);
  return { structures: Object.fromEntries(structures), faults, texts: uses.map(({ piece }) => piece.text) };
}

interface Use {
  readonly name: string;
  readonly given: GivenUse;
  readonly piece: PieceFile;
}

function usesOf(source: YamlSource, raw: ReadonlyMap<string, unknown>, files: ReadFiles, faults: Fault[]): readonly Use[] {
  return [...goodEntries(raw.get('uses'), useSchema)].flatMap(([name, given]) => {
    const piece = readPieceFile(files, source, ['uses', name, 'piece'], given.piece);
    if (!('source' in piece)) {
      faults.push(piece);
      return [];
    }
    faults.push(...piece.faults);
    return [{ name, given, piece }];
  });
}

function structureOf(
  source: YamlSource, raw: ReadonlyMap<string, unknown>, size: string, values: Values, { kit, known, expressions, pieces }: StructureGivens, uses: readonly Use[], telling: Telling,
): Structure {
  const ofKit = kitValues(kit);
  const working = { source, size, names: { ...ofKit, ...values }, faults: [] };
  workOut(working, expressions);
  const scope = newScope(source, size, kitNames(kit), [...new Set([...known, ...Object.keys(ofKit)])], working.names, telling, new Map());
  const growing = newGrowing();
  for (const { name, given, piece } of uses) writeUse(scope, ofKit, growing, name, given, piece, telling);
  writeOut(scope, givenStructure(raw), growing);
  const places = writePlaces(scope, raw.get('places'), growing, pieces);
  return { skeleton: hasStructure(raw) ? grown(growing) : null, places };
}
