import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, CDPSession, Page } from 'puppeteer';
import { SLOWEST } from '../support/waiting.ts';

export interface Point { readonly x: number; readonly y: number }

/** A guide opened from its file on a phone without a network. */
export interface Phone {
  readonly page: Page;
  /** Everything that was asked for beyond the file itself, and whatever the page complained about. */
  readonly asked: readonly string[];
  readonly told: readonly string[];
  /** Fingers along straight ways, all at once. */
  readonly drag: (...ways: readonly (readonly [from: Point, to: Point])[]) => Promise<void>;
  readonly reload: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface PhoneOptions {
  readonly width?: number;
  readonly height?: number;
  /** Run in the page before its own script. */
  readonly before?: () => void;
  readonly withoutScript?: boolean;
}

export async function openPhone(browser: Browser, html: string, { width = 360, height = 640, before, withoutScript = false }: PhoneOptions = {}): Promise<Phone> {
  const folder = mkdtempSync(join(tmpdir(), 'foldwright-guide-'));
  const file = join(folder, 'guide.html');
  writeFileSync(file, html);
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  page.setDefaultTimeout(SLOWEST);
  const asked: string[] = [];
  const told: string[] = [];
  page.on('request', (request) => { if (!request.url().startsWith(`file://${file}`)) asked.push(request.url()); });
  page.on('console', (message) => { if (message.type() === 'error') told.push(message.text()); });
  page.on('pageerror', (error) => { told.push(String(error)); });
  await page.setViewport({ width, height, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
  await page.setOfflineMode(true);
  if (withoutScript) await page.setJavaScriptEnabled(false);
  if (before !== undefined) await page.evaluateOnNewDocument(before);
  await page.goto(`file://${file}`);
  const touch = await page.createCDPSession();
  return {
    page, asked, told,
    drag: (...ways) => drag(touch, ways),
    reload: async () => { await page.reload(); },
    close: async () => {
      await context.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Phones that a test opens, to be closed after it. */
export function openedPhones(): { readonly open: typeof openPhone; readonly close: () => Promise<void> } {
  const phones: Phone[] = [];
  return {
    open: async (...how) => {
      const opened = await openPhone(...how);
      phones.push(opened);
      return opened;
    },
    close: async () => { for (const each of phones.splice(0)) await each.close(); },
  };
}

const MOVES = 8;

async function drag(touch: CDPSession, ways: readonly (readonly [from: Point, to: Point])[]): Promise<void> {
  const at = (share: number) => ways.map(([from, to], id) => ({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share, id }));
  await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let move = 1; move <= MOVES; move++) await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(move / MOVES) });
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** The page that is shown. */
export const shownPage = (page: Page): Promise<string> => page.$$eval('.page', (pages) => pages.filter((each) => each.getClientRects().length > 0).map(({ id }) => id).join(' '));

/** What can be read on the screen: the text of visible elements under a selector. */
export const readable = (page: Page, selector: string): Promise<readonly string[]> =>
  page.$$eval(selector, (elements) => elements.filter((each) => each.getClientRects().length > 0).map((each) => each.textContent ?? ''));

/** Shows a page by its address, as the overview does. */
export async function goTo(page: Page, id: string): Promise<void> {
  await page.evaluate((wanted) => { location.hash = wanted; }, id);
  await page.waitForFunction((wanted) => document.getElementById(wanted)?.classList.contains('shown'), {}, id);
}

export async function pickLanguage(page: Page, name: string | null): Promise<void> {
  await page.tap('#open-words');
  const button = await page.waitForSelector(name === null ? '[data-language=""]' : `[data-language]::-p-text(${name})`);
  await button?.tap();
  await leave(page, '#words');
}

export async function leave(page: Page, panel: string): Promise<void> {
  await page.tap(`${panel} .leave`);
  await page.waitForFunction((wanted) => document.querySelector(wanted)?.getClientRects().length === 0, {}, panel);
}

/** Shows the model, once the phone has found out that it can. */
export async function tapTurn(page: Page): Promise<void> {
  await page.waitForSelector('#turn:not([disabled])');
  await page.tap('#turn');
}
