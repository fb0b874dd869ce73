import { cachedDrawer, stepPictures } from '../draw/index.ts';
import type { Keep } from '../keep/index.ts';
import { loadSolids } from '../model/index.ts';
import { newHand } from './crew/hand.ts';
import { keptPlan } from './drafts.ts';
import type { DrawnStep, DrawOptions } from './drawn-step.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { drawableSize } from './sound.ts';

/** The pictures of a step, from a plan that was kept or a new one. Throws when there is no such size or step. */
export async function drawStep(name: string, options: DrawOptions, keep: Keep): Promise<DrawnStep> {
  const [item] = itemsNamed(name);
  if (item === undefined) throw new RangeError(`no item ${name}`);
  const sizes = sizesOf(item);
  const [size = ''] = chosen(sizes, [options.size ?? sizes[1] ?? sizes[0] ?? ''], 'size');
  const { model, report } = drawableSize(item, size);
  const { plan, cuts } = await keptPlan(keep, { item, model, report }, (given) => newHand()('plan', given));
  const step = plan.steps.find((each) => String(each.number) === options.step);
  if (step === undefined) throw new Error(`--step ${options.step}: no such step; would be right: a whole number from 1 to ${plan.steps.length}`);
  const pictures = stepPictures({ model, plan, cuts, solids: await loadSolids(), draw: cachedDrawer() }, step);
  return { name: `${item.name}-${size}-step-${step.number}.svg`, svgs: pictures.map(({ svg }) => svg) };
}
