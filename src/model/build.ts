import { namesOf, type Item } from '../read/index.ts';
import { shortModel } from './short/short-model.ts';
import type { Names } from './short/standing.ts';
import { structureModel } from './structure/structure-model.ts';
import type { Model } from './types.ts';

/** One size variant of an item: every part shaped and placed. Throws when the item has no such size, and a FaultError where its parts do not go together. */
export function buildModel(item: Item, size: string): Model {
  const given = valuesOf(item, size);
  const { skeleton, places } = item.structures[size] ?? { skeleton: null, places: [] };
  return skeleton === null ? shortModel(item, size, given) : structureModel(item, size, skeleton, places, given);
}

/** The parameters of a size and the expressions over them, in the order of the file. */
function valuesOf(item: Item, size: string): Names {
  if (!item.sizes.some(({ name }) => name === size)) {
    throw new RangeError(`${item.source.file}: no size "${size}"; would be right: one of ${item.sizes.map((each) => each.name).join(', ')}`);
  }
  return namesOf(item, size);
}
