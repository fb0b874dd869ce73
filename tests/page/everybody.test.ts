import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openGlBrowser, type GlBrowser } from './gl-browser.ts';
import { openHand, type Hand } from './hand.ts';
import { lookUntil } from './pixels.ts';
import { servePage, type ServedPage } from './shop.ts';

const CHECKED = 'document.querySelector(".sum")?.getAttribute("aria-busy") === "false"';

let served: ServedPage;
let gl: GlBrowser;
let hand: Hand;
beforeAll(async () => {
  [served, gl] = await Promise.all([servePage(), openGlBrowser()]);
  hand = await openHand(gl.browser, served.url);
  await hand.page.waitForSelector('.pickers select');
  await hand.page.select('.pickers select', 'steps/rack/item.yaml');
  await hand.until(CHECKED);
});
afterAll(async () => {
  await hand.close();
  await gl.close();
  await served.close();
});

describe('the page for everybody', () => {
  it.each([
    { name: 'light', lang: 'en', dark: false, width: 1280 },
    { name: 'dark', lang: 'en', dark: true, width: 1280 },
    { name: 'light on a small phone', lang: 'fr', dark: false, width: 360 },
    { name: 'dark on a small phone in Arabic', lang: 'ar', dark: true, width: 360 },
  ])('has no faults that axe-core finds: $name', async ({ lang, dark, width }) => {
    const own = await openHand(gl.browser, served.url, { lang, dark, width, height: 740 });
    await own.until(CHECKED);
    expect(await own.axe()).toEqual([]);
    expect(await own.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await own.page.evaluate(() => [document.documentElement.lang, document.documentElement.dir])).toEqual([lang, lang === 'ar' ? 'rtl' : 'ltr']);
    await lookUntil(own.page, '.turnable', ({ colours }) => colours > 100);
    await own.page.goto(`${served.url}#make`);
    await own.until('document.querySelector(".lead") !== null');
    expect(await own.axe()).toEqual([]);
    expect(await own.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(own.troubles).toEqual([]);
    await own.close();
  });

  it('can be used by the keyboard alone: every control is reached and shows that it has the focus', async () => {
    await hand.page.goto(`${served.url}#change`);
    await hand.page.reload();
    await hand.until(CHECKED);
    const reached = new Set<string>();
    for (let press = 0; press < 90; press += 1) {
      await hand.page.keyboard.press('Tab');
      const { name, outline } = await hand.page.evaluate(() => {
        const element = document.activeElement;
        const style = element === null ? null : getComputedStyle(element);
        return { name: `${element?.tagName ?? ''}.${element?.className ?? ''} ${element?.getAttribute('type') ?? ''}`.trim(), outline: `${style?.outlineStyle ?? ''} ${style?.outlineWidth ?? ''}` };
      });
      if (name.startsWith('BODY')) break;
      expect([name, outline]).toEqual([name, 'solid 3px']);
      reached.add(name);
    }
    expect([...reached]).toEqual(expect.arrayContaining(['BUTTON.skip button', 'A.', 'SELECT.', 'DIV.turnable', 'INPUT. number', 'INPUT. range', 'BUTTON.finding caution button', 'SUMMARY.']));
  });

});
