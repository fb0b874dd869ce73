import { checkModel, type Report } from '../../../src/check/index.ts';
import { buildModel, type Model, type Solids } from '../../../src/model/index.ts';
import { planItem } from '../../../src/plan/index.ts';
import { declaredFor, filesOnDisk, readItem } from '../../../src/read/index.ts';
import type { BookletInput } from '../../../src/booklet/pages/index.ts';
import { sharedSolids } from '../../support/kernel.ts';
import { once } from '../../support/once.ts';
import { rackInput, standInPictures, type Wanted } from './rack-booklet.ts';

const root = new URL('../../../', import.meta.url).pathname;

/** Items other than the rack, each with a size that has all its peculiarities. */
export const furniture = { desk: 'mark-4', chair: 'mark-4', bed: 'toddler', stool: 'standard' } as const;
export type Furniture = keyof typeof furniture;

/** The models of an item in every size its file has. */
export const modelsOf = once((name: Furniture | 'rack'): readonly Model[] => {
  const item = readItem(filesOnDisk(root), `steps/${name}/item.yaml`);
  return item.sizes.map((size) => buildModel(item, size.name));
});

/** What the checks say of every size of an item. */
export function reportsOf(name: Furniture | 'rack'): readonly Report[] {
  const item = readItem(filesOnDisk(root), `steps/${name}/item.yaml`);
  return item.sizes.map((size) => checkModel(buildModel(item, size.name), declaredFor(item, size.name)));
}

type Made = Pick<BookletInput, 'model' | 'plan' | 'report' | 'variants' | 'pictures'>;

/** What the rooms before the booklet make of an item, pictures as stand-ins; takes some seconds. */
export const madeFurniture = once((name: Furniture, solids: Solids): Made => {
  const item = readItem(filesOnDisk(root), `steps/${name}/item.yaml`);
  const model = buildModel(item, furniture[name]);
  const plan = planItem(model, item.order, solids);
  return { model, plan, report: checkModel(model, declaredFor(item, furniture[name])), variants: modelsOf(name), pictures: standInPictures(plan) };
});

/** The same for several items, each made once. */
export async function allFurniture(names: readonly Furniture[]): Promise<(name: Furniture, wanted?: Wanted) => BookletInput> {
  const solids = await sharedSolids();
  const made = new Map(names.map((name) => [name, madeFurniture(name, solids)]));
  return (name, wanted) => {
    const found = made.get(name);
    if (!found) throw new Error(`${name} was not asked for`);
    return { ...rackInput(wanted), ...found };
  };
}
