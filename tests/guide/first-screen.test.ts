import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Variant } from '../../src/cli/record.ts';
import { stepPageId } from '../../src/guide/pages/steps.tsx';
import { openGlBrowser, type GlBrowser } from '../page/gl-browser.ts';
import { guideOf, languages, rackVariant } from './made.ts';
import { goTo, openedPhones, pickLanguage, readable, type Phone, type PhoneOptions } from './phone.ts';

let variant: Variant;
let html: string;
let browser: GlBrowser;
const phones = openedPhones();
const phone = (options?: PhoneOptions): Promise<Phone> => phones.open(browser.browser, html, options);
beforeAll(async () => {
  variant = await rackVariant('low');
  html = await guideOf(variant, languages.filter(({ lang }) => lang === 'en'));
  browser = await openGlBrowser();
});
afterEach(phones.close);
afterAll(() => browser.close());

const WRAP = 'step-wrap-side-front';

describe('the first screen of a page', () => {
  it('keeps what two fingers hold under them, from the page into the closer view', async () => {
    const { page, drag } = await phone();
    await goTo(page, WRAP);
    const box = await (await page.$(`#${WRAP} .drawing svg`))?.boundingBox();
    const held = { x: (box?.x ?? 0) + (box?.width ?? 0) * 0.7, y: (box?.y ?? 0) + (box?.height ?? 0) * 0.3 };
    /** Where of the drawing's own paper a place of the screen is. */
    const placeIn = (selector: string) => page.$eval(selector, (svg, { x, y }) => {
      const at = new DOMPoint(x, y).matrixTransform((svg as SVGSVGElement).getScreenCTM()?.inverse());
      return [at.x, at.y];
    }, held);
    const before = await placeIn(`#${WRAP} .drawing svg`);
    await drag([{ x: held.x - 25, y: held.y }, { x: held.x - 75, y: held.y }], [{ x: held.x + 25, y: held.y }, { x: held.x + 75, y: held.y }]);
    const after = await placeIn('#stage svg');
    expect(after).toEqual(before.map((each) => expect.closeTo(each, 0)));
  });

  it.each([{ width: 360, height: 504 }, { width: 640, height: 360 }])('shows the safety signs of every step on the first screen, with the picture: $width × $height', async ({ width, height }) => {
    const opened = await phone({ width, height });
    const { page } = opened;
    await pickLanguage(opened, 'English');
    for (const step of variant.plan.steps) {
      await goTo(page, stepPageId(step));
      const seen = await page.$eval(`#${stepPageId(step)}`, (shown) => {
        const foot = document.querySelector('.foot')?.getBoundingClientRect();
        const below = foot !== undefined && foot.top > 0 ? foot.top : window.innerHeight;
        const corner = document.querySelector('.corner')?.getBoundingClientRect();
        const signs = [...shown.querySelectorAll('.signed .mark')].map((mark) => mark.getBoundingClientRect());
        return {
          signs: signs.length,
          whole: signs.filter((sign) => sign.top >= 0 && sign.bottom <= below && !(corner !== undefined && sign.top < corner.bottom && sign.right > corner.left)).length,
          picture: below - (shown.querySelector('.drawing svg')?.getBoundingClientRect().top ?? 0),
        };
      });
      expect([step.key, seen.signs, seen.whole]).toEqual([step.key, step.cautions.length, step.cautions.length]);
      expect([step.key, seen.picture > 100]).toEqual([step.key, true]);
    }
  });

  it('tells on its first page what it may carry and for whom it is, and on every page how far it is', async () => {
    const opened = await phone();
    const { page } = opened;
    await pickLanguage(opened, 'English');
    expect(await readable(page, '#start .told .say')).toEqual([expect.stringContaining('kg'), 'For adults. Not for children.']);
    const pages = (await page.$$('.page')).length;
    expect(await readable(page, '.pages-of')).toEqual([`1 / ${pages}`]);
    await goTo(page, WRAP);
    const number = variant.plan.steps.find((each) => stepPageId(each) === WRAP)?.number ?? 0;
    expect(await readable(page, `#${WRAP} .numeral`)).toEqual([`${number} / ${variant.plan.steps.length}`]);
    expect(await readable(page, `#${WRAP} .round b`)).toEqual(['×2', `${number}–${number + 2}`]);
    expect(await page.$eval(`#${WRAP} .round .mark`, (mark) => mark.getAttribute('aria-label'))).toMatch(/\S/);
    expect((await readable(page, '#tick .say')).join()).toBe('Done');
  });
});
