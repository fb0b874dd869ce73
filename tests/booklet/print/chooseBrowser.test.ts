import { describe, expect, it } from 'vitest';
import { chooseBrowser } from '../../../src/booklet/print/index.ts';
import { MachineFault } from '../../../src/read/machine-fault.ts';
import type { Machine } from '../../../src/booklet/print/index.ts';

const LIBRARIES = ['libnss3.so', 'libnssutil3.so', 'libnspr4.so', 'libplc4.so', 'libplds4.so', 'libsoftokn3.so', 'libexpat.so.1']
  .map((name) => `/usr/lib/x86_64-linux-gnu/${name}`);

/** A computer that has just these files; its packaged browser unpacks to /cache. */
function machine(files: readonly string[], more: Partial<Machine> = {}): Machine {
  return {
    env: { PATH: '/usr/local/bin:/usr/bin', HOME: '/home/ada' },
    platform: 'linux', arch: 'x64', isRoot: false,
    isProgram: (path) => files.includes(path),
    isFile: (path) => files.includes(path),
    puppeteerPath: () => Promise.resolve('/own/chrome'),
    unpack: () => Promise.resolve({ path: '/cache/chromium', libraries: '/cache/lib', fontConfig: '/cache/fonts.conf' }),
    ...more,
  };
}

const fullDisk = (): Promise<never> => Promise.reject(new MachineFault('the disk is full'));

const ALL = ['/named/chrome', '/own/chrome', '/usr/bin/chromium', '/usr/bin/google-chrome', ...LIBRARIES];
const NAMED = { PATH: '/usr/bin', FOLDWRIGHT_BROWSER: '/named/chrome' };

describe('the choice of a browser', () => {
  it.each([
    ['the named one before all others', machine(ALL, { env: NAMED }), 'named', '/named/chrome'],
    ['puppeteer’s own when none is named', machine(ALL), 'puppeteer', '/own/chrome'],
    ['the packaged one when puppeteer names a file that is not there, whatever the system has', machine(ALL.filter((path) => path !== '/own/chrome')), 'packaged', '/cache/chromium'],
    ['the packaged one when puppeteer does not know', machine(ALL, { puppeteerPath: () => Promise.resolve(undefined) }), 'packaged', '/cache/chromium'],
    ['the system’s where the packaged one does not run', machine(['/usr/bin/google-chrome'], { platform: 'darwin' }), 'system', '/usr/bin/google-chrome'],
    ['the system’s where nothing can be unpacked', machine(['/usr/bin/google-chrome'], { unpack: fullDisk }), 'system', '/usr/bin/google-chrome'],
    ['chromium before google-chrome, wherever on PATH', machine(['/usr/local/bin/google-chrome', '/usr/bin/chromium-browser'], { arch: 'arm64' }), 'system', '/usr/bin/chromium-browser'],
  ] as const)('takes %s', async (_what, computer, how, path) => {
    expect(await chooseBrowser(computer)).toMatchObject({ how, path });
  });

  it('refuses a named browser that is not there, though others are', async () => {
    await expect(chooseBrowser(machine(ALL.slice(1), { env: NAMED })))
      .rejects.toThrow('FOLDWRIGHT_BROWSER names “/named/chrome”, which is not a program that can be run');
  });

  it('says what to do where the packaged browser cannot run', async () => {
    await expect(chooseBrowser(machine([], { arch: 'arm64' }))).rejects.toThrow(/linux arm64.*install Chromium or Chrome, or set FOLDWRIGHT_BROWSER/);
  });

  it('does not unpack anything when puppeteer has a browser', async () => {
    const unpack = (): never => { throw new Error('unpacked'); };
    expect((await chooseBrowser(machine(ALL, { unpack }))).how).toBe('puppeteer');
  });

  it('gives up the sandbox for the root user only, and never web security or the single process', async () => {
    const asRoot = await chooseBrowser(machine(ALL, { isRoot: true }));
    const asAda = await chooseBrowser(machine(ALL));
    expect(asRoot.args).toContain('--no-sandbox');
    expect(asAda.args).not.toContain('--no-sandbox');
    expect([...asRoot.args, ...asAda.args].join()).not.toMatch(/single-process|disable-web-security/);
  });

  it('lends the packaged browser its own libraries only where one is missing', async () => {
    const whole = await chooseBrowser(machine(LIBRARIES));
    const bare = await chooseBrowser(machine(LIBRARIES.filter((path) => !path.endsWith('libexpat.so.1'))));
    expect(whole.env).not.toHaveProperty('LD_LIBRARY_PATH');
    expect(bare.env.LD_LIBRARY_PATH).toBe('/cache/lib');
    const set = await chooseBrowser(machine([], { env: { PATH: '', LD_LIBRARY_PATH: '/opt/lib' } }));
    expect(set.env.LD_LIBRARY_PATH).toBe('/cache/lib:/opt/lib');
  });

  it('hides the computer’s fonts from the packaged browser and keeps the rest of the environment', async () => {
    expect((await chooseBrowser(machine([]))).env).toMatchObject({ FONTCONFIG_FILE: '/cache/fonts.conf', HOME: '/home/ada' });
  });
});
