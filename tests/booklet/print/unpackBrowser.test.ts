import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, readdir, rm, utimes, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { brotliDecompressSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from '../../../src/booklet/print/launch.ts';
import { withLock } from '../../../src/booklet/print/lock.ts';
import { readTar } from '../../../src/booklet/print/readTar.ts';
import { unpackBrowser } from '../../../src/booklet/print/unpackBrowser.ts';

let folder = '';
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'unpack-test-')); });
afterAll(() => rm(folder, { recursive: true }));

describe('unpacking the packaged browser', () => {
  it('survives two first starts at once and leaves a program that runs, and no litter', async () => {
    const env = { XDG_CACHE_HOME: folder };
    const [one, two] = await Promise.all([unpackBrowser(env), unpackBrowser(env)]);
    expect(one).toEqual(two);
    expect(execFileSync(one.path, ['--version'], { encoding: 'utf8' })).toMatch(/ 147\./);
    expect(await readdir(join(folder, 'foldwright'))).toEqual(['chromium-147.0.0']);
    expect(await readFile(one.fontConfig, 'utf8')).toContain(`<dir>${folder}/foldwright/chromium-147.0.0/fonts</dir>`);
  });
});

describe('the tar reader', () => {
  it('reads the carried libraries whole', async () => {
    const parcel = dirname(dirname(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium'))));
    const files = readTar(brotliDecompressSync(await readFile(join(parcel, 'bin/al2023.tar.br'))));
    // Names and sizes as GNU tar lists them (`tar tvf`, release 147.0.0 of the package).
    const sizes = Object.fromEntries(files.map(({ name, bytes }) => [name, bytes.length]));
    expect(sizes).toMatchObject({ 'lib/libexpat.so.1': 202320, 'lib/libnss3.so': 1287000, 'lib/libnspr4.so': 265888 });
    // Every shared object starts with the magic number of ELF: 7F 45 4C 46 (System V ABI, gABI chapter 4).
    for (const { name, bytes } of files.filter((file) => /\.so(\.|$)/.test(file.name))) {
      expect([name, ...bytes.subarray(0, 4)]).toEqual([name, 0x7f, 0x45, 0x4c, 0x46]);
    }
  });
});

describe('the lock', () => {
  it('lets one in at a time', async () => {
    const log: string[] = [];
    const work = (name: string) => async (): Promise<void> => { log.push(`${name} in`); await pause(150); log.push(`${name} out`); };
    await Promise.all(['a', 'b', 'c'].map((name) => withLock(join(folder, 'door.lock'), work(name))));
    for (let index = 0; index < log.length; index += 2) expect(log[index + 1]).toBe(log[index]?.replace('in', 'out'));
    expect(log).toHaveLength(6);
  });

  it('opens after work that failed, and takes over from a run that was killed', async () => {
    const lock = join(folder, 'left.lock');
    await expect(withLock(lock, () => Promise.reject(new Error('no room on the disk')))).rejects.toThrow('no room on the disk');
    await mkdir(lock);
    const longAgo = new Date(Date.now() - 3_600_000);
    await utimes(lock, longAgo, longAgo);
    let done = false;
    await withLock(lock, () => { done = true; return Promise.resolve(); });
    expect(done).toBe(true);
  });
});

describe('a browser that does not start', () => {
  async function fakeBrowser(name: string, lines: string): Promise<string> {
    const path = join(folder, name);
    await writeFile(path, `#!/bin/sh\n${lines}\n`, { mode: 0o755 });
    return path;
  }
  const env = { PATH: process.env.PATH ?? '' };

  it('names the missing library', async () => {
    const path = await fakeBrowser('no-library', 'echo "$0: error while loading shared libraries: libnss3.so: cannot open shared object file" >&2; exit 127');
    await expect(launch({ path, how: 'system', args: [], env }, 10_000))
      .rejects.toThrow(`the browser ${path} (system) does not start: the system's library libnss3.so is missing`);
  });

  it('is tried three times', async () => {
    const path = await fakeBrowser('always-dies', `echo x >> ${folder}/tries; exit 1`);
    await expect(launch({ path, how: 'named', args: [], env }, 10_000)).rejects.toThrow(/does not start.*FOLDWRIGHT_BROWSER/);
    expect(await readFile(join(folder, 'tries'), 'utf8')).toBe('x\nx\nx\n');
  });

  it('is tried without a sandbox where the system allows none', async () => {
    const path = await fakeBrowser('no-sandbox', `case "$*" in *--no-sandbox*) echo without >> ${folder}/boxes;; *) echo with >> ${folder}/boxes; echo "FATAL: No usable sandbox!" >&2;; esac; exit 1`);
    await expect(launch({ path, how: 'named', args: [], env }, 10_000)).rejects.toThrow(/does not start/);
    expect((await readFile(join(folder, 'boxes'), 'utf8')).split('\n').slice(0, 2)).toEqual(['with', 'without']);
  });
});
