import type { z } from 'zod';
import { dimensionWords } from '../expression-value.ts';
import type { ReadFiles } from '../files.ts';
import { workOut } from '../item-values.ts';
import { messages } from '../messages.ts';
import { nearestName } from '../nearest.ts';
import { readExpressions } from '../named-expressions.ts';
import { takenNameFaults } from '../parameters.ts';
import type { Fault, Quantity } from '../types.ts';
import { goodEntries, sectionEntries, validated } from '../validate.ts';
import { quoted, yamlSource, type FieldPath, type YamlSource } from '../yaml-source.ts';
import { givenStructure } from './given.ts';
import { newGrowing, type Growing } from './growing.ts';
import { moveParts, type Placing } from './move.ts';
import { ownParameterSchema, pieceFileSchema, type useSchema } from './schema.ts';
import { instancesOf, measuredField, newScope, tripleField, type Scope, type Telling, type Values } from './scope.ts';
import { writeOut } from './write-out.ts';

export type GivenUse = z.output<typeof useSchema>;

/** The file of a piece, as far as it can be read, and its faults. */
export interface PieceFile {
  readonly source: YamlSource;
  readonly text: string;
  readonly faults: readonly Fault[];
}

/** Reads `steps/pieces/<name>.yaml`, or tells which pieces there are. */
export function readPieceFile(files: ReadFiles, user: YamlSource, path: FieldPath, name: string): PieceFile | Fault {
  const folder = [...user.file.split('/').slice(0, -2), 'pieces'].join('/');
  const file = `${folder}/${name}.yaml`;
  const text = files.text(file);
  if (text === null) {
    const known = files.list(folder).filter((other) => other.endsWith('.yaml')).map((other) => other.slice(0, -'.yaml'.length));
    return user.fault(path, messages.structure.unknown(messages.structure.pieceFile, nearestName(name, known), known));
  }
  const source = yamlSource(file, text);
  if (source.faults.length > 0) return { source, text, faults: source.faults };
  const { data, faults } = validated(source, pieceFileSchema);
  const named = data === null || data.name === name ? [] : [source.fault(['name'], messages.nameLike(name))];
  return { source, text, faults: [...faults, ...named] };
}

/** Writes out a piece for every instance of its use, and puts its parts among the item's. */
export function writeUse(scope: Scope, kitValues: Values, growing: Growing, name: string, given: GivenUse, piece: PieceFile, telling: Telling): void {
  const indexNames = Object.keys(given.for ?? {});
  const path: FieldPath = ['uses', name];
  const at = tripleField(scope, [...path, 'at'], given.at, indexNames, 'length');
  const turn = measuredField(scope, [...path, 'turn'], given.turn, indexNames, ['angle']);
  const values = givenValues(scope, path, given, piece.source, indexNames);
  for (const instance of instancesOf(scope, 'uses', name, given.for)) {
    const [place, angle, own] = [at(instance.indexes), turn(instance.indexes) ?? 0, values(instance.indexes)];
    const placing: Placing | null = place === null ? null : { at: place, turn: angle, mirror: given.mirror ?? null };
    const parts = pieceParts(scope, piece.source, { ...kitValues, ...own }, telling);
    moveParts(parts, placing, instance, growing);
  }
}

/** Values for the parameters of the piece, by expressions of the item. */
function givenValues(scope: Scope, path: FieldPath, given: GivenUse, piece: YamlSource, indexNames: readonly string[]): (indexes: Values) => Values {
  const wanted = goodEntries(new Map(sectionEntries(piece.raw)).get('parameters'), ownParameterSchema);
  const known = [...wanted.keys()];
  for (const name of Object.keys(given.with ?? {})) {
    if (!known.includes(name)) scope.tell([...path, 'with', name], messages.structure.givenNames(nearestName(name, known), known), quoted(name));
  }
  const fields = [...wanted].map(([name, { measures }]) => {
    const text = given.with?.[name];
    const at = [...path, 'with', name];
    if (text === undefined) scope.tell(at, `${messages.structure.givenMissing}: ${name}, ${dimensionWords(measures)}`);
    return { name, measures, value: measuredField(scope, at, text, indexNames, [measures]) };
  });
  return (indexes) => Object.fromEntries(fields.flatMap(({ name, measures, value }): [string, Quantity][] => {
    const amount = value(indexes);
    return amount === null ? [] : [[name, { value: amount, dimension: measures }]];
  }));
}

/** The parts of one piece in its own coordinates. */
function pieceParts(outer: Scope, source: YamlSource, values: Values, telling: Telling): Growing {
  const { faults } = telling;
  const raw = new Map(sectionEntries(source.raw));
  const parameters = sectionEntries(raw.get('parameters')).map(([name]) => name);
  faults.push(...takenNameFaults(source, 'parameters', parameters));
  const fixed = [...parameters, ...Object.keys(values)];
  const expressions = readExpressions(source, raw.get('expressions'), fixed);
  faults.push(...expressions.faults);
  const working = { source, size: outer.size, names: { ...values }, faults };
  workOut(working, expressions.expressions);
  const known = [...new Set([...fixed, ...sectionEntries(raw.get('expressions')).map(([name]) => name)])];
  const growing = newGrowing();
  writeOut(newScope(source, outer.size, outer.kit, known, working.names, telling, outer.made), givenStructure(raw), growing);
  return growing;
}
