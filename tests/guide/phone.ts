import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import type { Browser, Page } from 'puppeteer';
import { expect } from 'vitest';
import { fingersOn, type Fingers } from '../support/fingers.ts';
import { afterFrames, SLOWEST } from '../support/waiting.ts';

/** A guide opened from its file on a phone without a network. */
export interface Phone extends Fingers {
  readonly page: Page;
  /** Everything that was asked for beyond the file itself, and whatever the page complained about. */
  readonly asked: readonly string[];
  readonly told: readonly string[];
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
  return {
    page, asked, told,
    ...await fingersOn(page),
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

/** The page that is shown. */
export const shownPage = (page: Page): Promise<string> => page.$$eval('.page', (pages) => pages.filter((each) => each.getClientRects().length > 0).map(({ id }) => id).join(' '));

/** What can be read on the screen: the text of visible elements under a selector. */
export const readable = (page: Page, selector: string): Promise<readonly string[]> =>
  page.$$eval(selector, (elements) => elements.filter((each) => each.getClientRects().length > 0).map((each) => each.textContent ?? ''));

/** Waits until a page is shown, and nothing else; tells which one is, if it never comes. */
export async function untilShown(page: Page, id: string): Promise<void> {
  await until(page, () => shownPage(page), id);
}

/** Looks again and again until what is read is as wanted, and tells what is read, if it never is. */
export async function until<Read>(page: Page, read: () => Promise<Read>, wanted: Read): Promise<void> {
  for (const begun = Date.now(); Date.now() - begun < SLOWEST && !isDeepStrictEqual(await read(), wanted);) await afterFrames(page);
  expect(await read()).toEqual(wanted);
}

/** Shows a page by its address, as the overview does. */
export async function goTo(page: Page, id: string): Promise<void> {
  await page.evaluate((wanted) => { location.hash = wanted; }, id);
  await untilShown(page, id);
}

export async function pickLanguage(phone: Phone, name: string | null): Promise<void> {
  await phone.tap('#open-words');
  await phone.tap(name === null ? '[data-language=""]' : `[data-language]::-p-text(${name})`);
  await leave(phone, '#words');
}

/** Closes a panel; the history of the phone takes it back a little later. */
export async function leave({ page, tap }: Phone, panel: string): Promise<void> {
  await tap(`${panel} .leave`);
  await page.waitForFunction((wanted) => document.querySelector(wanted)?.getClientRects().length === 0, {}, panel);
}

/** Shows the model, once the phone has found out that it can. */
export const tapTurn = ({ tap }: Phone): Promise<void> => tap('#turn:not([disabled])');
