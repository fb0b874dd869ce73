import { planTubes } from '../cut/index.ts';
import { cachedDrawer, stepPictures } from '../draw/index.ts';
import { buildModel, loadSolids } from '../model/index.ts';
import { planItem } from '../plan/index.ts';
import { writeTold } from './files.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';

/** Writes the picture of one step, and beside it the further pictures it has. */
export async function drawCommand(name: string, options: { readonly step: string; readonly size?: string; readonly out?: string }): Promise<void> {
  const [item] = itemsNamed(name);
  if (item === undefined) return;
  const sizes = sizesOf(item);
  const [size = ''] = chosen(sizes, [options.size ?? sizes[1] ?? sizes[0] ?? ''], 'size');
  const model = buildModel(item, size);
  const solids = await loadSolids();
  const plan = planItem(model, item.order, solids);
  const step = plan.steps.find((each) => String(each.number) === options.step);
  if (step === undefined) throw new Error(`--step ${options.step}: no such step; would be right: a whole number from 1 to ${plan.steps.length}`);
  const pictures = stepPictures({ model, plan, cuts: await planTubes(model), solids, draw: cachedDrawer() }, step);
  const base = (options.out ?? `${item.name}-${size}-step-${step.number}.svg`).replace(/\.svg$/, '');
  pictures.forEach((picture, index) => {
    writeTold(`${base}${index === 0 ? '' : `-${'abc'[index - 1] ?? index}`}.svg`, picture.svg);
  });
}
