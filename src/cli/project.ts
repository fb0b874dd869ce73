import { filesOnDisk, listItems, readItem, type Item } from '../read/index.ts';

/** The names of the items a command works on: the named one, or all under steps/. Throws when there is none of that name. */
export const itemNames = (name: string | undefined, root = '.'): readonly string[] => itemFiles(name, root).map(folderOf);

/** Those items, read. */
export function itemsNamed(name: string | undefined, root = '.'): readonly Item[] {
  const files = filesOnDisk(root);
  return itemFiles(name, root).map((path) => readItem(files, path));
}

const folderOf = (path: string): string => path.split('/')[1] ?? path;

function itemFiles(name: string | undefined, root: string): readonly string[] {
  const known = listItems(filesOnDisk(root));
  if (known.length === 0) throw new Error('steps/: no item here; would be right: a folder with an item.yaml, and the command run from the folder that holds steps/');
  const wanted = name === undefined ? known : known.filter((path) => path === `steps/${name}/item.yaml`);
  if (wanted.length > 0) return wanted;
  throw new Error(`steps/${name ?? ''}/item.yaml: no such item; would be right: one of ${known.map(folderOf).join(', ')}`);
}

/** Those of `all` that were asked for, in the order of `all`. Throws when one asked for is unknown. */
export function chosen<Name extends string>(all: readonly Name[], asked: readonly string[] | undefined, option: string): readonly Name[] {
  if (asked === undefined) return all;
  const unknown = asked.find((name) => !all.some((known) => known === name));
  if (unknown !== undefined) throw new Error(`--${option} ${unknown}: not known; would be right: one of ${all.join(', ')}`);
  return all.filter((name) => asked.includes(name));
}

export const sizesOf = (item: Item): readonly string[] => item.sizes.map((size) => size.name);
