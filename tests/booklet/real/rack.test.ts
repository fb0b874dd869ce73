import { PDFArray, PDFDict, PDFName, type PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { glyphPrints, openPrinter, type BookletEdition, type Paper, type PictureBook, type Printer } from '../../../src/booklet/index.ts';
import { leastScale, mostScale } from '../../../src/booklet/pages/break-pages.ts';
import { allDicts, dictAt, dictsWith, infoText, key, outline, readPdf, textOf } from '../print/readPdf.ts';
import { hasPoppler, poppler } from '../print/poppler.ts';
import { realRacks } from '../../support/chosen.ts';
import { realRack, type RealRack } from './rack.ts';

let rack: RealRack;
let printer: Printer;
let book: PictureBook;

beforeAll(async () => {
  [rack, printer] = await Promise.all([realRack(), openPrinter()]);
  book = await printer.pictures([...rack.variant.pictures, ...glyphPrints()]);
});
afterAll(() => printer.close());

type Booklet = readonly [lang: string, edition: BookletEdition, paper: Paper];
const booklets = realRacks.map(({ lang, edition, paper }): Booklet => [lang, edition, paper]);

const printed = new Map<string, Promise<Uint8Array>>();
/** Each booklet is printed once. */
function bytesOf(...[lang, edition, paper]: Booklet): Promise<Uint8Array> {
  const name = [lang, edition, paper].join();
  const bytes = printed.get(name) ?? printer.document(rack.document(lang, edition, paper), book);
  printed.set(name, bytes);
  return bytes;
}
const readings = new Map<Uint8Array, Promise<PDFDocument>>();
async function pdfOf(...booklet: Booklet): Promise<PDFDocument> {
  const bytes = await bytesOf(...booklet);
  const pdf = readings.get(bytes) ?? readPdf(bytes);
  readings.set(bytes, pdf);
  return pdf;
}

/** The words of a booklet's first language. */
const wordsOf = (lang: string): RealRack['words'][number] => {
  const found = rack.words.find((words) => words.lang === lang.split('+')[0]);
  if (!found) throw new Error(`no language ${lang}`);
  return found;
};

/** Letters of the language's own script. */
const scripts: Readonly<Record<string, RegExp>> = { ar: /\p{Script=Arabic}/u, ur: /\p{Script=Arabic}/u, en: /\p{Script=Latin}/u, fr: /\p{Script=Latin}/u };

describe.each(booklets)('the standard rack in %s, %s, on %s', (lang, edition, paper) => {
  it('has nothing cut off, nothing outside its sheet and no foreign face', async () => {
    expect(await printer.measure(rack.document(lang, edition, paper))).toEqual([]);
  });

  it('has the pages it says, of the paper asked for', async () => {
    const pdf = await pdfOf(lang, edition, paper);
    const { html } = rack.document(lang, edition, paper);
    expect(pdf.getPageCount()).toBe(html.split('<section class="page"').length - 1);
    // ISO 216: A4 is 210 × 297 mm; ANSI Y14.1: letter is 8.5 × 11 in. Chromium rounds to whole CSS pixels (0.26 mm).
    const [width, height] = paper === 'a4' ? [210, 297] : [215.9, 279.4];
    for (const page of pdf.getPages()) {
      expect(Math.abs((page.getWidth() / 72) * 25.4 - width)).toBeLessThan(0.27);
      expect(Math.abs((page.getHeight() / 72) * 25.4 - height)).toBeLessThan(0.27);
    }
  });

  // PDF/UA-1 (ISO 14289-1, 7.1–7.4, from memory): tagged, language, title shown, headings, alternative texts.
  it('is tagged, in its language, with headings', async () => {
    const pdf = await pdfOf(lang, edition, paper);
    expect(dictAt(pdf.catalog, 'MarkInfo').lookup(key('Marked'))?.toString()).toBe('true');
    expect(textOf(pdf.catalog.lookup(key('Lang')))).toBe(wordsOf(lang).lang);
    expect(infoText(pdf, 'Title')).toContain(wordsOf(lang).t('items.rack.name'));
    expect(dictAt(pdf.catalog, 'ViewerPreferences').lookup(key('Direction'))).toBe(key(wordsOf(lang).about.direction === 'rtl' ? 'R2L' : 'L2R'));
    // The cover and the chapters; the last one has words alone.
    expect(dictsWith(pdf, 'S', 'H1')).toHaveLength(edition === 'words' ? 11 : 7);
    expect(dictsWith(pdf, 'S', 'H2')).toHaveLength(rack.variant.plan.steps.length);
    for (const page of pdf.getPages()) expect(page.node.has(key('StructParents'))).toBe(true);
  });

  it('has words in its language for every picture', async () => {
    const figures = dictsWith(await pdfOf(lang, edition, paper), 'S', 'Figure');
    const steps = rack.variant.pictures.filter(({ of }) => of.what === 'step');
    expect(figures.length).toBeGreaterThan(steps.length);
    const alts = figures.map((figure) => textOf(figure.lookup(key('Alt'))) ?? '');
    expect(alts.filter((alt) => !(scripts[wordsOf(lang).lang] ?? /$^/).test(alt))).toEqual([]);
    const words = wordsOf(lang);
    for (const step of rack.variant.plan.steps) {
      const said = words.t('booklet.alt.step', { number: step.number, caption: '' }).trim();
      expect(alts.some((alt) => alt.startsWith(said))).toBe(true);
    }
  });

  it('has an outline of chapters and steps, in logical order', async () => {
    const words = wordsOf(lang);
    const titles = outline(await pdfOf(lang, edition, paper));
    const chapters = ['before', 'parts', 'dimensions', ...(edition === 'words' ? ['lengths', 'pattern', 'creasing'] : []), 'steps', 'checks', 'load', ...(edition === 'words' ? ['colophon'] : [])];
    const inAll = (text: string): string => lang.split('+').map((each) => wordsOf(each).t(text)).join(' ');
    const [cover, ...others] = titles.filter(([depth]) => depth === 1).map(([, title]) => title);
    expect(cover).toBe(edition === 'pictures' ? 'Storage rack, Standard' : inAll('items.rack.name'));
    expect(others).toEqual(chapters.map((name) => inAll(`booklet.chapters.${name}`)));
    const steps = titles.filter(([depth]) => depth === 2).map(([, title]) => title);
    expect(steps.map((title) => title.split(' ')[0])).toEqual(rack.variant.plan.steps.map((step) => words.number(step.number)));
    const half = rack.variant.plan.steps.findIndex((step) => step.action === 'half-cut');
    expect(steps[half]).toBe(edition === 'words' ? `${half + 1} ${inAll('actions.half-cut')}` : String(half + 1));
  });

  it('has its fonts inside, no bitmaps, and at most 2.1 MB', async () => {
    const bytes = await bytesOf(lang, edition, paper);
    const pdf = await pdfOf(lang, edition, paper);
    const fonts = dictsWith(pdf, 'Type', 'Font');
    expect(fonts.length).toBeGreaterThan(0);
    expect(fonts.filter((font) => font.lookup(key('Subtype')) === key('Type3'))).toEqual([]);
    // Every font is embedded: a composite font's descendant has a descriptor with a font file (ISO 32000-1, 9.9).
    const descendants = fonts.flatMap((font) => font.lookupMaybe(key('DescendantFonts'), PDFArray)?.lookup(0, PDFDict) ?? []);
    for (const font of descendants) expect(font.lookup(key('FontDescriptor'), PDFDict).keys().some((name) => name.toString().startsWith('/FontFile'))).toBe(true);
    expect(allDicts(pdf).filter((dict) => dict.lookup(key('Subtype')) === PDFName.of('Image'))).toEqual([]);
    expect(bytes.length).toBeLessThan(2.1e6);
  });
});

describe('the pages', () => {
  it.each(booklets)('set no picture of a step smaller than can be read, nor much larger than the others (%s, %s, %s)', (lang, edition, paper) => {
    const { html } = rack.document(lang, edition, paper);
    for (const { id, width } of rack.variant.pictures.filter(({ of }) => of.what === 'step')) {
      const [, placed] = new RegExp(`aria-label="${id}\\u241F[^"]*" width="([\\d.]+)mm"`).exec(html) ?? [];
      expect(Number(placed) / width).toBeGreaterThanOrEqual(leastScale - 1e-3);
      expect(Number(placed) / width).toBeLessThanOrEqual(mostScale + 1e-3);
    }
  });
});

it.skipIf(!hasPoppler)('a second reader finds neither made-up faces nor bitmaps', async () => {
  const bytes = await bytesOf('ar', 'words', 'a4');
  const fonts = poppler('pdffonts', bytes);
  expect(fonts).toContain('NotoSansArabic');
  expect(fonts).not.toContain('Type 3');
  expect(poppler('pdfimages', bytes).trim().split('\n')).toHaveLength(2);
});
