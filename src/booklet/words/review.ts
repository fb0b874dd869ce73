import { createHash } from 'node:crypto';
import { languagesIn, readAbout, readWords, type FlatWords } from './locale-files.ts';
import { type LocaleFiles } from './word-files.ts';

/** Who read a translation over, and on which day (`2026-03-14`). */
export interface Review {
  readonly by: string;
  readonly on: string;
}

/** The review of a language as it stands, or null for a draft: never reviewed, or its texts or those they translate changed since. */
export function currentReview(files: LocaleFiles, lang: string): Review | null {
  const { reviewed } = readAbout(files, lang);
  return reviewed !== null && reviewed.of === textsMark(files, lang) ? { by: reviewed.by, on: reviewed.on } : null;
}

/** Sixteen characters that change whenever a text of the language, or the text it translates, changes. The order in the files does not matter. */
export function textsMark(files: LocaleFiles, lang: string): string {
  const source = languagesIn(files).find((each) => readAbout(files, each).source) ?? lang;
  const texts = [lang, source].map((each) => inOrder(readWords(files, each)));
  return createHash('sha256').update(JSON.stringify(texts)).digest('hex').slice(0, 16);
}

const inOrder = (words: FlatWords): readonly (readonly [string, string])[] => [...words].sort(([a], [b]) => (a < b ? -1 : 1));
