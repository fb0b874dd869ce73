import { FaultError, faultLine, filesInMemory, readItem, withSizeValues, type Item } from '../../../read/index.ts';
import type { Faulty, Subject } from './messages.ts';

/** The item as its file would read with the subject's values in it. Throws as the reader does. */
export function itemOf({ files, path, size, values }: Subject): Item {
  const text = files[path] ?? '';
  return readItem(filesInMemory({ ...files, [path]: withSizeValues(text, size, values) }), path);
}

/** Does the work, or tells why the values allow none. */
export async function orFaulty<Answer>(run: number, work: () => Promise<Answer> | Answer): Promise<Answer | Faulty> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof FaultError) return { answer: 'faulty', run, told: error.faults.map(faultLine).join('\n') };
    return { answer: 'faulty', run, told: error instanceof Error ? error.message : String(error) };
  }
}
