import type { Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { overviewPage, wallPages, type PosterPaper } from '../../../src/booklet/posters/index.ts';
import { wall } from '../../../src/booklet/posters/wall-layout.ts';
import { overview } from '../../../src/booklet/posters/overview-layout.ts';
import { posterSheets } from '../../../src/booklet/posters/sheet.ts';
import { openPrinter, picturePlace, fontCss, type PrintDocument, type Printer } from '../../../src/booklet/print/index.ts';
import type { BookletInput, BookletPages, SizedPicture } from '../../../src/booklet/pages/index.ts';
import { FORMATS, THUMB } from '../../../src/draw/formats.ts';
import { pictureId } from '../../../src/draw/index.ts';
import { openBrowser } from '../../support/open-browser.ts';
import { seenPosters } from '../../support/chosen.ts';
import { SLOWEST } from '../../support/waiting.ts';
import { furnitureInput } from '../pages/furniture-booklet.ts';
import { rackInput, standInPictures, withPictures, type Wanted } from '../pages/rack-booklet.ts';
import { readPdf } from '../print/readPdf.ts';

let browser: Browser;
let printer: Printer;
beforeAll(async () => {
  browser = await openBrowser();
  printer = await openPrinter();
});
afterAll(async () => { await browser.close(); await printer.close(); });

const bench = new Set(['cut-tubes', 'cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches', 'crease', 'half-cut', 'cut-panel', 'mark-posts']);

/** With stand-ins of the sizes in which the pictures are drawn, two for every third step. */
function asPosters(input: BookletInput): BookletInput {
  const { bench: flat, whole, closeUp, full } = FORMATS.small;
  const ofSteps = input.plan.steps.flatMap(({ number, action }): readonly SizedPicture[] => [
    ...(number % 3 === 0 ? [whole, closeUp] : [flat]).map((size, piece) => ({ of: { what: 'step' as const, step: number, piece }, ...size })),
    ...(bench.has(action) ? [] : [{ of: { what: 'step-thumb' as const, step: number }, ...THUMB }]),
  ]);
  const pictures = withPictures(standInPictures(input.plan), ...ofSteps, { of: { what: 'finished' }, ...full }, { of: { what: 'finished-thumb' }, ...THUMB });
  return { ...input, placePicture: picturePlace, pictures };
}

const rack = (wanted: Wanted = {}): BookletInput => asPosters(rackInput({ ...wanted, edition: 'pictures' }));
const editions = { wall: wallPages, overview: overviewPage } as const;
const documentOf = ({ html, css, title, dir }: BookletPages, lang: string, paper: PosterPaper): PrintDocument =>
  ({ id: 'poster', html, css, title, dir, lang, paper, contentMark: 'm' });

interface Seen {
  /** Boxes that stand out of their page's margin, and heights of digits, mm. */
  readonly outside: readonly string[];
  readonly numerals: readonly number[];
  /** Left edges of the first two numerals of a row. */
  readonly lefts: readonly number[];
}

async function look({ html, css, dir }: BookletPages, lang: string): Promise<Seen> {
  const tab = await browser.newPage();
  tab.setDefaultTimeout(SLOWEST);
  await tab.setContent(`<!doctype html><html lang="${lang}" dir="${dir}"><head><title>x</title><style>${fontCss(['en', 'ar'])} ${css}</style></head><body>${html}</body></html>`);
  const seen = await tab.evaluate(async () => {
    await document.fonts.ready;
    const mm = 96 / 25.4;
    const outside: string[] = [];
    for (const page of document.querySelectorAll('.page')) {
      const sheet = page.getBoundingClientRect();
      for (const element of page.querySelectorAll('.sheet *:not(svg *)')) {
        const box = element.getBoundingClientRect();
        const by = Math.max(sheet.left - box.left, box.right - sheet.right, sheet.top - box.top, box.bottom - sheet.bottom) / mm + 7;
        if (box.width > 0 && by > 0.05) outside.push(`${element.className.toString()} "${(element.textContent ?? '').slice(0, 20)}" by ${by.toFixed(1)} mm`);
      }
      const [view, strip] = [page.querySelector('.view'), page.querySelector('.strip')].map((each) => each?.getBoundingClientRect());
      const pictures = [...page.querySelectorAll('.view .picture')].map((each) => each.getBoundingClientRect());
      if (view && strip && pictures.some((box) => box.bottom > strip.top + 1 || box.left < view.left - 1 || box.right > view.right + 1)) outside.push('picture out of its place');
    }
    const numerals = [...document.querySelectorAll('.numeral')];
    return {
      outside,
      numerals: numerals.map((numeral) => (parseFloat(getComputedStyle(numeral).fontSize) * 0.714) / mm),
      lefts: numerals.slice(0, 2).map((numeral) => numeral.getBoundingClientRect().left),
    };
  });
  await tab.close();
  return seen;
}

const textOf = (html: string): string => html.replace(/<[^>]*>/g, '\n').replace(/\n+/g, '\n');

describe.each([['wall', 'a3'], ['wall', 'a4'], ['wall', 'letter'], ['overview', 'a4'], ['overview', 'letter']] as const)('the edition %s on %s', (edition, paper) => {
  it.each(seenPosters.filter((row) => row.poster === `${edition} ${paper}`))('stays on its pages, without a word ($lang, $item)', async ({ lang, item }) => {
    const input = item === 'rack' ? rack({ lang }) : asPosters({ ...furnitureInput(item, { lang, edition: 'pictures' }), ...(item === 'desk' ? { despiteFindings: true } : {}) });
    const pages = editions[edition](input, paper);
    const { outside } = await look(pages, lang);
    expect(outside).toEqual([]);
    expect(textOf(pages.html).replaceAll(input.contentMark, '').replace(/\b(mm|kg)\b/g, '')).toMatch(/^[\d\s×/·:.,Ø\u00a0\u202f]*$/);
  });

  it('shows every step, with its number, pictogram and words for those who hear it', () => {
    const input = rack();
    const { html } = editions[edition](input, paper);
    const numbers = [...html.matchAll(/class="numeral"><span[^>]*>(\d+)<|class="numeral">(\d+)</g)].map(([, apart, bare]) => Number(apart ?? bare));
    expect(numbers).toEqual(input.plan.steps.map(({ number }) => number));
    expect(html.match(/<svg(?![^>]*(aria-label="[^"]+"|aria-hidden))[^>]*>/g)).toBeNull();
    for (const step of input.plan.steps) expect(html).toContain(input.words.t('booklet.alt.step', { number: step.number, caption: '' }).trim());
  });

  it('says of a failed check on every page', () => {
    const input = { ...rack(), despiteFindings: true };
    const { html } = editions[edition](input, paper);
    for (const page of html.split('<section').slice(1)) expect(page).toContain(input.words.t('booklet.despite-findings'));
  });

  it('always shows the safety signs', () => {
    const input = rack();
    const [first = ''] = editions[edition](input, paper).html.split('<section').slice(1);
    for (const caution of ['manual', 'children', 'sharp', 'dust'] as const) expect(first).toContain(`aria-label="${input.words.t(`cautions.${caution}.sign`)}"`);
  });
});

describe('the wall edition', () => {
  it.each(['a3', 'a4', 'letter'] as const)('has numerals of the height it states on %s', async (paper) => {
    const { numerals } = await look(wallPages(rack(), paper), 'en');
    for (const height of numerals) expect(height).toBeCloseTo(wall.numeral * posterSheets[paper].scale, 1);
  });

  it('is printed on pages of the paper, each turned as its picture asks', async () => {
    const book = await printer.pictures(rack().pictures.map(({ of, width, height }) => ({ id: pictureId(of), width, height, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><path d="M1 1H9V9z"/></svg>` })));
    const pages = wallPages(rack(), 'a3');
    const pdf = await readPdf(await printer.document(documentOf(pages, 'en', 'a3'), book));
    expect(pdf.getPageCount()).toBe(pages.pageCount);
    const turns = new Set(pdf.getPages().map((page) => [page.getWidth(), page.getHeight()].map((points) => Math.round((points / 72) * 25.4)).join(' × ')));
    // ISO 216: A3 is 297 × 420 mm.
    expect([...turns].sort()).toEqual(['297 × 420', '420 × 297']);
  });
});

describe('the overview', () => {
  it('is one page with numerals of 3 mm and more that run in the reading direction', async () => {
    for (const [lang, order] of [['en', 1], ['ar', -1]] as const) {
      const pages = overviewPage(rack({ lang }), 'a4');
      expect(pages.html.split('<section').length - 1).toBe(1);
      const { numerals, lefts: [first = 0, second = 0] } = await look(pages, lang);
      expect(Math.min(...numerals)).toBeGreaterThanOrEqual(3);
      expect(Math.min(...numerals)).toBeCloseTo(overview.numeral, 1);
      expect(Math.sign(second - first)).toBe(order);
    }
  });
});
