import { buildModel, type Model } from '../../src/model/index.ts';
import { declaredBy, type Declared, type Item, type Kit, type Quantity } from '../../src/read/index.ts';
import * as shared from '../support/items.ts';

export const itemNames = ['rack', 'desk', 'chair', 'bed', 'stool'] as const;

export type ItemName = (typeof itemNames)[number];

/** An item as its files stand. */
export const itemNamed = (name: ItemName): Item => shared.itemNamed(name);

/** Every size of every item. */
export const variants: readonly (readonly [ItemName, string])[] =
  itemNames.flatMap((name) => itemNamed(name).sizes.map((size) => [name, size.name] as const));

export const modelOf = (name: ItemName, size: string): Model => shared.modelOf(itemNamed(name), size);

/** For adults, indoors: what the racks of these tests declare that no file describes. */
export const forAdults: Declared = { place: 'indoors', wall: 'masonry', people: 'adults', mark: null, mattress: null };

/** What the item file of a model declares, with the model's own values. */
export function declaredOf(model: Model): Declared {
  const item = itemNames.find((name) => name === model.item && model.size !== 'only');
  return item === undefined ? forAdults : declaredBy(itemNamed(item).declares, model.parameters);
}

/** One size of an item with some of its parameters, in mm or counts, and its kit changed. */
export function changed(name: ItemName, size: string, values: Readonly<Record<string, number>>, kit: (kit: Kit) => Kit = (same) => same): Model {
  const item = itemNamed(name);
  const sizes = item.sizes.map((each) => (each.name === size ? { ...each, values: { ...each.values, ...quantities(item, values) } } : each));
  return buildModel({ ...item, kit: kit(item.kit), sizes }, size);
}

/** Values of parameters as the file would give them. */
const quantities = (item: Item, values: Readonly<Record<string, number>>): Readonly<Record<string, Quantity>> =>
  Object.fromEntries(Object.entries(values).map(([parameter, value]) => {
    const dimension = item.parameters.find((each) => each.name === parameter)?.least.dimension;
    if (dimension === undefined) throw new Error(`${item.name} has no parameter ${parameter}`);
    return [parameter, { value, dimension }];
  }));
