import { mkdir, rmdir, stat, utimes } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { MachineFault } from '../../read/machine-fault.ts';

const POLL_MS = 100;
/** A lock this old without a sign of life was left by a run that was killed. */
const STALE_MS = 30_000;
const GIVE_UP_MS = 180_000;

/**
 * Runs `work` while no other process runs work under the same lock.
 * The lock is a folder, which only one process can make; its date is renewed while the work goes on.
 */
export async function withLock(folder: string, work: () => Promise<void>): Promise<void> {
  await take(folder);
  const alive = setInterval(() => { utimes(folder, new Date(), new Date()).catch(() => undefined); }, STALE_MS / 5);
  try {
    await work();
  } finally {
    clearInterval(alive);
    await rmdir(folder).catch(() => undefined);
  }
}

async function take(folder: string): Promise<void> {
  for (let waited = 0; waited < GIVE_UP_MS; waited += POLL_MS) {
    try {
      await mkdir(folder);
      return;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const made = await stat(folder).catch(() => undefined);
    if (made && Date.now() - made.mtimeMs > STALE_MS) await rmdir(folder).catch(() => undefined);
    await pause(POLL_MS);
  }
  throw new MachineFault(`another run has been unpacking the browser for ${GIVE_UP_MS / 1000} s; if none is running, delete ${folder}`);
}
