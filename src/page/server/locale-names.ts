import type { LocaleFiles } from '../../booklet/index.ts';
import type { GrowOrder } from '../types.ts';

interface NamedItem {
  readonly name: string;
  readonly sizes: Readonly<Record<string, string>>;
}

/**
 * The locale files in which a new size or item gets its name for readers: in every language the one that was given,
 * until somebody translates it. `item` is the item that has the size, `from` the one that it was made from.
 */
export function namedInLocales(locales: LocaleFiles, { what, name, title }: GrowOrder, { item, from }: { readonly item: string; readonly from: string }): LocaleFiles {
  return Object.fromEntries(Object.entries(locales).filter(([path]) => path.endsWith('/items.json')).map(([path, text]) => {
    const items = JSON.parse(text) as Readonly<Record<string, NamedItem>>;
    const known = items[from];
    const named = what === 'item'
      ? { ...known, name: title, sizes: known?.sizes ?? {} }
      : { ...(known ?? { name: item }), sizes: { ...known?.sizes, [name]: title } };
    return [path, `${JSON.stringify({ ...items, [item]: named }, null, 2)}\n`];
  }));
}
