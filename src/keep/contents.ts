import { createHash } from 'node:crypto';
import { nothingKept } from './keep.ts';
import type { Keep } from './types.ts';

/** What is kept by its content alone, so that equal files are kept once. Its name is its SHA-256. */
export const contentHash = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

/** Whatever the code: a content is the same by every code. */
const keyOf = (hash: string): string => nothingKept.key('content', hash);

/** Keeps a content and gives its name. */
export function keepContent(keep: Keep, content: string | Uint8Array): string {
  const hash = contentHash(content);
  const key = keyOf(hash);
  if (!keep.holds(key)) keep.write(key, Buffer.from(content));
  return hash;
}

/** The content of this name, or null. */
export const keptContent = (keep: Keep, hash: string): Uint8Array | null => keep.read(keyOf(hash));
