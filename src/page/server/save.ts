import { createHash } from 'node:crypto';
import { FaultError, faultLine, filesInMemory, listItems, readItem, withSizeValues } from '../../read/index.ts';
import type { SaveAnswer, SaveOrder } from '../types.ts';
import type { Workshop } from './workshop.ts';

export const markOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/**
 * Writes values into one size of an item file; all else in it stays as it is. Nothing is written where the file is no
 * longer the one the page read, or the new text is not a sound item.
 */
export function saveValues(workshop: Workshop, { path, size, values, mark }: SaveOrder): SaveAnswer {
  const { files } = workshop.texts();
  const known = listItems(filesInMemory(files)).includes(path);
  const text = files[path];
  if (!known || text === undefined) return { saved: false, why: 'refused', told: `${path}: no such item` };
  if (markOf(text) !== mark) return { saved: false, why: 'moved', told: `${path}: the file is another since the page read it` };
  const changed = readable(files, path, text, size, values);
  if (typeof changed !== 'string') return changed;
  workshop.write(path, changed);
  return { saved: true, text: changed, mark: markOf(changed) };
}

/** The new text when it is a sound item, or why it is not. */
function readable(files: Readonly<Record<string, string>>, path: string, text: string, size: string, values: SaveOrder['values']): string | SaveAnswer {
  try {
    const changed = withSizeValues(text, size, values);
    readItem(filesInMemory({ ...files, [path]: changed }), path);
    return changed;
  } catch (error) {
    if (error instanceof FaultError) return { saved: false, why: 'refused', told: error.faults.map(faultLine).join('\n') };
    if (error instanceof RangeError) return { saved: false, why: 'refused', told: `${path}: ${error.message}` };
    throw error;
  }
}
