import { fork, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'puppeteer';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { chooseBrowser } from '../../../src/booklet/print/chooseBrowser.ts';
import { openPress, type Press } from '../../../src/booklet/print/press.ts';
import { newProfile, sweepProfiles } from '../../../src/booklet/print/profiles.ts';
import { browsersIn } from '../../support/browsers.ts';
import { SLOWEST } from '../../support/waiting.ts';

const browserOf = (tab: Page): number => tab.browser().process()?.pid ?? 0;

let press: Press | null = null;
afterEach(async () => { await press?.close(); press = null; });

const opened = async (timeout: number): Promise<Press> => {
  press = await openPress(await chooseBrowser(), ['en'], timeout);
  return press;
};

/** Does something to the browser that works first; gives the browsers that took part. */
async function twice(timeout: number, spoil: (tab: Page) => unknown): Promise<readonly number[]> {
  const asked: number[] = [];
  const answer = await (await opened(timeout)).run(async (tab) => {
    asked.push(browserOf(tab));
    if (asked.length === 1) await spoil(tab);
    return tab.evaluate('6 * 7');
  });
  expect(answer).toBe(42);
  return asked;
}

describe('a press', () => {
  it('replaces a browser that is killed while it works, and does the work again', async () => {
    const [first, second, ...more] = await twice(SLOWEST, (tab) => { process.kill(browserOf(tab), 'SIGKILL'); });
    expect(second).not.toBe(first);
    expect(more).toEqual([]);
  });

  it('replaces a browser whose tab crashes', async () => {
    expect(await twice(SLOWEST, (tab) => tab.goto('chrome://crash').catch(() => undefined))).toHaveLength(2);
  });

  it('replaces a browser that hangs, and ends it', async () => {
    const [first = 0, second] = await twice(15_000, (tab) => { process.kill(browserOf(tab), 'SIGSTOP'); });
    expect(second).not.toBe(first);
    expect(() => process.kill(first, 0)).toThrow('ESRCH');
  });

  it('gives up on work that kills every browser, as the machine\'s fault', async () => {
    const work = (await opened(SLOWEST)).run(async (tab) => {
      process.kill(browserOf(tab), 'SIGKILL');
      return tab.evaluate('1');
    });
    await expect(work).rejects.toThrow(/the browser .* was lost 3 times over one work: .*; would help: /);
    // The last one is dead, and a new work begins another.
    expect(await press?.run((tab) => tab.evaluate('2'))).toBe(2);
  });

  it('passes on what went wrong in the work itself', async () => {
    await expect((await opened(SLOWEST)).run((tab) => tab.evaluate('no.such.thing'))).rejects.toThrow(/no is not defined/);
  });
});

const home = mkdtempSync(join(tmpdir(), 'foldwright-profiles-'));
afterAll(() => { rmSync(home, { recursive: true, force: true }); });

describe('profiles', () => {
  it('of processes that are gone are swept, those of the living stay', () => {
    mkdirSync(join(home, '999999999', 'profile-x'), { recursive: true });
    const profile = newProfile(home);
    expect(readdirSync(home)).toEqual([String(process.pid)]);
    sweepProfiles(home);
    expect(existsSync(profile.path)).toBe(true);
    profile.remove();
    expect(readdirSync(home)).toEqual([]);
  });
});

// Only Linux lists the commands of processes where a test can read them.
describe.runIf(process.platform === 'linux')('a process that prints and is killed', () => {
  const holder = fileURLToPath(new URL('./hold-browser.ts', import.meta.url));

  /** Waits until it holds its browser. @throws when it ends before. */
  const holding = async (temporary: string): Promise<ChildProcess> => {
    const child = fork(holder, { execArgv: ['--import', 'tsx'], env: { ...process.env, TMPDIR: temporary } });
    await Promise.race([once(child, 'message'), once(child, 'exit').then(([code]) => { throw new Error(`it ended by itself: ${String(code)}`); })]);
    return child;
  };

  const killed = async (stopped: boolean): Promise<{ readonly temporary: string; readonly browsers: readonly number[] }> => {
    const temporary = mkdtempSync(join(home, 'tmp-'));
    const child = await holding(temporary);
    const browsers = browsersIn(temporary);
    if (stopped) for (const browser of browsers) process.kill(browser, 'SIGSTOP');
    child.kill('SIGKILL');
    await once(child, 'exit');
    return { temporary, browsers };
  };

  it('takes its browser with it', async () => {
    const { temporary, browsers } = await killed(false);
    expect(browsers).toHaveLength(1);
    await expect.poll(() => browsersIn(temporary), { timeout: SLOWEST }).toEqual([]);
  });

  it('leaves a browser that hangs, and a profile, to the next start', async () => {
    const { temporary, browsers } = await killed(true);
    expect(browsersIn(temporary)).toEqual(browsers);
    const child = await holding(temporary);
    await expect.poll(() => browsersIn(temporary).filter((id) => browsers.includes(id)), { timeout: SLOWEST }).toEqual([]);
    child.send('end');
    await once(child, 'exit');
    expect(readdirSync(temporary, { recursive: true }).filter((path) => String(path).includes('profile-'))).toEqual([]);
  });
});
