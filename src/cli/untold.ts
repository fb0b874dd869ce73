import { existsSync } from 'node:fs';
import { languagesIn, readWords, type LocaleFiles } from '../booklet/index.ts';
import type { Item } from '../read/index.ts';
import { localeFiles } from './files.ts';

/** The locale files under the working folder; null where it has none, as a folder of items alone. */
export const localesHere = (): LocaleFiles | null => (existsSync('locales') ? localeFiles('locales') : null);

/** One line for each language that lacks the name of the item or of one of its sizes: without them nothing of it can be printed. */
export function untoldNames(item: Item, locales: LocaleFiles): readonly string[] {
  return languagesIn(locales).flatMap((lang) => {
    const path = `${lang}/items.json`;
    const words = locales[path] === undefined ? new Map<string, string>() : readWords(locales, lang, ['items']);
    const lacking = [`${item.name}.name`, ...item.sizes.map(({ name }) => `${item.name}.sizes.${name}`)].filter((key) => !words.has(`items.${key}`));
    return lacking.length === 0 ? [] : [`caution words: locales/${path} lacks ${lacking.join(', ')}; without them no booklet is made`];
  });
}

/** One line for each language that lacks the label or purpose of one of the item's parameters: which, and where they go. */
export function untoldParameters(item: Item, locales: LocaleFiles): readonly string[] {
  return languagesIn(locales).flatMap((lang) => {
    const path = `${lang}/parameters.json`;
    const words = locales[path] === undefined ? new Map<string, string>() : readWords(locales, lang, ['parameters']);
    const lacking = item.parameters.flatMap(({ name }) => ['label', 'purpose'].map((field) => `${item.name}.${name}.${field}`)).filter((key) => !words.has(`parameters.${key}`));
    return lacking.length === 0 ? [] : [`caution words: locales/${path} lacks ${lacking.join(', ')}; until then the page shows the item file's own`];
  });
}
