import { fileURLToPath } from 'node:url';
import { filesOnDisk, listItems, readItem } from '../../src/read/index.ts';

/** What comes of work, and what it has cost the processor, ms: what other work on the machine takes is not in it. */
export function timed<Answer>(work: () => Answer): { readonly answer: Answer; readonly time: number } {
  const before = process.cpuUsage();
  const answer = work();
  const { user, system } = process.cpuUsage(before);
  return { answer, time: (user + system) / 1000 };
}

const files = filesOnDisk(fileURLToPath(new URL('../..', import.meta.url)));

/** What it costs this machine's processor to read every item of the repository, ms: what other readings are measured by, so that a slow machine may be slow. */
export const catalogueTime: number = Math.max(...[1, 2, 3].map(() => timed(() => listItems(files).map((path) => readItem(files, path))).time));
