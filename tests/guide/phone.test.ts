import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { caption } from '../../src/booklet/index.ts';
import type { Variant } from '../../src/cli/record.ts';
import { stepPageId } from '../../src/guide/pages/steps.tsx';
import { phonePages, phonePanels, phoneScreens, phoneWidths } from '../support/chosen.ts';
import { rack } from '../support/rack.ts';
import { afterFrames } from '../support/waiting.ts';
import { openGlBrowser, type GlBrowser } from '../page/gl-browser.ts';
import { difference, lookAtRest, type Look } from '../page/pixels.ts';
import { languages, rackGuide, rackVariant } from './made.ts';
import { goTo, leave, openedPhones, pickLanguage, readable, shownPage, tapTurn, untilShown, type Phone, type PhoneOptions } from './phone.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let variant: Variant;
let html: string;
let browser: GlBrowser;
const phones = openedPhones();
const phone = (options?: PhoneOptions): Promise<Phone> => phones.open(browser.browser, html, options);
beforeAll(async () => {
  variant = await rackVariant('low');
  html = await rackGuide(rack, 'low');
  browser = await openGlBrowser();
});
afterEach(phones.close);
afterAll(() => browser.close());

const WRAP = 'step-wrap-side-front';
const [LEFT, RIGHT] = [{ x: 60, y: 300 }, { x: 300, y: 300 }];
const words = (lang: string) => languages.find((each) => each.lang === lang) ?? languages[0] as (typeof languages)[0];
const captionIn = (lang: string, id: string): string => {
  const step = variant.plan.steps.find((each) => stepPageId(each) === id);
  return step === undefined ? '' : caption({ words: words(lang) }, step);
};

describe('a guide from a file, without a network', () => {
  it('asks for nothing and complains of nothing', async () => {
    const opened = await phone();
    const { page, tap, asked, told } = opened;
    for (let count = 0; count < 12; count++) await tap('#next');
    await pickLanguage(opened, 'Français');
    await tap('#closer');
    await leave(opened, '#near');
    expect(await shownPage(page)).not.toBe('start');
    expect({ asked, told }).toEqual({ asked: [], told: [] });
  });

  it('turns pages by swipes, taps and keys, and stops at both ends', async () => {
    const { page, tap, drag } = await phone();
    await drag([LEFT, RIGHT]);
    expect(await shownPage(page)).toBe('start');
    await drag([RIGHT, LEFT]);
    expect(await shownPage(page)).toBe('before');
    await drag([{ x: 180, y: 500 }, { x: 190, y: 200 }]);
    await afterFrames(page);
    expect(await shownPage(page)).toBe('before');
    await tap('#next');
    expect(await shownPage(page)).toBe('parts');
    await drag([LEFT, RIGHT]);
    expect(await shownPage(page)).toBe('before');
    await page.keyboard.press('ArrowRight');
    await untilShown(page, 'parts');
    await page.keyboard.press('ArrowRight');
    await untilShown(page, 'step-cut-tubes');
    await tap('#previous');
    expect(await shownPage(page)).toBe('parts');
    await goTo(page, 'load');
    await drag([RIGHT, LEFT]);
    await afterFrames(page);
    expect(await shownPage(page)).toBe('load');
  });

  it('walks through cautions, parts, every step, last checks and safe use in this order', async () => {
    const { page, tap } = await phone();
    const walked = [];
    for (let last = ''; last !== await shownPage(page);) {
      last = await shownPage(page);
      walked.push(last);
      if (await page.$eval('#next', (button) => !(button as HTMLButtonElement).disabled)) await tap('#next');
    }
    const steps = walked.filter((id) => id.startsWith('step-'));
    expect(steps).toEqual(variant.plan.steps.map(stepPageId));
    expect(walked.filter((id) => !id.startsWith('step-') && !id.startsWith('run-'))).toEqual(['start', 'before', 'parts', 'checks', 'load']);
    expect(walked.slice(-2)).toEqual(['checks', 'load']);
  });

  it('is enlarged by two fingers, moved by one, whole again after two taps, left by the back key of the phone', async () => {
    const { page, drag, tapTwice } = await phone();
    await goTo(page, WRAP);
    const box = await (await page.$(`#${WRAP} .drawing`))?.boundingBox();
    const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
    const shape = () => page.$eval('#stage svg', (svg) => { const { a, e, f } = new DOMMatrix(getComputedStyle(svg).transform); return { scale: a, x: e, y: f }; });
    await drag([{ x: x - 30, y }, { x: x - 120, y }], [{ x: x + 30, y }, { x: x + 120, y }]);
    const pinched = await shape();
    expect(pinched.scale).toBeCloseTo(4, 0); // 240 px between the fingers, from 60
    await drag([{ x: 180, y: 300 }, { x: 140, y: 330 }]);
    const moved = await shape();
    expect([moved.scale, moved.x - pinched.x]).toEqual([pinched.scale, expect.closeTo(-40, 0)]);
    await tapTwice({ x: 180, y: 300 });
    expect((await shape()).scale).toBe(1);
    expect(await shownPage(page)).toBe('');
    await page.goBack();
    await untilShown(page, WRAP);
  });

  it('shows words only once a language is picked, and remembers it', async () => {
    const opened = await phone();
    const { page, reload } = opened;
    await goTo(page, WRAP);
    expect(await readable(page, '.page .say')).toEqual([]);
    await pickLanguage(opened, 'Français');
    expect(await readable(page, '.caption')).toEqual([captionIn('fr', WRAP)]);
    expect(await page.$eval('html', ({ lang, dir }) => [lang, dir])).toEqual(['fr', 'ltr']);
    expect(await page.$eval('#next', (button) => button.getAttribute('aria-label'))).toBe(words('fr').t('guide.next'));
    await reload();
    expect(await readable(page, '.caption')).toEqual([captionIn('fr', WRAP)]);
    await pickLanguage(opened, null);
    expect(await readable(page, '.page .say')).toEqual([]);
    await reload();
    expect(await readable(page, '.page .say')).toEqual([]);
  });

  it('is mirrored for languages read from the right, drawings and measures as they are', async () => {
    const opened = await phone();
    const { page, drag } = opened;
    await pickLanguage(opened, 'العربية');
    const places = (await page.$$eval('#previous, #tick, #next', (buttons) => buttons.map((button) => button.getBoundingClientRect().left)));
    expect(places).toEqual([...places].sort((a, b) => b - a));
    await drag([LEFT, RIGHT]);
    expect(await shownPage(page)).toBe('before');
    await page.keyboard.press('ArrowLeft');
    await untilShown(page, 'parts');
    expect((await readable(page, '.parts p'))[1]).toBe('×4 800\u00a0mm');
    expect(new Set(await page.$$eval('.drawing svg, .small svg', (all) => all.map((svg) => getComputedStyle(svg).direction)))).toEqual(new Set(['ltr']));
    await goTo(page, WRAP);
    expect(await readable(page, '.caption')).toEqual([captionIn('ar', WRAP)]);
    const [numeral = 0, corner = 0] = await page.$$eval(`#${WRAP} .numeral, #open-all`, (all) => all.map((each) => each.getBoundingClientRect().left).reverse());
    expect(numeral).toBeGreaterThan(corner);
  });

  it('remembers the step and what is done, and counts what is done several times', async () => {
    const { page, tap, reload } = await phone();
    await goTo(page, 'step-cut-tubes');
    await tap('#tick');
    await goTo(page, WRAP);
    await tap('#tick');
    expect(await readable(page, '.tally')).toEqual(['1/2']);
    await reload();
    expect(await shownPage(page)).toBe(WRAP);
    const state = () => page.$eval('#tick', (button) => [button.getAttribute('aria-pressed'), button.querySelector('.tally')?.textContent]);
    expect(await state()).toEqual(['false', '1/2']);
    await tap('#tick');
    expect(await state()).toEqual(['true', '2/2']);
    await tap('#open-all');
    expect(await page.$$eval('#all .full', (entries) => entries.map((entry) => entry.getAttribute('href')))).toEqual(['#step-cut-tubes', `#${WRAP}`]);
    await tap('#all [href="#step-cut-tubes"]');
    await untilShown(page, 'step-cut-tubes');
    await tap('#tick');
    expect(await state()).toEqual(['false', '']);
  });

  it('opens at the remembered step when the file is opened anew, without its address', async () => {
    const opened = await phone();
    const { page } = opened;
    await goTo(page, WRAP);
    await page.goto('about:blank');
    await page.goBack();
    await page.evaluate(() => { history.replaceState(null, '', location.pathname); });
    await page.reload();
    expect(await shownPage(page)).toBe(WRAP);
  });

  it('works where the phone lets a file remember nothing', async () => {
    const { page, tap, reload, told } = await phone({ before: () => { Object.defineProperty(window, 'localStorage', { get: () => { throw new DOMException('denied', 'SecurityError'); } }); } });
    await goTo(page, WRAP);
    await tap('#tick');
    expect(await readable(page, '.tally')).toEqual(['1/2']);
    await reload();
    expect(await shownPage(page)).toBe(WRAP);
    expect(await readable(page, '.tally')).toEqual(['0/2']);
    expect(told).toEqual([]);
  });

  it('leads back to the first step of a run until all its pieces are made', async () => {
    const { page, tap } = await phone();
    const last = variant.plan.steps.findLast(({ run }) => run !== null);
    const first = variant.plan.steps.find(({ action }) => action === 'lay-frame');
    if (last === undefined || first === undefined) throw new Error('no deck is wrapped');
    await goTo(page, stepPageId(last));
    await tap(`#${stepPageId(last)} .again`);
    await untilShown(page, stepPageId(first));
  });

  it('reads from top to bottom where there is no script', async () => {
    const { page, asked } = await phone({ withoutScript: true });
    const ids = await shownPage(page);
    expect(ids.split(' ').length).toBe(variant.plan.steps.length + 5 + changesOfRun(variant.plan));
    expect((await readable(page, 'button')).length).toBe(0);
    expect(await readable(page, '.say')).toEqual([]);
    expect((await page.$$('#all a')).length).toBe(ids.split(' ').length);
    expect(asked).toEqual([]);
  });
});

describe('the model', () => {
  /** How the model looks when it is at rest, and as is wanted. */
  const still = async (page: Phone['page'], wanted: (now: Look) => boolean = () => true): Promise<Look> => {
    await page.waitForSelector('#stage canvas[aria-busy="false"]');
    return lookAtRest(page, '#stage', wanted);
  };
  /** Share of the pixels that are as dark as a line, and as the tint of new parts. */
  const shares = ({ data }: Look): { readonly lines: number; readonly tint: number } => {
    let [lines, tint] = [0, 0];
    for (let at = 0; at < data.length; at += 4) {
      const [red = 0, , blue = 0] = data.subarray(at, at + 3);
      if (blue < 90) lines += 4 / data.length;
      else if (blue - red > 12) tint += 4 / data.length;
    }
    return { lines, tint };
  };
  const isAsDrawn = (look: Look): boolean => {
    const { lines, tint } = shares(look);
    return lines > 0.005 && lines < 0.2 && tint > 0.003 && tint < 0.2;
  };

  it('is drawn in lines with its new part tinted, and turned by a finger', async () => {
    const opened = await phone();
    const { page, drag, tapTwice, told } = opened;
    await goTo(page, WRAP);
    await tapTurn(opened);
    const before = await still(page, isAsDrawn);
    await drag([{ x: 100, y: 300 }, { x: 260, y: 260 }]);
    await still(page, (now) => difference(before, now) > 0);
    await tapTwice({ x: 180, y: 300 });
    await still(page, (now) => difference(before, now) === 0);
    expect(told).toEqual([]);
  });

  it('is not offered where there is no WebGL: the drawing is', async () => {
    const { page, tap, told } = await phone({ before: () => { HTMLCanvasElement.prototype.getContext = () => { Reflect.set(window, 'asked', true); return null; }; } });
    await goTo(page, WRAP);
    await page.waitForFunction(() => Reflect.get(window, 'asked') === true);
    expect(await page.$eval('#turn', (button) => getComputedStyle(button).visibility)).toBe('hidden');
    await tap('#closer');
    expect(await page.$$eval('#stage svg', (all) => all.length)).toBe(1);
    expect(told).toEqual([]);
  });

  it('is not offered for work on the bench, which is drawn flat', async () => {
    const { page } = await phone();
    await goTo(page, 'step-mark-creases');
    expect(await page.$eval('#turn', (button) => getComputedStyle(button).visibility)).toBe('hidden');
  });
});

describe('for every hand and eye', () => {
  const faults = async (page: Phone['page']): Promise<readonly string[]> => {
    if (!await page.evaluate('"axe" in globalThis')) await page.evaluate(axe);
    const { violations } = await page.evaluate("axe.run({ resultTypes: ['violations'] })") as AxeResults;
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html: shown }) => shown.slice(0, 80)).join(' | ')}`);
  };

  it.each(['light', 'dark'])('has no fault that axe-core finds, %s', async (look) => {
    const opened = await phone();
    const { page, tap } = opened;
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: look }, { name: 'prefers-reduced-motion', value: 'reduce' }]);
    await page.reload();
    for (const worded of [false, true]) {
      if (worded) await pickLanguage(opened, 'English');
      for (const { id } of phonePages.filter((row) => row.look === look && row.worded === worded)) {
        await goTo(page, id);
        expect([id, worded, await faults(page)]).toEqual([id, worded, []]);
      }
      await goTo(page, WRAP);
      for (const { button, panel } of phonePanels.filter((row) => row.look === look && row.worded === worded)) {
        await (button === '#turn' ? tapTurn(opened) : tap(button));
        expect([panel, worded, await faults(page)]).toEqual([panel, worded, []]);
        await leave(opened, panel);
      }
    }
  });

  it('tells those who hear it what a page shows and what is done', async () => {
    const { page, tap } = await phone();
    await goTo(page, WRAP);
    const spoken = () => page.$eval('#spoken', (element) => element.textContent);
    expect(await spoken()).toContain(captionIn('en', WRAP));
    await tap('#tick');
    expect(await spoken()).toBe(`${words('en').t('guide.done')} 1/2`);
  });

  // WCAG 2.2, 2.5.5: 44 CSS px (M); 48 is ours, for gloved and work-worn hands.
  it('has targets of 48 px or more', async () => {
    const opened = await phone({ width: 320, height: 568 });
    const { page, tap } = opened;
    const small = () => page.$$eval('button, a', (all) => all.filter((each) => each.getClientRects().length > 0 && getComputedStyle(each).visibility === 'visible')
      .map((each) => ({ name: each.id || each.className || each.getAttribute('aria-label'), width: each.getBoundingClientRect().width, height: each.getBoundingClientRect().height }))
      .filter(({ width, height }) => width < 48 || height < 48));
    for (const id of ['start', WRAP, 'step-turn-item']) {
      await goTo(page, id);
      expect(await small()).toEqual([]);
    }
    for (const [button, panel] of [['#open-all', '#all'], ['#open-words', '#words'], ['#turn', '#near']] as const) {
      await (button === '#turn' ? tapTurn(opened) : tap(button));
      expect([panel, await small()]).toEqual([panel, []]);
      await leave(opened, panel);
    }
  });

  it.each(phoneScreens)('sticks out of no side of a screen of %s × %s px, in any language and the largest size', async (width, height) => {
    const opened = await phone({ width, height });
    const { page, tap } = opened;
    const wide = () => page.evaluate(() => [...document.querySelectorAll('.page')].flatMap(({ id }) => {
      location.hash = id;
      document.querySelectorAll('.page').forEach((other) => { other.classList.toggle('shown', other.id === id); });
      const frame = document.querySelector('#pages') as HTMLElement;
      return frame.scrollWidth > frame.clientWidth || document.documentElement.scrollWidth > innerWidth ? [`${id} ${frame.scrollWidth}`] : [];
    }));
    expect(await wide()).toEqual([]);
    const tried = phoneWidths.filter((row) => row.width === width).map(({ lang }) => lang);
    for (const name of languages.filter(({ lang }) => tried.includes(lang)).map(({ about }) => about.name)) {
      await pickLanguage(opened, name);
      expect([name, await wide()]).toEqual([name, []]);
    }
    await tap('#open-words');
    for (let press = 0; press < 4; press++) await tap('#larger-words');
    expect(await page.$eval('#words', (panel) => panel.scrollWidth - panel.clientWidth)).toBe(0);
    await leave(opened, '#words');
    expect(await wide()).toEqual([]);
    await tap('#open-all');
    expect(await page.$eval('#all', (panel) => panel.scrollWidth - panel.clientWidth)).toBe(0);
  });
});

/** How often a run begins: each beginning has a page of its own. */
function changesOfRun({ steps }: typeof variant.plan): number {
  return steps.filter(({ run }, index) => run !== null && run !== steps[index - 1]?.run).length;
}
