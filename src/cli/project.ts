import { filesOnDisk, readItem, type Item } from '../read/index.ts';
import { itemFiles } from './project-names.ts';

export { isFileOfItem, itemNames } from './project-names.ts';

/** The items a command works on, read: the named one, be it a draft or the one of a file, or all under steps/. Throws when there is none of that name. */
export function itemsNamed(name: string | undefined, root = '.'): readonly Item[] {
  const files = filesOnDisk(root);
  return itemFiles(name, root).map((path) => readItem(files, path));
}

/** Those of `all` that were asked for, in the order of `all`. Throws when one asked for is unknown. */
export function chosen<Name extends string>(all: readonly Name[], asked: readonly string[] | undefined, option: string): readonly Name[] {
  if (asked === undefined) return all;
  const unknown = asked.find((name) => !all.some((known) => known === name));
  if (unknown !== undefined) throw new Error(`--${option} ${unknown}: not known; would be right: one of ${all.join(', ')}`);
  return all.filter((name) => asked.includes(name));
}

export const sizesOf = (item: Item): readonly string[] => item.sizes.map((size) => size.name);
