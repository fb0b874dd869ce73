import type { Browser, Page } from 'puppeteer';
import { PDFDocument } from 'pdf-lib';
import { expect } from 'vitest';
import { bookletPages, type BookletInput } from '../../../src/booklet/pages/index.ts';
import { SLOWEST } from '../../support/waiting.ts';
import { footOver } from '../../../src/booklet/pages/foot.tsx';
import { sheets } from '../../../src/booklet/pages/sheet.ts';
import { fontCss } from '../../../src/booklet/print/index.ts';


/** Latin, French and Arabic, and what else the booklet's own languages are set in. */
const fontsOf = ({ words, alongside = [] }: BookletInput): string =>
  fontCss([...new Set(['en', 'fr', 'ar', ...[words, ...alongside].map(({ lang }) => lang)])]);

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

/** The booklet in a tab of a browser, its fonts loaded. */
export async function openBooklet(browser: Browser, input: BookletInput): Promise<{ tab: Page; pageCount: number }> {
  const { html, css, dir, title, pageCount } = bookletPages(input);
  const tab = await browser.newPage();
  tab.setDefaultTimeout(SLOWEST);
  await tab.setContent(`<!doctype html><html lang="${input.words.lang}" dir="${dir}"><head><title>${title}</title><style>${fontsOf(input)} @page { size: ${sheets[input.paper].width}mm ${sheets[input.paper].height}mm; } ${css}</style></head><body>${html}</body></html>`);
  await tab.evaluate(async () => { await document.fonts.ready; });
  return { tab, pageCount };
}

/** Runs in the browser. `white` is that of the page's sides and foot, mm. */
function look(white: { readonly side: number; readonly foot: number }): Seen {
  const mm = 96 / 25.4;
  const outside: string[] = [];
  const stays = (element: Element, holder: Element, room: { x: number; bottom: number }): void => {
    const box = element.getBoundingClientRect();
    const sheet = holder.getBoundingClientRect();
    const over = Math.max(sheet.left + room.x * mm - box.left, box.right - sheet.right + room.x * mm, sheet.top - box.top, box.bottom - sheet.bottom + room.bottom * mm) / mm;
    if (box.width > 0 && over > 0.05) outside.push(`${element.className || element.tagName} "${(element.textContent ?? '').slice(0, 30)}" by ${over.toFixed(2)} mm`);
  };
  for (const page of document.querySelectorAll('.page')) {
    for (const element of page.querySelectorAll('.sheet *:not(svg *)')) stays(element, page, { x: white.side, bottom: white.foot });
    for (const element of page.querySelectorAll('.foot *:not(svg *)')) stays(element, page, { x: white.side, bottom: 4 });
  }
  for (const band of document.querySelectorAll('.band')) for (const element of band.querySelectorAll('*:not(svg *)')) stays(element, band, { x: 0, bottom: 2.9 });
  for (const view of document.querySelectorAll('.cover .view')) for (const picture of view.querySelectorAll('.picture')) stays(picture, view, { x: 0, bottom: 0 });
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

/** Expects that the booklet stays on its pages with text that can be read. */
export async function expectSound(browser: Browser, input: BookletInput): Promise<void> {
  const { tab, pageCount } = await openBooklet(browser, input);
  const { outer, inner, bottom } = sheets[input.paper];
  const seen = await tab.evaluate(look, { side: Math.min(7.9, outer - 0.1, inner - 0.1), foot: bottom + footOver(input) - 0.1 });
  expect(seen.outside).toEqual([]);
  // ISO/IEC Guide 37 (CHECKS "Drawings and signs", R): running text of at least 10 pt.
  expect(seen.smallest).toBeGreaterThanOrEqual(9.99);
  expect(seen.smallestNumeral).toBeGreaterThanOrEqual(28);
  // Read at arm's length: at least 12 pt, bold (own default).
  expect(seen.smallestCount[0]).toBeGreaterThanOrEqual(12);
  expect(seen.smallestCount[1]).toBe(700);
  expect(seen.leastPairGap).toBeGreaterThanOrEqual(4);
  for (const strip of seen.strips) expect(strip).toMatch(/^(times )?action tools people( cautions)?( check)?$/);
  for (const at of seen.numeralsAt) expect(input.words.about.direction === 'rtl' ? 1 - at : at).toBeLessThan(0.17);

  const pdf = await PDFDocument.load(await tab.pdf({ preferCSSPageSize: true, printBackground: true, timeout: SLOWEST }));
  expect(pdf.getPageCount()).toBe(pageCount);
  await tab.close();
}
