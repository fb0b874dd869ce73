import { execFileSync } from 'node:child_process';
import { watch } from 'node:fs';
import { mkdir, mkdtemp, readFile, readdir, rm, utimes, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { brotliDecompressSync } from 'node:zlib';
import puppeteer from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { launch } from '../../../src/booklet/print/launch.ts';
import { withLock } from '../../../src/booklet/print/lock.ts';
import { readTar } from '../../../src/booklet/print/readTar.ts';
import { unpackBrowser } from '../../../src/booklet/print/unpackBrowser.ts';
import { SLOWEST } from '../../support/waiting.ts';

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

describe('an unpacking that was killed', () => {
  // 300 MB each time, which nobody would ever find.
  it('is swept by the next one; what others that live unpack stays', async () => {
    const env = { XDG_CACHE_HOME: join(folder, 'again') };
    const home = join(folder, 'again/foldwright');
    for (const id of [999_999_999, process.ppid]) await mkdir(join(home, `chromium-147.0.0.${id}/lib`), { recursive: true });
    await unpackBrowser(env);
    expect((await readdir(home)).sort()).toEqual(['chromium-147.0.0', `chromium-147.0.0.${process.ppid}`]);
  });

  it('that another overtakes is no fault: the one that is there first is taken', async () => {
    const env = { XDG_CACHE_HOME: join(folder, 'overtaken') };
    const home = join(folder, 'overtaken/foldwright');
    const unpacked = join(home, 'chromium-147.0.0');
    await mkdir(home, { recursive: true });
    const seen = watch(home);
    const works = new Promise<void>((begun) => { seen.on('change', (_, name) => { if (String(name).endsWith(`.${process.pid}`)) begun(); }); });
    const working = unpackBrowser(env);
    await works;
    seen.close();
    // Once it works, the other's copy stands in its place.
    await mkdir(unpacked);
    await writeFile(join(unpacked, 'chromium'), 'first');
    expect((await working).path).toBe(join(unpacked, 'chromium'));
    expect(await readFile(join(unpacked, 'chromium'), 'utf8')).toBe('first');
    expect(await readdir(home)).toEqual(['chromium-147.0.0']);
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
    const tries = { a: 0, b: 0, c: 0 };
    const names = ['a', 'b', 'c'] as const;
    let waiting: readonly string[] = names;
    const entered = async (name: (typeof names)[number]): Promise<void> => {
      log.push(`${name} in`);
      waiting = waiting.filter((other) => other !== name);
      // Nobody leaves before all who wait have tried three times more in vain.
      const before = { ...tries };
      while (names.some((other) => waiting.includes(other) && tries[other] < before[other] + 3)) await turn();
      log.push(`${name} out`);
    };
    await Promise.all(names.map((name) => withLock(join(folder, 'door.lock'), () => entered(name), () => { tries[name] += 1; return turn(); })));
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

  it('says what to delete where one that was left cannot be taken away', async () => {
    const lock = join(folder, 'full.lock');
    await mkdir(join(lock, 'something'), { recursive: true });
    const longAgo = new Date(Date.now() - 3_600_000);
    await utimes(lock, longAgo, longAgo);
    await expect(withLock(lock, () => Promise.resolve())).rejects.toThrow(`${lock}: left by a run that was killed, and cannot be taken away (ENOTEMPTY); would help: to delete it`);
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
    await expect(launch({ path, how: 'system', args: [], env }, SLOWEST))
      .rejects.toThrow(`the browser ${path} (system) does not start: the system's library libnss3.so is missing`);
  });

  it('is tried three times', async () => {
    const path = await fakeBrowser('always-dies', `echo x >> ${folder}/tries; exit 1`);
    await expect(launch({ path, how: 'named', args: [], env }, SLOWEST)).rejects.toThrow(/does not start.*FOLDWRIGHT_BROWSER/);
    expect(await readFile(join(folder, 'tries'), 'utf8')).toBe('x\nx\nx\n');
  });

  it('may take longer with every try, for it may be the machine that is slow', async () => {
    const starts = vi.spyOn(puppeteer, 'launch').mockRejectedValue(new Error('it did not answer'));
    try {
      await expect(launch({ path: '/bin/false', how: 'named', args: [], env }, 100)).rejects.toThrow(/does not start: it did not answer/);
      expect(starts.mock.calls.map(([options]) => [options?.timeout, options?.protocolTimeout])).toEqual([[100, 100], [200, 200], [400, 400]]);
    } finally {
      starts.mockRestore();
    }
  });

  it('is tried without a sandbox where the system allows none', async () => {
    const path = await fakeBrowser('no-sandbox', `case "$*" in *--no-sandbox*) echo without >> ${folder}/boxes;; *) echo with >> ${folder}/boxes; echo "FATAL: No usable sandbox!" >&2;; esac; exit 1`);
    await expect(launch({ path, how: 'named', args: [], env }, SLOWEST)).rejects.toThrow(/does not start/);
    expect((await readFile(join(folder, 'boxes'), 'utf8')).split('\n').slice(0, 2)).toEqual(['with', 'without']);
  });
});
