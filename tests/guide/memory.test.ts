import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openGlBrowser, type GlBrowser } from '../page/gl-browser.ts';
import { rack } from '../support/rack.ts';
import { rackGuide } from './made.ts';
import { goTo, leave, openedPhones, pickLanguage, shownPage, tapTurn, type Phone } from './phone.ts';

let html: string;
let browser: GlBrowser;
const phones = openedPhones();
beforeAll(async () => {
  html = await rackGuide(rack, 'low');
  browser = await openGlBrowser();
});
afterEach(phones.close);
afterAll(() => browser.close());

const WRAP = 'step-wrap-side-front';
/** MB that the process which shows the guide may ever hold: half of a small phone's 512, the other half is the system's and the browser's own (ours). */
const MOST_HELD = 256;

/** The most memory that the process which shows a page has held, MB, what it shares with the browser's other processes included. */
async function mostHeld(page: Phone['page']): Promise<number> {
  const session = await page.browser().target().createCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const held = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => Number(/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1]) / 1024);
  return Math.max(...held);
}

// Only Linux lists what memory a process has held.
describe.runIf(process.platform === 'linux')('a phone with 512 MB of memory', () => {
  it('holds the guide: every page walked through, a language picked, a drawing and a model looked at closer', async () => {
    const opened = await phones.open(browser.browser, html);
    const { page, tap, told } = opened;
    await pickLanguage(opened, 'العربية');
    for (let last = ''; last !== await shownPage(page);) {
      last = await shownPage(page);
      if (await page.$eval('#next', (button) => !(button as HTMLButtonElement).disabled)) await tap('#next');
    }
    await goTo(page, WRAP);
    await tap('#closer');
    await leave(opened, '#near');
    await tapTurn(opened);
    await page.waitForSelector('#stage canvas[aria-busy="false"]');
    const held = await mostHeld(page);
    expect(told).toEqual([]);
    expect(held, 'at least a browser was measured').toBeGreaterThan(30);
    expect(held).toBeLessThan(MOST_HELD);
  });
});
