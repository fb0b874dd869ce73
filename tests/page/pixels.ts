import type { Page } from 'puppeteer';
import { PNG } from 'pngjs';

/** What a part of the page looks like. */
export interface Look {
  readonly width: number;
  readonly height: number;
  /** Share of the pixels that are not of the commonest colour. */
  readonly drawn: number;
  readonly colours: number;
  readonly data: Buffer;
}

export async function lookAt(page: Page, selector: string): Promise<Look> {
  const element = await page.$(selector);
  if (element === null) throw new Error(`nothing at ${selector}`);
  // Beyond the window the browser would make the window larger for a moment, and the page would hear of it.
  const { width, height, data } = PNG.sync.read(Buffer.from(await element.screenshot({ captureBeyondViewport: false })));
  const counts = new Map<number, number>();
  for (let at = 0; at < data.length; at += 4) {
    const colour = data.readUInt32BE(at);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return { width, height, drawn: 1 - Math.max(...counts.values()) / (width * height), colours: counts.size, data };
}

/** How often is looked before something is taken never to come. */
const MOST_LOOKS = 2000;

/** Looks again and again until what is seen is as wanted, by itself and against the look before it. */
export async function lookUntil(page: Page, selector: string, wanted: (now: Look, before: Look) => boolean): Promise<Look> {
  let before = await lookAt(page, selector);
  for (let look = 1; look < MOST_LOOKS; look += 1) {
    const now = await lookAt(page, selector);
    if (wanted(now, before)) return now;
    before = now;
  }
  throw new Error(`${selector} never looks as wanted`);
}

/** How a part looks that has come to rest, and as is wanted. */
export const lookAtRest = (page: Page, selector: string, wanted: (now: Look) => boolean = () => true): Promise<Look> =>
  lookUntil(page, selector, (now, before) => wanted(now) && difference(before, now) === 0);

/** Share of the pixels that differ. */
export function difference(one: Look, other: Look): number {
  if (one.width !== other.width || one.height !== other.height) return 1;
  let differing = 0;
  for (let at = 0; at < one.data.length; at += 4) {
    if (one.data.readUInt32BE(at) !== other.data.readUInt32BE(at)) differing += 1;
  }
  return differing / (one.width * one.height);
}
