import type { Keep } from '../keep/index.ts';
import type { Solids } from '../model/index.ts';
import { planWith } from './crew/hand.ts';
import { keptPlan, type PlannedSize } from './drafts.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { drawableSize } from './sound.ts';

/** Reads, checks and plans a size of the named item; its second one unless told. Throws where it cannot be drawn, or is not known. */
export async function planAnew(name: string, asked: string | undefined, keep: Keep, solids: Solids): Promise<PlannedSize> {
  const [item] = itemsNamed(name);
  if (item === undefined) throw new RangeError(`no item ${name}`);
  const sizes = sizesOf(item);
  const [size = ''] = chosen(sizes, [asked ?? sizes[1] ?? sizes[0] ?? ''], 'size');
  const { model, report } = drawableSize(item, size);
  return { item: item.name, size, model, ...await keptPlan(keep, { item, model, report }, (given) => planWith(given, solids)) };
}
