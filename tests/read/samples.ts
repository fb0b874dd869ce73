import { fileURLToPath } from 'node:url';
import { FaultError, filesInMemory, filesOnDisk, readItem } from '../../src/read/index.ts';
import type { Fault, Item } from '../../src/read/index.ts';

export const itemFile = 'steps/shelf/item.yaml';
export const kitFile = 'steps/kits/small-kit.yaml';

const stored = filesOnDisk(fileURLToPath(new URL('./files', import.meta.url)));

/** The text of a stored sample with one passage changed; the passage must be there exactly once. */
export function changed(file: string, from: string, to: string): string {
  const text = stored.text(file) ?? '';
  if (text.split(from).length !== 2) throw new Error(`"${from}" must occur once in ${file}`);
  return text.replace(from, () => to);
}

export function sample(file: string): string {
  return stored.text(file) ?? '';
}

/** Reads the sample item, with texts of some files replaced. */
export function readSample(texts: Readonly<Record<string, string>> = {}): Item {
  return readItem(filesInMemory({ [itemFile]: sample(itemFile), [kitFile]: sample(kitFile), ...texts }), itemFile);
}

/** The faults that reading throws; none when it succeeds. Anything else thrown goes on. */
export function faultsOf(read: () => unknown): readonly Fault[] {
  try {
    read();
    return [];
  } catch (error) {
    if (error instanceof FaultError) return error.faults;
    throw error;
  }
}
