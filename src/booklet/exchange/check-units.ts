import { firstUnseen, withoutUnseen } from '../../read/index.ts';
import { wordFiles, WORDS_LIMITS } from '../words/index.ts';
import type { Entry } from './entries.ts';
import { lengthLimit } from './limits.ts';
import { asWritten, placeholdersOf, textLength } from './placeholders.ts';
import { quoted, states, type ExchangeFault, type ReturnedUnit, type ReturnedWords } from './read-xliff.ts';

/** Holds what came back against what was to be translated, and tells everything that differs. `has` tells which files the language has already. */
export function checkUnits(returned: ReturnedWords, entries: readonly Entry[], has: (file: string) => boolean): readonly ExchangeFault[] {
  const byKey = new Map(entries.map((entry) => [entry.key, entry]));
  // Of a unit that could not be read right that has been told; what follows from it need not be.
  const told = new Set(returned.faults.map(({ field }) => field));
  const faults = [
    ...fileFaults(returned, has),
    ...missingUnits(returned, entries),
    ...returned.units.flatMap((unit, index) => {
      const entry = byKey.get(unit.id);
      if (entry === undefined) return [unknownUnit(unit, entries)];
      const before = returned.units.findIndex(({ id }) => id === unit.id);
      if (before < index) return [fault(unit, 'the same id a second time', 'each text once')];
      return entry.file === unit.file ? textFaults(unit, entry) : [fault(unit, `it in the file ${quoted(unit.file)}`, `it in the file "${entry.file}"`)];
    }),
  ];
  return faults.filter(({ field }) => !told.has(field));
}

const fault = ({ id, place }: ReturnedUnit, found: string, remedy: string): ExchangeFault => ({ place, field: id, found, remedy });

/** A file may be left out where the language has it already, unless all of it is signed for. */
function fileFaults({ place: root, files }: ReturnedWords, has: (file: string) => boolean): readonly ExchangeFault[] {
  const known: readonly string[] = wordFiles;
  const ids = files.map(({ id }) => id);
  return [
    ...files.filter(({ id }) => !known.includes(id)).map(({ id, place }) => ({ place, field: 'file', found: `id ${quoted(id)}`, remedy: `an id of ${known.join(', ')}` })),
    ...files.filter(({ id }, index) => ids.indexOf(id) < index).map(({ id, place }) => ({ place, field: 'file', found: `id ${quoted(id)} a second time`, remedy: 'each file once' })),
    ...known.filter((name) => !ids.includes(name) && !has(name))
      .map((name) => ({ place: root, field: 'file', found: `no file "${name}"`, remedy: 'every file, as exported' })),
  ];
}

function missingUnits({ files, units }: ReturnedWords, entries: readonly Entry[]): readonly ExchangeFault[] {
  const there = new Set(units.map(({ id }) => id));
  return entries.flatMap((entry) => {
    const file = files.find(({ id }) => id === entry.file);
    if (file === undefined || there.has(entry.key)) return [];
    const remedy = entry.form === null ? 'every text of the file, as exported' : `all plural forms of the language: ${formsOf(entry.base, entries).join(', ')}`;
    return [{ place: file.place, field: entry.key, found: 'no such unit', remedy }];
  });
}

function unknownUnit(unit: ReturnedUnit, entries: readonly Entry[]): ExchangeFault {
  const base = entries.find((entry) => entry.form !== null && unit.id.startsWith(`${entry.base}_`))?.base;
  return fault(unit, 'an id that no text has', base === undefined ? 'the units as exported' : `the plural forms of the language: ${formsOf(base, entries).join(', ')}`);
}

const formsOf = (base: string, entries: readonly Entry[]): readonly string[] => entries.flatMap((entry) => (entry.base === base ? entry.form ?? [] : []));

function textFaults(unit: ReturnedUnit, entry: Entry): readonly ExchangeFault[] {
  const known: readonly string[] = states;
  return [
    ...(unit.source === entry.source ? [] : [fault(unit, `the source text ${quoted(unit.source)}`, `${quoted(entry.source)}; if the text has changed, export again`)]),
    ...(known.includes(unit.state) ? [] : [fault(unit, `state ${quoted(unit.state)}`, `one of ${known.join(', ')}`)]),
    ...(unit.target === null || unit.target.trim() === ''
      ? [fault(unit, unit.target === null ? 'no translation' : 'an empty translation', 'a target with text')]
      : targetFaults(unit, unit.target, entry)),
  ];
}

function targetFaults({ id, state, targetPlace: place }: ReturnedUnit, target: string, entry: Entry): readonly ExchangeFault[] {
  const has = placeholdersOf(target);
  const limit = lengthLimit(entry.key) ?? WORDS_LIMITS.text;
  const length = textLength(target);
  const unseen = firstUnseen(target);
  const tell = (found: string, remedy: string): ExchangeFault => ({ place, field: id, found, remedy });
  return [
    ...(state === 'initial' ? [tell('state "initial"', 'translated, reviewed or final')] : []),
    ...entry.needs.filter((name) => !has.includes(name)).map((name) => tell(`no ${asWritten(name)}`, `the placeholder ${asWritten(name)} in the translation`)),
    ...has.filter((name) => !entry.allows.includes(name)).map((name) => tell(asWritten(name), entry.allows.length === 0 ? 'no placeholder' : `only ${entry.allows.map(asWritten).join(', ')}`)),
    ...(unseen === null ? [] : [tell(unseen.sign, withoutUnseen)]),
    ...(length <= limit ? [] : [tell(`${length} characters`, `at most ${limit}`)]),
  ];
}
