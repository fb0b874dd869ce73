import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openGlBrowser, type GlBrowser } from './gl-browser.ts';
import { openHand, type Hand } from './hand.ts';
import { difference, lookAtRest, lookUntil, type Look } from './pixels.ts';
import { languagesIn } from '../../src/booklet/index.ts';
import { localeFiles } from '../../src/cli/files.ts';
import { workshopWithGantry } from '../cli/gantry.ts';
import { newWorkshop } from '../cli/workshop.ts';
import { servePage, type ServedPage } from './shop.ts';

const RACK = 'steps/rack/item.yaml';
const WIDTH = '.measure:first-child input[type=number]';
const CHECKED = 'document.querySelector(".sum")?.getAttribute("aria-busy") === "false"';
const PLANNED = 'document.querySelector(".walk")?.getAttribute("aria-busy") === "false"';

/** Moves of a hand after which models are taken never to follow it. */
const MOST_MOVES = 20_000;

let served: ServedPage;
let gl: GlBrowser;
let hand: Hand;
/** The command's own picture of a step of the narrower rack, drawn meanwhile. */
let narrow: Promise<string>;
beforeAll(async () => {
  narrow = narrowPicture();
  [served, gl] = await Promise.all([servePage([], workshopWithGantry()), openGlBrowser()]);
  hand = await openHand(gl.browser, served.url);
  await hand.page.waitForSelector('.pickers select');
  await hand.page.select('.pickers select', RACK);
  await hand.until(CHECKED);
});
afterAll(async () => {
  await hand.close();
  await gl.close();
  await served.close();
});

async function narrowPicture(): Promise<string> {
  const shop = newWorkshop();
  shop.change(RACK, '  standard:\n    width: 1000 mm', '  standard:\n    width: 900 mm');
  await shop.run(['draw', 'rack', '--step', '22', '--out', 'narrow.svg']);
  const svg = shop.read('narrow.svg').toString().trim();
  shop.close();
  return svg;
}

/** The lettered lengths as the table has them: letter, name, mm. */
const lengths = async (): Promise<Readonly<Record<string, number>>> =>
  Object.fromEntries((await hand.rows('section:nth-of-type(3) tbody tr')).map(([letter = '', , length]) => [letter, Number(length)]));

const patternNow = (): Promise<string> => hand.page.$eval('section:nth-of-type(5) .paper', (element) => element.innerHTML);
/** The longer side of the blank, mm. */
const blankNow = async (): Promise<number> => Number(/Blank: ([\d.]+)/.exec(await hand.text('.blank'))?.[1]);
/** Whether lengths are shown that the file does not have. */
const CHANGED = 'document.querySelectorAll(".figures .now.changed").length > 0';

describe('the side that changes an item', () => {
  let before: Look;

  it('draws the model in three dimensions', async () => {
    before = await lookAtRest(hand.page, '.turnable', ({ drawn, colours }) => drawn > 0.05 && colours > 100);
    expect(await hand.texts('.labels .letter')).toEqual(Object.entries(await lengths()).map(([letter, length]) => `${letter} ${length}`));
    expect(Object.keys(await lengths())).toEqual(['P', 'Q', 'R', 'S', 'T']);
  });

  it('turns the model by keys, by buttons and by the pointer', async () => {
    await hand.page.focus('.turnable');
    await hand.page.keyboard.press('ArrowLeft');
    await lookUntil(hand.page, '.turnable', (now) => difference(before, now) > 0.02);
    await hand.page.keyboard.press('Home');
    await hand.page.evaluate(() => { (document.activeElement as HTMLElement).blur(); });
    await lookUntil(hand.page, '.turnable', (now) => difference(before, now) < 0.005);
    const box = await (await hand.page.$('.turnable'))?.boundingBox();
    const [x, y] = [(box?.x ?? 0) + 200, (box?.y ?? 0) + 200];
    await hand.page.mouse.move(x, y);
    await hand.page.mouse.down();
    await hand.page.mouse.move(x + 120, y, { steps: 6 });
    await hand.page.mouse.up();
    await lookUntil(hand.page, '.turnable', (now) => difference(before, now) > 0.02);
    await hand.page.click('.eyes button');
  });

  it('shows every finding of the command, with numbers on the parts of those that do not hold', async () => {
    const { out } = await served.shop.run(['check', 'rack', '--size', 'standard']);
    const count = (verdict: string): number => out.split('\n').filter((line) => line.startsWith(`  ${verdict} `)).length;
    expect(await hand.text('.sum')).toBe(`Fails: ${count('fail')} · cautions: ${count('caution')} · passes: ${count('pass')}`);
    expect(await hand.page.$$eval('.finding', (all) => all.length)).toBe(count('fail') + count('caution') + count('pass'));
    expect((await hand.texts('.labels .caution')).join(' · ').split(' · ').map(Number).sort((a, b) => a - b)).toEqual(Array.from({ length: count('caution') }, (_, index) => index + 1));
    const plain = await lookAtRest(hand.page, '.turnable');
    await hand.page.click('.finding.caution');
    await lookUntil(hand.page, '.turnable', (now) => difference(plain, now) > 0.003);
    expect(await hand.page.$eval('.finding.caution', (element) => element.getAttribute('aria-pressed'))).toBe('true');
    await hand.page.click('.finding.caution');
  });

  it('changes dimensions, cut lengths, flat pattern and model with a measure, as the command would', async () => {
    const [was, blank, pattern, look] = [await lengths(), await blankNow(), await patternNow(), await lookAtRest(hand.page, '.turnable')];
    await hand.put(WIDTH, '900');
    await hand.until(CHANGED);
    await hand.until(CHECKED);
    expect(await blankNow()).toBeCloseTo(blank - 100, 6);
    const now = await lengths();
    expect(now['P']).toBeCloseTo((was['P'] ?? 0) - 100, 6);
    expect({ ...now, P: 0 }).toEqual({ ...was, P: 0 });
    expect(await patternNow()).not.toBe(pattern);
    expect(await hand.rows('section:nth-of-type(4) tbody tr')).toContainEqual(['B Long tube', '8', '900', '1000']);
    await lookUntil(hand.page, '.turnable', (changed) => difference(look, changed) > 0.01);
  });

  it('says of a figure outside the range that it is none, and of values that make no item why', async () => {
    // Five decks in 700 mm of height: their joints would sit in one another.
    const tooLow = { 3: '700', 4: '5', 5: '400', 6: '200' };
    await hand.put(WIDTH, '1200');
    expect(await hand.page.$eval(WIDTH, (element) => element.getAttribute('aria-invalid'))).toBe('true');
    expect(await hand.text('.refused')).toBe('1200 is not allowed: from 500 mm to 1100 mm. 900 mm still holds.');
    expect(await hand.text('.changes')).toBe('Width: 1000 mm 900 mm');
    for (const [row, value] of Object.entries(tooLow)) await hand.put(`.measure:nth-child(${row}) input[type=range]`, value);
    await hand.until('document.querySelector(".told pre")?.textContent.includes("steps/rack/item.yaml")');
    expect(await hand.text('.told pre')).toMatch(/^steps\/rack\/item\.yaml:\d+:\d+ .*would be right: /);
    expect(await hand.page.$eval('.main-button', (element) => (element as HTMLButtonElement).disabled)).toBe(true);
    for (const row of Object.keys(tooLow)) await hand.page.$eval(`.measure:nth-child(${row}) .back`, (button) => { (button as HTMLButtonElement).click(); });
    await hand.until('document.querySelector(".told") === null');
  });

  it('plays the steps: a flap folds by its facets, a panel of the bench is drawn flat', async () => {
    await hand.until(PLANNED);
    const whole = await lookAtRest(hand.page, '.turnable');
    await hand.put('.walk input', '22');
    expect(await hand.text('.said')).toContain('Wrap the front side round its tube');
    await hand.until('document.querySelector("section:nth-of-type(6) .paper svg") !== null');
    const shown = await hand.page.$eval('section:nth-of-type(6) .paper', (element) => element.innerHTML);
    // A browser writes empty elements out with an end of their own.
    expect(shown.replaceAll(/><\/\w+>(?=[<\n])/g, '/>').trim() === await narrow, 'the same picture as the command\'s').toBe(true);
    /** The motion so far done, when the model no longer looks as before and has come to rest. */
    const at = async (percent: string, before: Look): Promise<Look> => {
      await hand.put('.walk-row + .walk-row input', percent);
      return lookUntil(hand.page, '.turnable', (now, last) => difference(before, now) > 0.003 && difference(last, now) === 0);
    };
    const flat = await at('0', whole);
    const half = await at('50', flat);
    expect(difference(flat, await at('100', half))).toBeGreaterThan(0.003);
    await hand.page.$eval('.walk-row + .walk-row .count', (count) => {
      const told: string[] = [];
      Object.assign(globalThis, { told });
      new MutationObserver(() => { told.push(count.textContent); }).observe(count, { subtree: true, childList: true, characterData: true });
    });
    await hand.page.click('.play');
    await hand.until('globalThis.told.length > 1 && /\\b100\\b/.test(globalThis.told.at(-1)) && document.querySelector(".play").getAttribute("aria-pressed") === "false"');
    const told = await hand.page.evaluate(() => (globalThis as unknown as { told: string[] }).told.map((text) => Number(/\d+/.exec(text)?.[0])));
    expect(told.length, 'frames of the motion').toBeGreaterThan(10);
    expect(told, 'never back').toEqual([...told].sort((a, b) => a - b));
    await hand.put('.walk input', '8');
    await hand.until('document.querySelector(".flat-view svg") !== null');
    await hand.put('.walk input', '40');
    await hand.until('document.querySelector(".turnable canvas") !== null');
    expect(await hand.text('.said')).toBe('Finished');
  });

  it('follows the hand with a slider that is dragged, and waits for no model', async () => {
    await hand.until(PLANNED);
    await hand.page.$eval('.tape input', (tape) => { tape.scrollIntoView({ block: 'center' }); });
    const box = await (await hand.page.$('.tape input'))?.boundingBox();
    if (!box) throw new Error('no slider');
    await hand.page.evaluate(() => {
      const kept = globalThis as unknown as { models: number };
      kept.models = 0;
      new MutationObserver(() => { kept.models += 1; }).observe(document.querySelector('.blank') ?? document.body, { subtree: true, childList: true, characterData: true });
    });
    /** After the next frame: where the slider stands, what the field beside it says, and how many models have been drawn so far. */
    const next = (): Promise<{ readonly slid: number; readonly said: number; readonly models: number }> => hand.page.evaluate(async (field) => {
      await new Promise(requestAnimationFrame);
      const of = (selector: string): number => (document.querySelector(selector) as HTMLInputElement).valueAsNumber;
      return { slid: of('.tape input'), said: of(field), models: (globalThis as unknown as { models: number }).models };
    }, WIDTH);
    const y = box.y + box.height / 2;
    await hand.page.mouse.move(box.x + box.width * 0.66, y);
    await hand.page.mouse.down();
    const seen: Awaited<ReturnType<typeof next>>[] = [];
    for (let move = 0; move < MOST_MOVES && (move < 100 || (seen.at(-1)?.models ?? 0) < 4); move += 1) {
      await hand.page.mouse.move(box.x + box.width * (0.4 + 0.26 * Math.cos(move / 12)), y);
      seen.push(await next());
    }
    await hand.page.mouse.up();
    expect(seen.filter(({ slid, said }) => slid !== said), 'frames in which the values lag behind the slider').toEqual([]);
    // The hand has gone to and fro by a few millimetres with nearly each move.
    expect(seen.filter(({ slid }, index) => slid !== seen[index - 1]?.slid).length).toBeGreaterThan(seen.length / 2);
    // Between the slider's two ends models are drawn while it is dragged; what stands still in between was not held up by them.
    expect(seen.at(-1)?.models).toBeGreaterThan(3);
    expect(seen.length).toBeGreaterThan(seen.at(-1)?.models ?? Infinity);
  });

  it('saves the value and nothing else, and tells when somebody was quicker', async () => {
    await hand.put(WIDTH, '900');
    const text = served.shop.read(RACK).toString();
    await hand.page.click('.main-button');
    await hand.until('document.querySelector(".saving p").textContent === "Saved in steps/rack/item.yaml."');
    const saved = served.shop.read(RACK).toString();
    const differing = saved.split('\n').flatMap((line, index) => (line === text.split('\n')[index] ? [] : [line]));
    expect(differing).toEqual(['    width: 900 mm']);
    expect(saved).toContain('# index counts from 0 at the lowest');
    expect(saved.length).toBe(text.length - 1);

    served.shop.change(RACK, 'ferry cooperative', 'harbour cooperative');
    await hand.put(WIDTH, '910');
    await hand.page.click('.main-button');
    await hand.until('document.querySelector(".saving [role=alert]") !== null');
    expect(await hand.text('.saving [role=alert]')).toContain('Not saved: somebody has changed the file since this page read it.');
    expect(served.shop.read(RACK).toString()).toBe(saved.replace('ferry', 'harbour'));
    // Read again, the change stays and can be saved over the other's.
    await hand.page.click('.saving [role=alert] button');
    await hand.until('document.querySelector(".saving [role=alert]") === null');
    await hand.page.click('.main-button');
    await hand.until('document.querySelector(".saving p").textContent === "Saved in steps/rack/item.yaml."');
    expect(served.shop.read(RACK).toString()).toBe(saved.replace('ferry', 'harbour').replace('    width: 900 mm\n    depth: 500 mm', '    width: 910 mm\n    depth: 500 mm'));
    served.shop.change(RACK, 'harbour cooperative', 'ferry cooperative');
    await hand.put(WIDTH, '920');
    await hand.page.click('.main-button');
    await hand.until('document.querySelector(".saving [role=alert]") !== null');
    await hand.page.click('.saving [role=alert] button:last-child');
    await hand.until('document.querySelector(".saving [role=alert]") === null');
    expect(await hand.page.$eval(WIDTH, (element) => (element as HTMLInputElement).value)).toBe('910');
  });

  it('has had no trouble so far', () => { expect(hand.troubles).toEqual([]); });
});

describe('the side that makes booklets', () => {
  it('makes the same bytes as the command, and stops when told to', async () => {
    await hand.page.click('nav a:last-child');
    const tick = async (value: string): Promise<void> => { await hand.page.$eval(`input[value="${value}"]`, (element) => { (element as HTMLInputElement).click(); }); };
    await tick('gantry/low');
    await tick('words');
    await tick('pictures');
    expect(await hand.text('.makings .main-button')).toBe('Make the booklets: 1');
    expect(await hand.text('.makings fieldset:last-child p')).toBe('Copies to print of each booklet, one for two learners: 6');
    const command = served.shop.run(['make', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'pictures', '--paper', 'a4', '--out', 'by-command']);
    await hand.page.click('.makings .main-button');
    await hand.until('document.querySelector(".making p").textContent.startsWith("All made")');
    expect(await hand.text('.making p')).toBe('All made. Booklets: 1');
    // The guide for phones comes with them.
    expect(await hand.texts('.made a')).toEqual(['gantry-low.html', 'gantry-low-pictures.pdf']);
    expect(await hand.text('.folder')).toBe('Folder: booklets/gantry/low');
    expect(await hand.texts('.made li')).toEqual([expect.stringContaining('Guide for phones'), expect.not.stringContaining('Guide for phones')]);
    const address = await hand.page.$eval('.made a[href$=".pdf"]', (element) => element.getAttribute('href') ?? '');
    const bytes = Buffer.from(await (await fetch(new URL(address, served.url))).arrayBuffer());
    expect(await command).toMatchObject({ code: 0, told: '' });
    expect(bytes.equals(served.shop.read('by-command/gantry/low/gantry-low-pictures.pdf'))).toBe(true);

    await tick('rack/tall');
    await hand.page.click('.makings .main-button');
    await hand.until('document.querySelector("progress") !== null');
    await hand.page.click('.stop-button');
    await hand.until('document.querySelector(".making p").textContent.startsWith("Stopped")');
    // Hundreds of pictures before the booklet: no machine is done with them before it is stopped.
    expect(served.shop.files().filter((path) => path.includes('unfinished') || path.includes('rack-tall-pictures'))).toEqual([]);
    expect(hand.troubles).toEqual([]);
  });

  it('counts the edition of pictures once for all languages, and offers to stitch only what goes two on a sheet', async () => {
    const tick = async (value: string): Promise<void> => { await hand.page.$eval(`input[value="${value}"]`, (element) => { (element as HTMLInputElement).click(); }); };
    const stitchOff = (): Promise<boolean> => hand.page.$eval('input[name=stitched]', (element) => (element as HTMLInputElement).disabled);
    await tick('rack/tall');
    expect(await hand.text('.makings .main-button')).toBe('Make the booklets: 1');
    await hand.page.click('.all-languages');
    expect(await hand.text('.makings .main-button')).toBe('Make the booklets: 1');
    await tick('words');
    const languages = await hand.page.$eval('fieldset.long', (element) => element.querySelectorAll('label.tick span[lang]').length);
    expect(languages).toBeGreaterThan(15);
    expect(await hand.text('.makings .main-button')).toBe(`Make the booklets: ${languages + 1}`);
    expect(await stitchOff()).toBe(true);
    await tick('a5');
    expect(await hand.text('.makings .main-button')).toBe(`Make the booklets: ${2 * (languages + 1)}`);
    expect(await stitchOff()).toBe(false);
    await tick('a5');
  });

  it('makes the workshop pack, the same bytes as the command, and stops one when told to', async () => {
    await hand.put('.pack input[name="gantry/low"]', '3');
    await hand.put('.pack input[type=time]', '07:15');
    await hand.page.$eval('.pack input[value="fr"]', (element) => { (element as HTMLInputElement).click(); });
    await hand.put('fieldset:last-child > input[type=number]', '6');
    await hand.page.click('.pack-button');
    await hand.until('document.querySelector(".making p").textContent.startsWith("The workshop pack is made")');
    expect(await hand.text('.making p')).toBe('The workshop pack is made. Files: 2');
    expect(await hand.texts('.made a')).toEqual(['gantry-low-x3-en.pdf', 'gantry-low-x3-fr.pdf']);
    // What was made before can still be taken along.
    expect(await hand.text('.earlier summary')).toBe('Made earlier: 2');
    expect(await hand.texts('.earlier a')).toEqual(['gantry-low.html', 'gantry-low-pictures.pdf']);
    const address = await hand.page.$eval('.made a[href$="fr.pdf"]', (element) => element.getAttribute('href') ?? '');
    const bytes = Buffer.from(await (await fetch(new URL(address, served.url))).arrayBuffer());
    expect(await served.shop.run(['pack', 'gantry:low=3', '--learners', '6', '--lang', 'fr', '--start', '07:15', '--paper', 'a4', '--out', 'by-command'])).toMatchObject({ code: 0, told: '' });
    expect(bytes.equals(served.shop.read('by-command/packs/gantry-low-x3-fr.pdf'))).toBe(true);

    // In every language, which no machine is done with before it is stopped.
    await hand.page.$$eval('.pack input[type=checkbox]:not(:checked)', (all) => { for (const each of all) (each as HTMLInputElement).click(); });
    await hand.put('.pack input[name="gantry/low"]', '4');
    await hand.page.click('.pack-button');
    await hand.until('document.querySelector("progress") !== null');
    await hand.page.click('.stop-button');
    await hand.until('document.querySelector(".making p").textContent.startsWith("Stopped")');
    const ready = served.shop.files().filter((path) => path.includes('unfinished') || path.includes('gantry-low-x4')).map((path) => path.split('/').at(-1));
    expect(ready.length).toBeLessThan(languagesIn(localeFiles('locales')).length);
    expect(await hand.text('.making p')).toBe(`Stopped. Packs that were ready: ${ready.length}`);
    expect([...await hand.texts('.made a')].sort()).toEqual(ready);
    await hand.page.reload();
    await hand.until('document.querySelectorAll(".earlier a").length > 0');
    expect([...await hand.texts('.earlier a')].sort()).toEqual(['gantry-low.html', 'gantry-low-pictures.pdf', 'gantry-low-x3-en.pdf', 'gantry-low-x3-fr.pdf', ...ready].sort());
    expect(hand.troubles).toEqual([]);
  });
});

describe('languages side by side, and posters', () => {
  it('are counted and made as the command makes them', async () => {
    await hand.page.goto(`${served.url}#make`);
    await hand.page.reload();
    await hand.until('document.querySelector(".makings") !== null');
    expect(await hand.page.$eval('input[value="gantry/low"]', (element) => (element as HTMLInputElement).checked), 'ticks outlast a reload').toBe(true);
    await hand.page.evaluate(() => { localStorage.removeItem('foldwright.wish'); });
    await hand.page.reload();
    await hand.until('document.querySelector(".makings") !== null');
    const tick = async (value: string): Promise<void> => { await hand.page.$eval(`input[value="${value}"], input[name="${value}"]`, (element) => { (element as HTMLInputElement).click(); }); };
    const count = (): Promise<string> => hand.text('.makings .main-button');
    const besideOff = (): Promise<boolean> => hand.page.$eval('input[name=beside]', (element) => (element as HTMLInputElement).disabled);
    await tick('gantry/low');
    expect(await besideOff()).toBe(true);
    await tick('ar');
    expect([await besideOff(), await count()]).toEqual([false, 'Make the booklets: 2']);
    await tick('overview');
    await tick('wall');
    await tick('a3');
    // Two languages, and the overview on A4, the wall on A4 and A3, each from the left and from the right.
    expect(await count()).toBe('Make the booklets: 8');
    await tick('wall');
    await tick('beside');
    expect(await count()).toBe('Make the booklets: 2');
    await hand.page.click('.makings .main-button');
    await hand.until('document.querySelector(".making p").textContent === "All made. Booklets: 2"');
    expect(await hand.texts('.made a')).toEqual(expect.arrayContaining(['gantry-low-en+ar-words.pdf', 'gantry-low-overview.pdf']));
    expect(hand.troubles).toEqual([]);
  });
});
