import {
  baseKey, pluralForm, pluralForms, readAbout, readWords, sourceLanguage, wordFiles,
  type FlatWords, type LocaleFiles, type WordFile,
} from '../words/index.ts';
import { placeholdersOf } from './placeholders.ts';

/** One text to translate. A text with plural forms is one entry for each form of the target language. */
export interface Entry {
  /** Its place in the locale files, such as `actions.brace_few`; the unit's id. */
  readonly key: string;
  readonly file: WordFile;
  /** The key without its plural ending. */
  readonly base: string;
  /** The plural form by the CLDR, or null. */
  readonly form: string | null;
  readonly source: string;
  /** The translation there is, or null. */
  readonly target: string | null;
  /** Placeholders the translation must have. */
  readonly needs: readonly string[];
  /** Placeholders the translation may have: those of any of the text's forms. */
  readonly allows: readonly string[];
}

/** The order in which the forms stand, which is that of the CLDR. */
const formOrder = ['zero', 'one', 'two', 'few', 'many', 'other'];

/**
 * Every text of the source language with its translation into `lang`, in the order of the source files.
 * `tag` fixes the plural forms (BCP 47). Throws where a locale file is faulty or a name in it cannot be a unit's id.
 */
export function entriesFor(files: LocaleFiles, lang: string, tag: string): readonly Entry[] {
  const source = readWords(files, sourceLanguage(files));
  const present = readWords(files, lang, wordFiles.filter((name) => files[`${lang}/${name}.json`] !== undefined));
  const done = new Set<string>();
  return [...source].flatMap(([key]) => {
    const base = baseKey(key);
    if (done.has(base)) return [];
    done.add(base);
    return pluralForm(key) === null ? [plainEntry(source, present, key)] : pluralEntries(source, present, base, tag);
  });
}

/** The tag that fixes numbers and plural forms of a language: as its `about.json` says, or its own. */
export const numbersTag = (files: LocaleFiles, lang: string): string =>
  (files[`${lang}/about.json`] === undefined ? lang : readAbout(files, lang).numbers);

function plainEntry(source: FlatWords, present: FlatWords, key: string): Entry {
  const text = source.get(key) ?? '';
  const placeholders = placeholdersOf(text);
  return { key, file: fileOf(key), base: key, form: null, source: text, target: present.get(key) ?? null, needs: placeholders, allows: placeholders };
}

function pluralEntries(source: FlatWords, present: FlatWords, base: string, tag: string): readonly Entry[] {
  const forms = [...pluralForms(tag)].sort((a, b) => formOrder.indexOf(a) - formOrder.indexOf(b));
  const allows = [...new Set(formOrder.flatMap((form) => placeholdersOf(source.get(`${base}_${form}`) ?? '')))];
  return forms.map((form) => {
    const key = `${base}_${form}`;
    const text = source.get(key) ?? source.get(`${base}_other`) ?? '';
    const needs = placeholdersOf(text).filter((name) => name !== 'count' || !saysItsCount(tag, form));
    return { key, file: fileOf(key), base, form, source: text, target: present.get(key) ?? null, needs, allows };
  });
}

/** A form that only one number takes says that number by itself, such as the Arabic dual. Nothing is counted as nought times. */
const saysItsCount = (tag: string, form: string): boolean => {
  const counts = countsOf(tag, form);
  return counts.length > 0 && counts.filter((count) => count > 0).length <= 1;
};

/** The whole numbers up to 200 that take a plural form. */
export function countsOf(tag: string, form: string): readonly number[] {
  const rules = new Intl.PluralRules(tag);
  return Array.from({ length: 201 }, (_, count) => count).filter((count) => rules.select(count) === form);
}

function fileOf(key: string): WordFile {
  const file = wordFiles.find((name) => key.startsWith(`${name}.`));
  if (file === undefined || !/^[\p{L}\p{N}._-]+$/u.test(key)) {
    throw new Error(`locales: the key ${JSON.stringify(key)} cannot be exchanged; would be right: names of letters, digits, - and _`);
  }
  return file;
}
