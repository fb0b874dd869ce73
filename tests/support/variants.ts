import type { Variant } from '../../src/cli/record.ts';
import { itemPictures } from '../../src/draw/index.ts';
import type { Item } from '../../src/read/index.ts';
import { modelOf, reportOf } from './items.ts';
import { sharedSolids } from './kernel.ts';
import { cutsOnce, planOf } from './plans.ts';
import { remembered } from './remembered.ts';

/** A size worked through as the command does it, with its real pictures for full pages; takes some 15 s the first time. */
export const variantOf = remembered(async (item: Item, size: string): Promise<Variant> => {
  const model = modelOf(item, size);
  const plan = planOf(item, size);
  const cuts = await cutsOnce(model);
  return { item, model, plan, report: reportOf(item, size), cuts, pictures: itemPictures(model, plan, cuts, await sharedSolids()) };
});
