import { filesOnDisk, listItems, readItem, type Item } from '../read/index.ts';

/** Where items stand that are not made unless they are named. */
export const DRAFTS = 'steps/drafts';

/** The items a command works on: the named one, be it a draft, or all under steps/. Throws when there is none of that name. */
export function itemsNamed(name: string | undefined, root = '.'): readonly Item[] {
  const files = filesOnDisk(root);
  const known = listItems(files);
  if (known.length === 0) throw new Error('steps/: no item here; would be right: a folder with an item.yaml, and the command run from the folder that holds steps/');
  const wanted = name === undefined ? known : [...known, ...listItems(files, DRAFTS)].filter((path) => path === `steps/${name}/item.yaml` || path === `${DRAFTS}/${name}/item.yaml`);
  if (wanted.length === 0) {
    throw new Error(`steps/${name ?? ''}/item.yaml: no such item; would be right: one of ${known.map((path) => path.split('/')[1] ?? path).join(', ')}`);
  }
  return wanted.map((path) => readItem(files, path));
}

/** Those of `all` that were asked for, in the order of `all`. Throws when one asked for is unknown. */
export function chosen<Name extends string>(all: readonly Name[], asked: readonly string[] | undefined, option: string): readonly Name[] {
  if (asked === undefined) return all;
  const unknown = asked.find((name) => !all.some((known) => known === name));
  if (unknown !== undefined) throw new Error(`--${option} ${unknown}: not known; would be right: one of ${all.join(', ')}`);
  return all.filter((name) => asked.includes(name));
}

export const sizesOf = (item: Item): readonly string[] => item.sizes.map((size) => size.name);
