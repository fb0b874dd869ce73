import type { Page } from 'puppeteer';

/**
 * The longest wait for something that will come, ms: so long that only what never comes exceeds it, on a machine however
 * slow and busy. Tests wait for what comes, not for time to pass.
 */
export const SLOWEST = 500_000;

/** Ends when the page has worked through what it had before it and has been drawn twice: what was to follow from that, has. */
export async function afterFrames(page: Page): Promise<void> {
  await page.evaluate(() => new Promise<void>((resolve) => { requestAnimationFrame(() => { requestAnimationFrame(() => { resolve(); }); }); }));
}
