import { fileURLToPath } from 'node:url';
import { buildModel, type Model } from '../../src/model/index.ts';
import { filesOnDisk, listItems, readItem, type Item } from '../../src/read/index.ts';

const files = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));

/** Every item of the repository, as its files stand. */
export const items: readonly Item[] = listItems(files).map((path) => readItem(files, path));

/** Every size of every item, with its model made when asked for. */
export const allSizes: readonly { readonly name: string; readonly model: () => Model }[] = items.flatMap((item) =>
  item.sizes.map((size) => ({ name: `${item.name} ${size.name}`, model: () => buildModel(item, size.name) })));
