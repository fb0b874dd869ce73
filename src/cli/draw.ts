import { nothingKept, readData, writeData, type Keep } from '../keep/index.ts';
import { textsOf } from './finished.ts';
import { writeTold } from './files.ts';
import type { DrawnStep, DrawOptions } from './drawn-step.ts';
import { keepAsked } from './keeping.ts';
import { isFileOfItem, itemNames } from './project-names.ts';

/** Writes the picture of one step, and beside it the further pictures it has. What was drawn before from the same texts is not even read. */
export async function drawCommand(name: string, options: DrawOptions): Promise<void> {
  const keep = keepAsked(options);
  const [item] = itemNames(name);
  if (item === undefined) return;
  // What a file given by its path makes is not kept by its name.
  const key = isFileOfItem(name) ? null : keep.key('step drawn', item, options.step, options.size ?? null, textsOf(item));
  const { name: usual, svgs } = (key === null ? null : readData<DrawnStep>(keep, key)) ?? await drawnAnew(name, options, keep, key);
  const base = (options.out ?? usual).replace(/\.svg$/, '');
  svgs.forEach((svg, index) => { writeTold(`${base}${index === 0 ? '' : `-${'abc'[index - 1] ?? index}`}.svg`, svg); });
  keep.trim();
}

async function drawnAnew(name: string, options: DrawOptions, keep: Keep, key: string | null): Promise<DrawnStep> {
  const drawn = await (await import('./draw-anew.ts')).drawStep(name, options, keep);
  if (key !== null && keep !== nothingKept) writeData(keep, key, drawn);
  return drawn;
}
