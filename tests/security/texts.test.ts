import { join } from 'node:path';
import { PDFDocument, PDFRawStream } from 'pdf-lib';
import type { Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { workshopWithGantry } from '../cli/gantry.ts';
import type { Workshop } from '../cli/workshop.ts';
import { readAgain, type StructureNode } from '../booklet/print/second-reader.ts';
import { openPhone, pickLanguage } from '../guide/phone.ts';
import { openGlBrowser, type GlBrowser } from '../page/gl-browser.ts';
import { openHand } from '../page/hand.ts';
import { servePage } from '../page/shop.ts';
import { openBrowser } from '../support/open-browser.ts';
import { SLOWEST } from '../support/waiting.ts';
import { attacks, browserThrough, setTrap, type Trap } from './trap.ts';
import { bare, TURNED } from './turned.ts';

const ITEMS = 'locales/en/items.json';
const NOTES = 'steps/stool/notes/en.md';
const CHECKED = 'document.querySelector(".sum")?.getAttribute("aria-busy") === "false"';

let trap: Trap;
let gl: GlBrowser;
let shop: Workshop;
/** The browser that prints, all of whose requests the trap hears. */
let through: string;
beforeAll(async () => {
  trap = await setTrap();
  gl = await openGlBrowser();
  shop = workshopWithGantry();
  through = join(shop.folder, 'browser');
  await browserThrough(trap, through);
});
afterAll(async () => {
  await gl.close();
  shop.close();
  await trap.close();
});

type Json = string | number | boolean | null | { readonly [name: string]: Json };

/** Puts attacks behind every text of a locale file, one after the other. */
function attacked(text: string): string {
  const all = attacks(trap);
  let count = 0;
  const inside = (value: Json): Json => {
    if (typeof value === 'string') return `${value} ${all[count++ % all.length] ?? ''}`;
    return typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, inside(inner)])) : value;
  };
  return JSON.stringify(inside(JSON.parse(text) as Json));
}

function attackWords(place: Workshop): void {
  for (const path of place.files().filter((each) => each.startsWith('locales/en/') && !each.endsWith('about.json'))) place.write(path, attacked(place.read(path).toString()));
}

/** What of the attacks has become more than text. */
const alive = (page: Page): Promise<readonly string[]> => page.evaluate((outside) => [...document.querySelectorAll('script, img, a, svg, iframe, [onload], [onerror]')]
  .filter((element) => /hit\(|fetch\(|javascript:/.test([...element.attributes].filter(({ name }) => ['href', 'src', 'onload', 'onerror'].includes(name)).map(({ value }) => value).join(' ')) || element.getAttribute('src') === outside)
  .map((element) => element.outerHTML.slice(0, 200)), trap.url);

const textOf = ({ text, children }: StructureNode): string => `${text} ${children.map(textOf).join(' ')}`;

/** All objects of a PDF, in which an order to a reader would stand. */
async function objectsOf(bytes: Uint8Array): Promise<string> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  return pdf.context.enumerateIndirectObjects().map(([, object]) => (object instanceof PDFRawStream ? object.dict : object).toString()).join('\n');
}

describe('the trap', () => {
  it('hears what the browser that prints asks', async () => {
    const browser = await openBrowser(through);
    const page = await browser.newPage();
    page.setDefaultTimeout(SLOWEST);
    await page.setContent(`<img src="${trap.url}seen"><img src="http://there.example/seen">`);
    await browser.close();
    expect([...trap.asked].sort()).toEqual([`GET ${trap.url}seen`, 'GET http://there.example/seen']);
    trap.forget();
  });
});

describe('texts that would do something if they were taken for more than texts', () => {
  it('print as text in a booklet, and nothing runs, asks or links', async () => {
    const [script = '', style = '', link = ''] = attacks(trap);
    const items = JSON.parse(shop.read(ITEMS).toString()) as Record<string, { name: string; sizes: Record<string, string> }>;
    shop.write(ITEMS, JSON.stringify({ ...items, gantry: { name: script, sizes: { ...items['gantry']?.sizes, low: link, standard: style } } }));
    const made = await shop.run(['make', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'words', '--paper', 'a4', '--out', 'out'], { FOLDWRIGHT_BROWSER: through });
    expect(made).toMatchObject({ code: 0, told: '' });
    const bytes = Uint8Array.from(shop.read('out/gantry/low/gantry-low-en-words.pdf'));
    const { pages, title } = await readAgain(bytes);
    const text = bare(pages.map(textOf).join(' '));
    expect([script, style, link].filter((attack) => !text.includes(bare(attack)))).toEqual([]);
    expect(title).toContain(script);
    const objects = await objectsOf(bytes);
    expect(objects.length).toBeGreaterThan(10_000);
    expect(objects).not.toMatch(/\/(JavaScript|JS|URI|Launch|SubmitForm|GoToR|GoToE|OpenAction|AA|RichMedia|EmbeddedFiles?)\b/);
    expect(trap.asked).toEqual([]);
  });

  it('are refused where they would turn what stands round them, and nothing is made', async () => {
    const words = shop.read(ITEMS).toString();
    const items = JSON.parse(words) as Record<string, { name: string; sizes: Record<string, string> }>;
    shop.write(ITEMS, JSON.stringify({ ...items, gantry: { name: TURNED, sizes: items['gantry']?.sizes } }));
    const made = await shop.run(['make', 'gantry', '--size', 'low', '--lang', 'en', '--edition', 'words', '--paper', 'a4', '--out', 'round']);
    expect(made.code).toBe(2);
    expect(made.told).toMatch(/locales\/en\/items\.json:1:\d+ items\.gantry\.name: found \\u202e as character 1; a text without controls/);
    expect(shop.files().filter((each) => each.startsWith('round/'))).toEqual([]);
    shop.write(ITEMS, words);
  });

  it('print as text in a trainer\'s notes', async () => {
    const [script = '', , link = ''] = attacks(trap);
    shop.write(NOTES, shop.read(NOTES).toString().replace('The better face becomes the outer one.', `${script} ${link} [here](javascript:hit()) ![there](${trap.url}) <${trap.url}>`));
    const made = await shop.run(['pack', 'stool:low=1', '--learners', '2', '--lang', 'en', '--paper', 'a4', '--stock', 'steps/stock/tern-island.yaml', '--out', 'out'], { FOLDWRIGHT_BROWSER: through });
    expect(made).toMatchObject({ code: 0 });
    const path = shop.files().find((each) => each.startsWith('out/packs/') && each.endsWith('.pdf')) ?? '';
    const bytes = Uint8Array.from(shop.read(path));
    const text = bare((await readAgain(bytes)).pages.map(textOf).join(' '));
    // Of Markdown the notes know headings, lists and emphasis, and signs by their names: a link is the text that it stands as.
    for (const attack of [script, link.replaceAll('&lt;', '<').replaceAll('&gt;', '>'), '[here](javascript:hit())', `![there](${trap.url})`]) expect(text.includes(bare(attack)), attack).toBe(true);
    expect(await objectsOf(bytes)).not.toMatch(/\/(JavaScript|JS|URI|Launch)\b/);
    expect(trap.asked).toEqual([]);
  });

  it('stand as text in the guide for phones, all of them in every text', async () => {
    const own = workshopWithGantry();
    try {
      attackWords(own);
      const made = await own.run(['guide', 'gantry', '--size', 'low', '--lang', 'en', 'fr', '--out', 'out']);
      expect(made).toMatchObject({ code: 0, told: '' });
      const html = own.read('out/gantry/low/gantry-low.html').toString();
      const phone = await openPhone(gl.browser, html);
      const { page, asked, told, close } = phone;
      try {
        await pickLanguage(phone, 'English');
        expect(await page.$eval('html', ({ lang }) => lang)).toBe('en');
        const shown = bare(await page.evaluate(() => document.body.textContent ?? ''));
        expect(attacks(trap).filter((attack) => !shown.includes(bare(attack)))).toEqual([]);
        expect(await alive(page)).toEqual([]);
        expect({ asked, told }).toEqual({ asked: [], told: [] });
      } finally {
        await close();
      }
    } finally {
      own.close();
    }
    expect(trap.asked).toEqual([]);
  });

  it('stand as text in the workbench page, and it asks nobody but its own program', async () => {
    const served = await servePage();
    try {
      attackWords(served.shop);
      const hand = await openHand(gl.browser, served.url);
      const outside: string[] = [];
      hand.page.on('request', (request) => { if (!request.url().startsWith(served.url) && !/^(data|blob):/.test(request.url())) outside.push(request.url()); });
      await hand.page.reload();
      await hand.page.waitForSelector('.pickers select');
      await hand.page.select('.pickers select', 'steps/stool/item.yaml');
      await hand.until(CHECKED);
      const first = bare(await hand.text('body'));
      expect(attacks(trap).filter((attack) => !first.includes(bare(attack)))).toEqual([]);
      expect(await alive(hand.page)).toEqual([]);
      await hand.page.goto(`${served.url}#make`);
      await hand.until('document.querySelector(".lead") !== null');
      const second = bare(await hand.text('main'));
      expect(attacks(trap).filter((attack) => !second.includes(bare(attack)))).toEqual([]);
      expect(await alive(hand.page)).toEqual([]);
      expect({ outside, troubles: hand.troubles }).toEqual({ outside: [], troubles: [] });
      await hand.close();
    } finally {
      await served.close();
    }
    expect(trap.asked).toEqual([]);
  });
});
