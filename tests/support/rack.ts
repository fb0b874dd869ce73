import { fileURLToPath } from 'node:url';
import type { Model, Part } from '../../src/model/index.ts';
import { filesInMemory, filesOnDisk, readItem, type Item } from '../../src/read/index.ts';
import { itemNamed, modelOf } from './items.ts';
import { sharedSolids } from './kernel.ts';

const files = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));
export const itemFile = 'steps/rack/item.yaml';
const kitFile = 'steps/kits/stall-kit.yaml';

/** The rack as its files stand. */
export const rack: Item = itemNamed('rack');

export const sizes: readonly string[] = rack.sizes.map((size) => size.name);

/** The solid kernel, loaded once a test file. */
export const solids = await sharedSolids();

export const rackModel = (size: string): Model => modelOf(rack, size);

/** The rack read from its files with one passage of the item file changed; the passage must be there. */
export function rackWith(from: string, to: string): Item {
  const text = files.text(itemFile) ?? '';
  if (!text.includes(from)) throw new Error(`"${from}" must occur in ${itemFile}`);
  return readItem(filesInMemory({ [itemFile]: text.replace(from, () => to), [kitFile]: files.text(kitFile) ?? '' }), itemFile);
}

export interface WrittenWish {
  readonly first: string;
  readonly then: string;
}

/** The rack whose file asks for these orders, each on three lines of its own. */
export const rackWishing = (...wishes: readonly WrittenWish[]): Item =>
  rackWith('order: []', ['order:', ...wishes.flatMap(({ first, then }) =>
    [`  - first: ${first}`, `    then: ${then}`, '    because: The cooperative tries another order.'])].join('\n'));

/** A model with one part replaced. */
export const withPart = (model: Model, id: string, change: (part: Part) => Part): Model => {
  if (!model.parts.some((part) => part.id === id)) throw new Error(`no part ${id}`);
  return { ...model, parts: model.parts.map((part) => (part.id === id ? change(part) : part)) };
};

export function partOf(model: Model, id: string): Part {
  const part = model.parts.find((candidate) => candidate.id === id);
  if (part === undefined) throw new Error(`no part ${id}`);
  return part;
}
