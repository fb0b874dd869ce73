import puppeteer, { type Browser, type Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages, type Edition, type Paper } from '../../../src/booklet/pages/index.ts';
import { chooseBrowser, fontCss } from '../../../src/booklet/print/index.ts';
import { PDFDocument } from 'pdf-lib';
import { sourceWidth } from '../../../src/booklet/pages/colophon.tsx';
import { wrappedLines } from '../../../src/booklet/pages/wrapped-lines.ts';
import { rackInput } from './rack-booklet.ts';

let browser: Browser;
const fonts = fontCss(['en', 'fr', 'ar']);

beforeAll(async () => {
  const { path, args, env } = await chooseBrowser();
  browser = await puppeteer.launch({ executablePath: path, args: [...args], env: { ...env }, headless: 'shell' });
});

afterAll(() => browser.close());

interface Seen {
  /** Elements that stick out of their sheet's inner edges, or out of their own band, mm. */
  readonly outside: readonly string[];
  /** Smallest size of running text, pt. */
  readonly smallest: number;
  readonly smallestNumeral: number;
  /** Smallest count of new parts in the margin, pt, and its weight. */
  readonly smallestCount: readonly [number, number];
  /** Least distance between the right picture with its tick and the wrong one with its cross, mm. */
  readonly leastPairGap: number;
  /** The order of each strip's groups by what they say they are. */
  readonly strips: readonly string[];
  /** Middle of the numerals as a share of the page's width. */
  readonly numeralsAt: readonly number[];
}

async function open(lang: string, edition: Edition, paper: Paper): Promise<{ tab: Page; pageCount: number }> {
  const { html, css, dir, title, pageCount } = bookletPages(rackInput({ lang, edition, paper }));
  const tab = await browser.newPage();
  await tab.setContent(`<!doctype html><html lang="${lang}" dir="${dir}"><head><title>${title}</title><style>${fonts} @page { size: ${paper}; } ${css}</style></head><body>${html}</body></html>`);
  await tab.evaluate(async () => { await document.fonts.ready; });
  return { tab, pageCount };
}

/** Runs in the browser. */
function look(): Seen {
  const mm = 96 / 25.4;
  const outside: string[] = [];
  const stays = (element: Element, holder: Element, room: { x: number; bottom: number }): void => {
    const box = element.getBoundingClientRect();
    const sheet = holder.getBoundingClientRect();
    const over = Math.max(sheet.left + room.x * mm - box.left, box.right - sheet.right + room.x * mm, sheet.top - box.top, box.bottom - sheet.bottom + room.bottom * mm) / mm;
    if (box.width > 0 && over > 0.05) outside.push(`${element.className || element.tagName} "${(element.textContent ?? '').slice(0, 30)}" by ${over.toFixed(2)} mm`);
  };
  for (const page of document.querySelectorAll('.page')) {
    for (const element of page.querySelectorAll('.sheet *:not(svg *)')) stays(element, page, { x: 7.9, bottom: 12.9 });
    for (const element of page.querySelectorAll('.foot *:not(svg *)')) stays(element, page, { x: 7.9, bottom: 4 });
  }
  for (const band of document.querySelectorAll('.band')) for (const element of band.querySelectorAll('*:not(svg *)')) stays(element, band, { x: 0, bottom: 2.9 });
  for (const heading of document.querySelectorAll('.band h2')) {
    const picture = heading.parentElement?.querySelector('.picture[style]');
    const caption = heading.querySelector('.caption');
    const work = heading.parentElement?.querySelector('.work .picture');
    if (picture && caption && work && caption.getBoundingClientRect().bottom > work.getBoundingClientRect().top) outside.push(`caption "${caption.textContent ?? ''}" on its picture`);
  }
  const sizes: number[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (parent && !parent.closest('svg, sup') && (node.textContent ?? '').trim() !== '') sizes.push(parseFloat(getComputedStyle(parent).fontSize) * 0.75);
  }
  const numerals = [...document.querySelectorAll('.numeral')];
  const counts = [...document.querySelectorAll('.new-parts b')].map((count) => getComputedStyle(count));
  const gaps = [...document.querySelectorAll('.check, .pair')].flatMap((pair) => {
    const [right, wrong] = [...pair.querySelectorAll(':scope > svg')].map((svg) => svg.getBoundingClientRect());
    return right && wrong ? [Math.max(wrong.left - right.right, right.left - wrong.right) / mm] : [];
  });
  return {
    smallestCount: [Math.min(...counts.map((style) => parseFloat(style.fontSize) * 0.75)), Math.min(...counts.map((style) => Number(style.fontWeight)))],
    leastPairGap: Math.min(...gaps),
    strips: [...document.querySelectorAll('.strip')].map((strip) => [...strip.children].map((group) => group.className).join(' ')),
    outside,
    smallest: Math.min(...sizes),
    smallestNumeral: Math.min(...numerals.map((numeral) => parseFloat(getComputedStyle(numeral).fontSize) * 0.75)),
    numeralsAt: numerals.map((numeral) => {
      const range = document.createRange();
      range.selectNodeContents(numeral);
      const box = range.getBoundingClientRect();
      const page = numeral.closest('.page')?.getBoundingClientRect() ?? box;
      return ((box.left + box.right) / 2 - page.left) / page.width;
    }),
  };
}

it('reckons the lines of the findings\' sources as the browser breaks them, or one more', async () => {
  const { tab } = await open('en', 'words', 'a4');
  const broken = await tab.evaluate(() => [...document.querySelectorAll('.findings .source')].map((source) =>
    ({ text: source.textContent ?? '', lines: Math.round(source.getBoundingClientRect().height / ((5.5 * 96) / 25.4)) })));
  expect(broken.length).toBeGreaterThan(10);
  for (const { text, lines } of broken) {
    const reckoned = wrappedLines(text, sourceWidth - 3, 10);
    expect([reckoned - lines, text]).toSatisfy(([over]: [number, string]) => over === 0 || over === 1);
  }
  await tab.close();
});

const all = (['en', 'fr', 'ar'] as const).flatMap((lang) => (['words', 'pictures'] as const).flatMap((edition) => (['a4', 'letter'] as const).map((paper) => ({ lang, edition, paper }))));

describe.each(all)('$lang, $edition, $paper', ({ lang, edition, paper }) => {
  it('stays on its pages with text that can be read', async () => {
    const { tab, pageCount } = await open(lang, edition, paper);
    const seen = await tab.evaluate(look);
    expect(seen.outside).toEqual([]);
    // ISO/IEC Guide 37 (CHECKS "Drawings and signs", R): running text of at least 10 pt.
    expect(seen.smallest).toBeGreaterThanOrEqual(9.99);
    expect(seen.smallestNumeral).toBeGreaterThanOrEqual(28);
    // Read at arm's length: at least 12 pt, bold (own default).
    expect(seen.smallestCount[0]).toBeGreaterThanOrEqual(12);
    expect(seen.smallestCount[1]).toBe(700);
    expect(seen.leastPairGap).toBeGreaterThanOrEqual(4);
    for (const strip of seen.strips) expect(strip).toMatch(/^(times )?action tools people( cautions)?( check)?$/);
    for (const at of seen.numeralsAt) expect(lang === 'ar' ? 1 - at : at).toBeLessThan(0.17);

    const pdf = await PDFDocument.load(await tab.pdf({ preferCSSPageSize: true, printBackground: true }));
    expect(pdf.getPageCount()).toBe(pageCount);
    await tab.close();
  });
});
