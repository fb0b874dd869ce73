import { wordFiles, type LocaleFiles } from '../../../src/booklet/words/index.ts';

/** Locale files as they are written: two spaces, a line end. */
export const fileText = (content: object): string => `${JSON.stringify(content, null, 2)}\n`;

const about = (name: string, change: object): object => ({ name, direction: 'ltr', numbers: 'en-GB', textScale: 1, source: false, reviewed: null, ...change });

/** The files of one language: those named, and one text in each other. */
export function languageFiles(lang: string, aboutIt: object, files: Readonly<Record<string, object>>): LocaleFiles {
  const texts = wordFiles.map((name) => [`${lang}/${name}.json`, fileText(files[name] ?? { one: `${name} ${lang}` })] as const);
  return Object.fromEntries([[`${lang}/about.json`, fileText(about(lang, aboutIt))], ...texts]);
}

const english = languageFiles('en', { source: true }, {
  actions: {
    sides: { left: 'left side' },
    names: { brace: 'Brace' },
    'wrap-side': 'Wrap the {{side}} round its tube.',
    brace_one: 'Hook {{count}} cord onto the {{side}}.',
    brace_other: 'Hook {{count}} cords onto the {{side}}.',
  },
});

const arabic = languageFiles('ar', { direction: 'rtl', numbers: 'ar' }, {
  actions: {
    sides: { left: 'الجانب الأيسر' },
    names: { brace: 'الشد بالحبال' },
    'wrap-side': 'لفّ {{side}} حول أنبوبه.',
    brace_zero: 'لا حبال في {{side}}.',
    brace_one: 'علّق حبلًا واحدًا على {{side}}.',
    brace_two: 'علّق حبلين على {{side}}.',
    brace_few: 'علّق {{count}} حبال على {{side}}.',
    brace_many: 'علّق {{count}} حبلًا على {{side}}.',
    brace_other: 'علّق {{count}} حبل على {{side}}.',
  },
});

/** English and Arabic with few texts: a caption, one with plural forms, names. */
export const smallLocales: LocaleFiles = { ...english, ...arabic };
