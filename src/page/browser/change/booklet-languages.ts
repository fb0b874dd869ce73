import { languagesIn, readAbout, type LocaleFiles } from '../../../booklet/index.ts';

/** All languages booklets are made in, each by its own name. */
export const bookletLanguages = (locales: LocaleFiles): readonly { readonly lang: string; readonly name: string }[] =>
  languagesIn(locales).map((lang) => ({ lang, name: readAbout(locales, lang).name }));
