import { FaultError, faultLine, filesInMemory, readItem, type Item } from '../../../read/index.ts';
import type { ProjectTexts } from '../../types.ts';

/** The item, or why its file cannot be read, a line a fault. */
export function itemOrTold({ files }: Pick<ProjectTexts, 'files'>, path: string): Item | string {
  try {
    return readItem(filesInMemory(files), path);
  } catch (error) {
    if (error instanceof FaultError) return error.faults.map(faultLine).join('\n');
    throw error;
  }
}
