import type { Report } from '../../../src/check/index.ts';
import type { Model } from '../../../src/model/index.ts';
import type { BookletInput } from '../../../src/booklet/pages/index.ts';
import { itemNamed, modelOf, reportOf } from '../../support/items.ts';
import { once } from '../../support/once.ts';
import { planOnce } from '../../support/plans.ts';
import { rackInput, standInPictures, type Wanted } from './rack-booklet.ts';

/** Items other than the rack, each with a size that has all its peculiarities. */
export const furniture = { desk: 'mark-4', chair: 'mark-4', bed: 'toddler', stool: 'standard' } as const;
export type Furniture = keyof typeof furniture;

/** The models of an item in every size its file has. */
export function modelsOf(name: Furniture | 'rack'): readonly Model[] {
  const item = itemNamed(name);
  return item.sizes.map((size) => modelOf(item, size.name));
}

/** What the checks say of every size of an item. */
export function reportsOf(name: Furniture | 'rack'): readonly Report[] {
  const item = itemNamed(name);
  return item.sizes.map((size) => reportOf(item, size.name));
}

type Made = Pick<BookletInput, 'model' | 'plan' | 'report' | 'variants' | 'pictures'>;

/** What the rooms before the booklet make of an item, pictures as stand-ins; takes some seconds. */
export const madeFurniture = once((name: Furniture): Made => {
  const item = itemNamed(name);
  const model = modelOf(item, furniture[name]);
  const plan = planOnce(model, item.order);
  return { model, plan, report: reportOf(item, model.size), variants: modelsOf(name), pictures: standInPictures(plan) };
});

/** What the pages need for it. */
export const furnitureInput = (name: Furniture, wanted?: Wanted): BookletInput => ({ ...rackInput(wanted), ...madeFurniture(name) });
