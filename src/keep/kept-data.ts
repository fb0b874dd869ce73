import { deserialize, serialize } from 'node:v8';
import type { Keep } from './types.ts';

/** What is kept under a key, or what `make` gives, which is then kept. Plain data: maps and byte arrays may be in it, no functions. */
export function keptData<T>(keep: Keep, key: string, make: () => T): T {
  const found = readData<T>(keep, key);
  if (found !== null) return found;
  const made = make();
  writeData(keep, key, made);
  return made;
}

/** The same for what takes its time. */
export async function keptLater<T>(keep: Keep, key: string, make: () => Promise<T>): Promise<T> {
  const found = readData<T>(keep, key);
  if (found !== null) return found;
  const made = await make();
  writeData(keep, key, made);
  return made;
}

/** The key says what was kept, so the type is that of the writer. */
export function readData<T>(keep: Keep, key: string): T | null {
  const bytes = keep.read(key);
  return bytes === null ? null : (deserialize(bytes) as { readonly data: T }).data;
}

export function writeData(keep: Keep, key: string, data: unknown): void {
  keep.write(key, serialize({ data }));
}
