import { createHash } from 'node:crypto';

/** Eight characters that change whenever one of the texts does. */
export function shortMark(...texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text);
  return hash.digest('hex').slice(0, 8);
}
