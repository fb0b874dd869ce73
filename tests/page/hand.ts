import axe from 'axe-core';
import type { Browser, Page } from 'puppeteer';
import { SLOWEST } from '../support/waiting.ts';

/** A page as a person uses it, in English unless told otherwise. */
export interface Hand {
  readonly page: Page;
  /** What went wrong in the page: errors of its scripts and requests that failed. */
  readonly troubles: readonly string[];
  text(selector: string): Promise<string>;
  /** Texts of all such elements. */
  texts(selector: string): Promise<readonly string[]>;
  /** Texts of the cells of a table's rows. */
  rows(selector: string): Promise<readonly (readonly string[])[]>;
  /** Puts a value into a field as if it were typed or slid there. */
  put(selector: string, value: string): Promise<void>;
  choose(selector: string, value: string): Promise<void>;
  /** Waits until an expression is true in the page. */
  until(what: string): Promise<void>;
  axe(): Promise<readonly string[]>;
  close(): Promise<void>;
}

interface Wish {
  readonly lang?: string;
  readonly dark?: boolean;
  readonly width?: number;
  readonly height?: number;
}

export async function openHand(browser: Browser, url: string, { lang = 'en', dark = false, width = 1280, height = 800 }: Wish = {}): Promise<Hand> {
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  page.setDefaultTimeout(SLOWEST);
  const troubles: string[] = [];
  page.on('pageerror', (error) => { troubles.push(String(error)); });
  // The page hangs up by itself when the last news have come, and asks in vain whether the program lives when it is left.
  page.on('requestfailed', (request) => { if (!/\/(news|alive)$/.test(request.url())) troubles.push(`${request.url()} ${request.failure()?.errorText ?? ''}`); });
  page.on('console', (message) => { if (message.type() === 'error') troubles.push(message.text()); });
  await page.setViewport({ width, height });
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }, { name: 'prefers-reduced-motion', value: 'reduce' }]);
  // Compilers that keep function names wrap functions in a call of `__name`.
  await page.evaluateOnNewDocument(`globalThis.__name = (named) => named; localStorage.setItem('foldwright.language', '${lang}')`);
  const broken = new Promise<never>((_, reject) => { page.once('pageerror', reject); });
  await page.goto(url, { waitUntil: 'load' });
  await Promise.race([page.waitForSelector('main#content'), broken]);
  return {
    page, troubles,
    text: async (selector) => plain(await page.$eval(selector, (element) => element.textContent)),
    texts: async (selector) => (await page.$$eval(selector, (elements) => elements.map((element) => element.textContent))).map(plain),
    rows: async (selector) => (await page.$$eval(selector, (rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)))).map((row) => row.map(plain)),
    put: (selector, value) => page.$eval(selector, putValue, value),
    choose: async (selector, value) => { await page.select(selector, value); },
    until: async (what) => { await page.waitForFunction(what, { polling: 50 }); },
    axe: async () => {
      await page.evaluate(axe.source);
      return page.evaluate(async () => {
        const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] });
        return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target, failureSummary }) => `${target.join(' ')} ${failureSummary ?? ''}`).join(' | ')}`);
      });
    },
    close: async () => { await context.close(); },
  };
}

/** Without the marks of direction (UAX #9). */
const plain = (text: string): string => text.replace(/[\u2066-\u2069]/g, '').replace(/\s+/g, ' ').trim();

/** React listens to its own setter; the browser's is called in its place. Runs in the page. */
function putValue(element: Element, value: string): void {
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(element, value);
  element.dispatchEvent(new Event('input', { bubbles: true }));
}
