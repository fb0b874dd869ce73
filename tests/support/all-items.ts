import { fileURLToPath } from 'node:url';
import { buildModel, isToldByPoints, type Model } from '../../src/model/index.ts';
import { filesOnDisk, listItems, readItem, type Item } from '../../src/read/index.ts';

const files = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));

/** Every item of the repository, as its files stand. */
export const items: readonly Item[] = listItems(files).map((path) => readItem(files, path));

interface NamedSize {
  readonly name: string;
  readonly model: () => Model;
}

const sizesOf = (item: Item): readonly NamedSize[] => item.sizes.map((size) => ({ name: `${item.name} ${size.name}`, model: () => buildModel(item, size.name) }));

/** Every size of every item, with its model made when asked for. */
export const allSizes: readonly NamedSize[] = items.flatMap(sizesOf);

/** Those of items told in the short form: decks, frames and flat panels between four posts. */
export const deckSizes: readonly NamedSize[] = items.flatMap(sizesOf).filter(({ model }) => !isToldByPoints(model()));
