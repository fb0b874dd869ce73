import { buildModel, loadSolids, type Solids } from '../../../src/model/index.ts';
import { planItem } from '../../../src/plan/index.ts';
import { filesOnDisk, readItem } from '../../../src/read/index.ts';
import type { BookletInput } from '../../../src/booklet/pages/index.ts';
import { rackInput, standInPictures, type Wanted } from './rack-booklet.ts';

const root = new URL('../../../', import.meta.url).pathname;

/** Items other than the rack, each with a size that has all its peculiarities. */
export const furniture = { desk: 'mark-4', chair: 'mark-4', bed: 'toddler', stool: 'standard' } as const;
export type Furniture = keyof typeof furniture;

/** Names of every size of every item, as the item files have them. */
export function sizesOf(name: Furniture): readonly string[] {
  return readItem(filesOnDisk(root), `steps/${name}/item.yaml`).sizes.map((size) => size.name);
}

type Made = Pick<BookletInput, 'model' | 'plan' | 'variants' | 'pictures'>;

/** What the rooms before the booklet make of an item, pictures as stand-ins; takes some seconds. */
export function madeFurniture(name: Furniture, solids: Solids): Made {
  const item = readItem(filesOnDisk(root), `steps/${name}/item.yaml`);
  const variants = item.sizes.map((size) => buildModel(item, size.name));
  const model = buildModel(item, furniture[name]);
  const plan = planItem(model, item.order, solids);
  return { model, plan, variants, pictures: standInPictures(plan) };
}

/** The same for several items, each made once. */
export async function allFurniture(names: readonly Furniture[]): Promise<(name: Furniture, wanted?: Wanted) => BookletInput> {
  const solids = await loadSolids();
  const made = new Map(names.map((name) => [name, madeFurniture(name, solids)]));
  return (name, wanted) => {
    const found = made.get(name);
    if (!found) throw new Error(`${name} was not asked for`);
    // The rack's report stands in: the pages show whatever a report says.
    return { ...rackInput(wanted), ...found };
  };
}
