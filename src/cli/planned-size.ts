import { keptLater, type Keep } from '../keep/index.ts';
import type { Solids } from '../model/index.ts';
import type { PlannedSize } from './drafts.ts';
import { textsOf } from './finished.ts';
import { isFileOfItem, itemNames } from './project-names.ts';

/** As `planAnew`, or as it was kept from the same texts: then nothing is loaded that reads, checks or plans. */
export async function plannedSize(name: string, asked: string | undefined, keep: Keep, solids: Solids): Promise<PlannedSize> {
  const planned = async (): Promise<PlannedSize> => (await import('./plan-anew.ts')).planAnew(name, asked, keep, solids);
  const [item] = itemNames(name);
  // What a file given by its path is planned as is not kept by its name.
  return item === undefined || isFileOfItem(name) ? planned() : keptLater(keep, keep.key('size planned', item, asked ?? null, textsOf(item)), planned);
}
