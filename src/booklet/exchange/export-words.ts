import { currentReview, languagesIn, readAbout, sourceLanguage, wordFiles, type LocaleFiles } from '../words/index.ts';
import { entriesFor } from './entries.ts';
import { aboutOrNew, languageFault } from './new-language.ts';
import { pictureIdsFor, type ReferencePicture } from './picture-references.ts';
import { writeXliff } from './write-xliff.ts';

export interface Exported {
  readonly xliff: string;
  /** Those of the pictures that a text refers to. */
  readonly pictures: readonly ReferencePicture[];
  /** Texts, and how many of them have a translation. */
  readonly texts: number;
  readonly translated: number;
}

/**
 * All texts for a translator into `lang`, with the pictures of `pictures` that go with them, which stand in
 * `pictureFolder` beside the file. Throws where the language cannot be exchanged or a locale file is faulty.
 */
export function exportWords(locales: LocaleFiles, lang: string, pictures: readonly ReferencePicture[], pictureFolder: string): Exported {
  const wrong = languageFault(locales, lang);
  if (wrong !== null) throw new Error(`--lang: found ${wrong.found}, would be right: ${wrong.remedy}`);
  const about = aboutOrNew(locales, lang);
  const source = sourceLanguage(locales);
  const entries = entriesFor(locales, lang, about.numbers);
  const wanted = new Set(entries.flatMap(pictureIdsFor));
  const xliff = writeXliff({
    sourceLang: source,
    lang,
    directions: { source: readAbout(locales, source).direction, target: about.direction },
    numbers: about.numbers,
    entries,
    state: isReviewed(locales, lang) ? 'reviewed' : 'translated',
    pictures,
    pictureFolder,
  });
  return { xliff, pictures: pictures.filter(({ id }) => wanted.has(id)), texts: entries.length, translated: entries.filter(({ target }) => target !== null).length };
}

/** A language that is only begun has no review. */
const isReviewed = (locales: LocaleFiles, lang: string): boolean =>
  languagesIn(locales).includes(lang) && wordFiles.every((name) => locales[`${lang}/${name}.json`] !== undefined) && currentReview(locales, lang) !== null;
