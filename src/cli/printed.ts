import { createHash } from 'node:crypto';
import { writeWhole } from './files.ts';

/** End of a file's name by its paper; A4 has none. */
export const paperEnding = (paper: string): string => (paper === 'a4' ? '' : `-${paper}`);

/** Eight characters that change whenever one of the texts does. */
export function shortMark(...texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text);
  return hash.digest('hex').slice(0, 8);
}

/** Writes a file whole and tells its path. */
export function writeTold(path: string, content: string | Uint8Array): void {
  writeWhole(path, content);
  process.stdout.write(`${path}\n`);
}
