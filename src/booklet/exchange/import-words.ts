import { FaultError } from '../../read/index.ts';
import { currentReview, readAbout, sourceLanguage, textsMark, wordFiles, type LocaleFiles, type Review } from '../words/index.ts';
import { checkUnits } from './check-units.ts';
import { entriesFor, numbersTag, type Entry } from './entries.ts';
import { MOST_BYTES } from './limits.ts';
import { mergedFile } from './merge-texts.ts';
import { languageFault, newAbout } from './new-language.ts';
import { quoted, readXliff, type ExchangeFault, type ReturnedWords } from './read-xliff.ts';
import { readXml, XmlFault, xmlText } from './read-xml.ts';

/** What a returned file of words changes. */
export interface Imported {
  readonly lang: string;
  /** The locale files that change, by their path under `locales/`, in the order in which they are to be written. */
  readonly changed: LocaleFiles;
  /** The review that holds for the texts as they are then, or null for a draft. */
  readonly review: Review | null;
  /** The review that no longer holds because texts have changed, or null. */
  readonly lapsed: Review | null;
}

/**
 * Takes the translations of an XLIFF file over into the locale files. `name` is the file's name in messages.
 * With `review` the language is marked as reviewed: then every text must come back as reviewed or final.
 * Throws a FaultError with everything that is wrong, and then nothing may be written.
 */
export function importWords(bytes: Uint8Array, name: string, locales: LocaleFiles, review: Review | null = null): Imported {
  const returned = readReturned(bytes, name);
  const wrongLanguage = languageFaults(returned, locales);
  if (returned.lang === null || wrongLanguage.length > 0) return refuse(name, [...returned.faults, ...wrongLanguage]);
  const { lang } = returned;
  const entries = entriesFor(locales, lang, numbersTag(locales, lang));
  const faults = [
    ...returned.faults,
    ...checkUnits(returned, entries, (file) => review === null && locales[`${lang}/${file}.json`] !== undefined),
    ...(review === null ? [] : reviewFaults(returned)),
  ];
  if (faults.length > 0) return refuse(name, faults);
  const texts = changes(lang, returned.units, entries, locales);
  const changed = review === null ? texts : { ...texts, ...markedAs(review, lang, { ...locales, ...texts }) };
  const after = { ...locales, ...changed };
  const holds = currentReview(after, lang);
  return { lang, changed, review: holds, lapsed: holds === null ? readAbout(after, lang).reviewed : null };
}

function readReturned(bytes: Uint8Array, name: string): ReturnedWords {
  if (bytes.length > MOST_BYTES) return refuse(name, [{ place: { line: 1, column: 1 }, field: '', found: `${bytes.length} bytes`, remedy: `a file of at most ${MOST_BYTES} bytes, as exported` }]);
  try {
    return readXliff(readXml(xmlText(bytes)));
  } catch (error) {
    if (!(error instanceof XmlFault)) throw error;
    return refuse(name, [{ place: error.place, field: '', found: error.message, remedy: 'an XLIFF 2.1 document, well-formed' }]);
  }
}

function refuse(name: string, faults: readonly ExchangeFault[]): never {
  throw new FaultError(faults.map(({ place, ...told }) => ({ position: { file: name, ...place }, ...told })));
}

function languageFaults({ place, sourceLang, lang }: ReturnedWords, locales: LocaleFiles): readonly ExchangeFault[] {
  const source = sourceLanguage(locales);
  const wrong = lang === null ? null : languageFault(locales, lang);
  return [
    ...(sourceLang === null || sourceLang === source ? [] : [{ place, field: 'srcLang', found: quoted(sourceLang), remedy: `srcLang="${source}"` }]),
    ...(wrong === null ? [] : [{ place, field: 'trgLang', ...wrong }]),
  ];
}

/** Who signs for a language signs for every text: the first that is not marked so is told, with the number of others. */
function reviewFaults({ units }: ReturnedWords): readonly ExchangeFault[] {
  const [first, ...others] = units.filter(({ state }) => state !== 'reviewed' && state !== 'final');
  if (first === undefined) return [];
  const found = `state "${first.state}"${others.length === 0 ? '' : `, as in ${others.length} more`}`;
  return [{ place: first.place, field: first.id, found, remedy: 'reviewed or final in every segment, because --reviewed-by is given' }];
}

/** The `about.json` of the language with the review of its texts, where it changes. */
function markedAs(review: Review, lang: string, locales: LocaleFiles): LocaleFiles {
  const path = `${lang}/about.json`;
  const text = `${JSON.stringify({ ...readAbout(locales, lang), reviewed: { ...review, of: textsMark(locales, lang) } }, null, 2)}\n`;
  return locales[path] === text ? {} : { [path]: text };
}

/** The texts first, what the language says of itself last: a review counts for texts that are there. */
function changes(lang: string, units: ReturnedWords['units'], entries: readonly Entry[], locales: LocaleFiles): LocaleFiles {
  const texts = new Map(units.map(({ id, target }) => [id, target ?? '']));
  const files = wordFiles.flatMap((file) => {
    const returned = entries.filter((entry) => entry.file === file && texts.has(entry.key));
    if (returned.length === 0) return [];
    const path = `${lang}/${file}.json`;
    return [[path, mergedFile(locales[path], returned.map(({ key }) => [key.slice(file.length + 1), texts.get(key) ?? '']))] as const];
  });
  const about = `${lang}/about.json`;
  const told = locales[about] ?? `${JSON.stringify(newAbout(lang), null, 2)}\n`;
  return Object.fromEntries([...files, [about, told] as const].filter(([path, text]) => locales[path] !== text));
}
