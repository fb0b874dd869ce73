import { filesOnDisk, listItems, readItem, type Item } from '../read/index.ts';

/** Where items stand that are not made unless they are named. */
export const DRAFTS = 'steps/drafts';

/** The names of the items a command works on: the named one, be it a draft or the one of a file, or all under steps/. Throws when there is none of that name. */
export const itemNames = (name: string | undefined, root = '.'): readonly string[] => itemFiles(name, root).map(folderOf);

/** Those items, read. */
export function itemsNamed(name: string | undefined, root = '.'): readonly Item[] {
  const files = filesOnDisk(root);
  return itemFiles(name, root).map((path) => readItem(files, path));
}

/** Whether an item is asked for by the path of its file. */
export const isFileOfItem = (name: string | undefined): name is string => name?.endsWith('/item.yaml') === true;

const folderOf = (path: string): string => path.split('/').at(-2) ?? path;

function itemFiles(name: string | undefined, root: string): readonly string[] {
  if (isFileOfItem(name)) return [name];
  const made = listItems(filesOnDisk(root));
  if (made.length === 0) throw new Error('steps/: no item here; would be right: a folder with an item.yaml, and the command run from the folder that holds steps/');
  if (name === undefined) return made;
  const wanted = [...made, ...listItems(filesOnDisk(root), DRAFTS)].filter((path) => folderOf(path) === name);
  if (wanted.length > 0) return wanted;
  throw new Error(`steps/${name}/item.yaml: no such item; would be right: one of ${made.map(folderOf).join(', ')}`);
}

/** Those of `all` that were asked for, in the order of `all`. Throws when one asked for is unknown. */
export function chosen<Name extends string>(all: readonly Name[], asked: readonly string[] | undefined, option: string): readonly Name[] {
  if (asked === undefined) return all;
  const unknown = asked.find((name) => !all.some((known) => known === name));
  if (unknown !== undefined) throw new Error(`--${option} ${unknown}: not known; would be right: one of ${all.join(', ')}`);
  return all.filter((name) => asked.includes(name));
}

export const sizesOf = (item: Item): readonly string[] => item.sizes.map((size) => size.name);
