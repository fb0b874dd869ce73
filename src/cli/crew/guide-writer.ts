import { languagesIn, loadWords, withPseudoLanguage, type Words } from '../../booklet/index.ts';
import type { Solids } from '../../model/index.ts';
import { localeFiles } from '../files.ts';
import { variantGuide } from '../variant-guide.ts';
import type { Works } from './types.ts';

/** Writes guides; the languages it has read it keeps. */
export function newGuideWriter(): (given: Works['guide']['given'], solids: Solids) => Promise<string> {
  const known = new Map<string, Words>();
  return ({ langs, ...guided }, solids) => {
    const missing = langs.filter((lang) => !known.has(lang));
    if (missing.length > 0) for (const words of wordsOf(missing)) known.set(words.lang, words);
    return variantGuide(guided, langs.flatMap((lang) => known.get(lang) ?? []), solids);
  };
}

function wordsOf(langs: readonly string[]): readonly Words[] {
  const written = localeFiles('locales');
  const locales = langs.some((lang) => !languagesIn(written).includes(lang)) ? withPseudoLanguage(written) : written;
  return langs.map((lang) => loadWords(locales, lang));
}
