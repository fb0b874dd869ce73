import { languagesIn, readAbout, readWords, type FlatWords } from '../../../src/booklet/words/locale-files.ts';
import { type LocaleFiles } from '../../../src/booklet/words/word-files.ts';
import { baseKey, pluralForm, pluralForms } from '../../../src/booklet/words/plurals.ts';
import { noSource, type WordsFault } from '../../../src/booklet/words/words-error.ts';

/**
 * Holds every language against the source language and says what differs: keys missing or too many,
 * plural forms that do not match the language, placeholders that differ. Empty when all agree.
 */
export function compareLanguages(files: LocaleFiles): readonly WordsFault[] {
  const languages = languagesIn(files);
  const source = languages.find((lang) => readAbout(files, lang).source);
  if (source === undefined) return [noSource];
  const reference = readWords(files, source);
  return languages.flatMap((lang) => {
    const words = readWords(files, lang);
    return [...keyFaults(lang, words, reference), ...pluralFaults(lang, words, readAbout(files, lang).numbers), ...placeholderFaults(lang, words, reference)];
  });
}

/** Keys of the source language that nobody asked for. `asked` holds keys without plural endings. */
export function unusedKeys(files: LocaleFiles, lang: string, asked: ReadonlySet<string>): readonly string[] {
  return [...keysOf(readWords(files, lang))].filter((key) => !asked.has(key));
}

function keyFaults(lang: string, words: FlatWords, reference: FlatWords): WordsFault[] {
  const mine = keysOf(words);
  const theirs = keysOf(reference);
  return [
    ...[...theirs].filter((key) => !mine.has(key)).map((key) => fault(lang, key, 'nothing', 'translate it from the source language')),
    ...[...mine].filter((key) => !theirs.has(key)).map((key) => fault(lang, key, 'a key that the source language lacks', 'take it out')),
  ];
}

function pluralFaults(lang: string, words: FlatWords, tag: string): WordsFault[] {
  const wanted = pluralForms(tag).join(', ');
  return [...formsByKey(words)]
    .filter(([, forms]) => forms.join(', ') !== wanted)
    .map(([key, forms]) => fault(lang, key, `the plural forms ${forms.join(', ')}`, `give the forms ${wanted}`));
}

function placeholderFaults(lang: string, words: FlatWords, reference: FlatWords): WordsFault[] {
  return [...keysOf(words)].flatMap((key) => {
    const mine = placeholders(words, key);
    const theirs = placeholders(reference, key);
    return mine === theirs ? [] : [fault(lang, key, `the placeholders "${mine}"`, `use "${theirs}"`)];
  });
}

/** All placeholders of all forms of a key; a form such as the dual may do without its count. */
function placeholders(words: FlatWords, key: string): string {
  const names = [...words]
    .filter(([name]) => baseKey(name) === key)
    .flatMap(([, text]) => [...text.matchAll(/\{\{(.+?)\}\}/g)].map((match) => match[1] ?? ''));
  return [...new Set(names)].sort().join(', ');
}

function formsByKey(words: FlatWords): Map<string, string[]> {
  const forms = new Map<string, string[]>();
  for (const name of words.keys()) {
    const form = pluralForm(name);
    if (form !== null) forms.set(baseKey(name), [...(forms.get(baseKey(name)) ?? []), form].sort());
  }
  return forms;
}

function keysOf(words: FlatWords): Set<string> {
  return new Set([...words.keys()].map(baseKey));
}

function fault(lang: string, field: string, found: string, remedy: string): WordsFault {
  return { path: `${lang}/${field.split('.')[0] ?? field}.json`, field, found, remedy };
}
