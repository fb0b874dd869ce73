import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chooseBrowser } from '../../src/booklet/print/chooseBrowser.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const MAKE = ['make', 'stool', '--size', 'low', '--lang', 'en', '--edition', 'words', '--paper', 'a4'];

/** A copy of the whole project in a folder of its own, as a clone would be. */
interface Clone {
  readonly folder: string;
  /** Makes the sample by the clone's own program; gives the hash of each file that came of it. */
  make(out: string, env: Readonly<Record<string, string>>, options: readonly string[], before?: readonly string[]): Promise<Readonly<Record<string, string>>>;
}

let home: string;
beforeAll(() => { home = mkdtempSync(join(tmpdir(), 'foldwright-same-')); });
afterAll(() => { rmSync(home, { recursive: true, force: true }); });

function clone(name: string): Clone {
  const folder = join(home, name);
  mkdirSync(folder, { recursive: true });
  for (const each of ['src', 'steps', 'locales', 'package.json', 'package-lock.json', 'tsconfig.json', '.puppeteerrc.json']) cpSync(join(project, each), join(folder, each), { recursive: true });
  symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'));
  return {
    folder,
    make: async (out, env, options, before = []) => {
      const [program = '', ...args] = [...before, process.execPath, join(folder, 'src/cli/foldwright.mjs'), ...MAKE, '--out', out, ...options];
      await new Promise<void>((resolve, reject) => {
        execFile(program, args, { cwd: folder, env: { ...process.env, ...env } }, (error, _, told) => { if (error === null) resolve(); else reject(new Error(told)); });
      });
      const made = join(folder, out, 'stool', 'low');
      return Object.fromEntries(readdirSync(made).sort().map((file) => [file, createHash('sha256').update(readFileSync(join(made, file))).digest('hex')]));
    },
  };
}

describe('the same text', () => {
  it('gives the same bytes in another folder, language, time zone, by fewer or more threads and cores, from what is kept, and as they stand in the table', async () => {
    const [one, other] = [clone('one'), clone('another one, with π')];
    const oneCore = process.platform === 'linux' && cpus().length > 1 ? ['taskset', '-c', '0'] : [];
    const first = await one.make('out', { TZ: 'UTC', LANG: 'C', LC_ALL: 'C', UV_THREADPOOL_SIZE: '1' }, ['--no-cache'], oneCore);
    const strange = { TZ: 'Asia/Kathmandu', LANG: 'ar_EG.UTF-8', LC_ALL: 'ar_EG.UTF-8', LANGUAGE: 'ar', UV_THREADPOOL_SIZE: '16' };
    const cache = ['--cache', join(home, 'kept')];
    const second = await other.make('aus', strange, cache);
    const third = await other.make('again', strange, cache);
    expect(Object.keys(first)).toEqual(['build.json', 'stool-low-en-words.pdf', 'stool-low.html']);
    expect(second).toEqual(first);
    expect(third).toEqual(first);
    // Other browsers set other bytes; the packaged one is the same on all machines.
    if ((await chooseBrowser()).how === 'packaged') await expect(`${JSON.stringify(first, null, 2)}\n`).toMatchFileSnapshot('hashes.json');
  });
});
