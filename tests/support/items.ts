import { fileURLToPath } from 'node:url';
import { checkModel, type Report } from '../../src/check/index.ts';
import { buildModel, type Model } from '../../src/model/index.ts';
import { declaredFor, filesInMemory, filesOnDisk, listItems, readItem, type Item } from '../../src/read/index.ts';
import { remembered } from './remembered.ts';

export const files = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));
const kitFile = 'steps/kits/stall-kit.yaml';

/** Every item under `steps`, as its files stand. */
export const items: readonly Item[] = listItems(files).map((file) => readItem(files, file));

/** Every size of every item; `name` is for the heading of its tests. */
export const everySize: readonly { readonly name: string; readonly item: Item; readonly size: string }[] =
  items.flatMap((item) => item.sizes.map((size) => ({ name: `${item.name} ${size.name}`, item, size: size.name })));

export function itemNamed(name: string): Item {
  const item = items.find((each) => each.name === name);
  if (item === undefined) throw new Error(`no item ${name}`);
  return item;
}

const builtModel = remembered((item: Item, size: string): Model => buildModel(item, size));

/** The model of an item's first size, or of the one named; the same one each time. */
export const modelOf = (item: Item, size = item.sizes[0]?.name ?? ''): Model => builtModel(item, size);

/** What the checks say of a size, for those its item is declared for. */
export const reportOf = remembered((item: Item, size: string): Report => checkModel(modelOf(item, size), declaredFor(item, size)));

export interface Change {
  readonly from: string;
  readonly to: string;
}

/** A text with passages changed; each must be there. */
export const withChanges = (text: string, changes: readonly Change[]): string => changes.reduce((now, { from, to }) => {
  if (!now.includes(from)) throw new Error(`"${from}" must occur in the text`);
  return now.replace(from, () => to);
}, text);

/** The text of the stall kit. */
export const kitText: string = files.text(kitFile) ?? '';

/** An item read from text, with the stall kit or the text of one in its place. */
export function itemFrom(text: string, kit = kitText): Item {
  const file = `steps/${/^name: (.*)$/m.exec(text)?.[1] ?? ''}/item.yaml`;
  return readItem(filesInMemory({ [file]: text, [kitFile]: kit }), file);
}

/** The file of an item under `steps` with passages changed. */
export const itemWith = (name: string, ...changes: readonly Change[]): Item =>
  itemFrom(withChanges(files.text(`steps/${name}/item.yaml`) ?? '', changes));

/** An item of `steps` whose file calls it something else. */
export const renamed = (name: string): Item => itemWith(name, { from: `name: ${name}\n`, to: 'name: thing\n' });

/** The item's own file with these wishes for its order. */
export const wishing = (name: string, ...wishes: readonly { readonly first: string; readonly then: string }[]): Item =>
  itemWith(name, { from: 'order: []', to: ['order:', ...wishes.flatMap(({ first, then }) =>
    [`  - first: ${first}`, `    then: ${then}`, '    because: The cooperative tries another order.'])].join('\n') });
