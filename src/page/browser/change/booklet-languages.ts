import { languagesIn, type LocaleFiles } from '../../../booklet/index.ts';

/** All languages booklets are made in, each by its own name. */
export const bookletLanguages = (locales: LocaleFiles): readonly { readonly lang: string; readonly name: string }[] =>
  languagesIn(locales).map((lang) => ({ lang, name: (JSON.parse(locales[`${lang}/about.json`] ?? '{}') as { name?: string }).name ?? lang }));
