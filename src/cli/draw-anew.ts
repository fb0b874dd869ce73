import { cachedDrawer, stepPictures } from '../draw/index.ts';
import type { Keep } from '../keep/index.ts';
import { loadSolids } from '../model/index.ts';
import type { DrawnStep, DrawOptions } from './drawn-step.ts';
import { plannedSize } from './planned-size.ts';

/** The pictures of a step, from a plan that was kept or a new one. Throws when there is no such size or step. */
export async function drawStep(name: string, options: DrawOptions, keep: Keep): Promise<DrawnStep> {
  // What the proof has built, the picture shows.
  const solids = await loadSolids();
  const { item, size, ...planned } = await plannedSize(name, options.size, keep, solids);
  const step = planned.plan.steps.find((each) => String(each.number) === options.step);
  if (step === undefined) throw new Error(`--step ${options.step}: no such step; would be right: a whole number from 1 to ${planned.plan.steps.length}`);
  const pictures = stepPictures({ ...planned, solids, draw: cachedDrawer() }, step);
  return { name: `${item}-${size}-step-${step.number}.svg`, svgs: pictures.map(({ svg }) => svg) };
}
