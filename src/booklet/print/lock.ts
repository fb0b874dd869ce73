import { mkdir, rmdir, stat, utimes } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { MachineFault } from '../../read/machine-fault.ts';

const POLL_MS = 100;
/** A lock this old without a sign of life was left by a run that was killed. */
const STALE_MS = 30_000;

/**
 * Runs `work` while no other process runs work under the same lock.
 * The lock is a folder, which only one process can make; its date is renewed while the work goes on. One who finds it
 * taken rests and tries again.
 */
export async function withLock(folder: string, work: () => Promise<void>, rest: () => Promise<void> = () => pause(POLL_MS)): Promise<void> {
  await take(folder, rest);
  const alive = setInterval(() => { utimes(folder, new Date(), new Date()).catch(() => undefined); }, STALE_MS / 5);
  try {
    await work();
  } finally {
    clearInterval(alive);
    await rmdir(folder).catch(() => undefined);
  }
}

/** Waits as long as whoever has it shows that it lives, however slow. @throws MachineFault where one that was left cannot be taken away. */
async function take(folder: string, rest: () => Promise<void>): Promise<void> {
  for (;;) {
    try {
      await mkdir(folder);
      return;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const made = await stat(folder).catch(() => undefined);
    if (made && Date.now() - made.mtimeMs > STALE_MS) await takeAway(folder);
    await rest();
  }
}

async function takeAway(folder: string): Promise<void> {
  try {
    await rmdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    // Another that waits was faster.
    if (code !== 'ENOENT') throw new MachineFault(`${folder}: left by a run that was killed, and cannot be taken away (${code ?? ''}); would help: to delete it`, { cause: error });
  }
}
