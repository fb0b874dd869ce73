import { isLocaleTag, pseudoLanguage, readAbout, sourceLanguage, type About, type LocaleFiles } from '../words/index.ts';

/** ISO 15924 scripts that run from right to left (Unicode Bidirectional Class R or AL of their letters). */
const rightToLeft = ['Adlm', 'Arab', 'Hebr', 'Mand', 'Mend', 'Nkoo', 'Rohg', 'Samr', 'Syrc', 'Thaa'];

/** Arabic letters are small at the same point size. */
const textScales: Readonly<Record<string, number>> = { Arab: 1.12 };

/**
 * Why texts cannot be exchanged in a language, or null when they can: what was found and what would be right.
 * A language is named as its folder: a BCP 47 tag of language, script and region.
 */
export function languageFault(files: LocaleFiles, lang: string): { readonly found: string; readonly remedy: string } | null {
  const found = JSON.stringify(lang);
  if (lang === pseudoLanguage(files)) return { found: `${found}, which is made from ${sourceLanguage(files)}`, remedy: 'a language that people speak' };
  if (!/^[a-z]{2,3}(-[A-Z][a-z]{3})?(-([A-Z]{2}|\d{3}))?$/.test(lang)) return { found, remedy: 'a language tag (BCP 47), such as "fr", "ckb" or "pt-BR"' };
  if (lang === sourceLanguage(files)) return { found: `${found}, the language the texts are written in first`, remedy: 'a language to translate into' };
  if (files[`${lang}/about.json`] === undefined && !isLocaleTag(lang)) {
    return { found: `${found}, of whose numbers and plurals nothing is known here`, remedy: `a file locales/${lang}/about.json whose "numbers" names a language that counts alike` };
  }
  return null;
}

/** What the file says of a language, or, for a language that has none, what its tag tells: name, direction and numbers. */
export function aboutOrNew(files: LocaleFiles, lang: string): About {
  return files[`${lang}/about.json`] === undefined ? newAbout(lang) : readAbout(files, lang);
}

/** The `about.json` of a new language, a draft. */
export function newAbout(lang: string): About {
  const script = new Intl.Locale(lang).maximize().script ?? 'Latn';
  return {
    name: new Intl.DisplayNames([lang], { type: 'language' }).of(lang) ?? lang,
    direction: rightToLeft.includes(script) ? 'rtl' : 'ltr',
    numbers: lang,
    textScale: textScales[script] ?? 1,
    source: false,
    reviewed: null,
  };
}
