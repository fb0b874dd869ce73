import { chooseBrowser } from './chooseBrowser.ts';
import { newFinisher } from './finisher.ts';
import { PRINTABLE_LANGS, hasFontOf, letterCoverage, scriptOf } from './fonts.ts';
import { refuseForeignLetters } from './letters.ts';
import { measureTab } from './measure.ts';
import { readContent } from './pageStream.ts';
import { openPdf, writePdf } from './pdfFile.ts';
import { picturePages } from './picturePages.ts';
import { openPress } from './press.ts';
import type { Press } from './press.ts';
import { fixDates } from './sameBytes.ts';
import { printTab, showDocument, showPictures } from './tab.ts';
import type { ChosenBrowser, PictureSheet, PrintDocument, Printer, PrintPicture } from './types.ts';

export interface PrinterOptions {
  /** The browser; left out, `chooseBrowser` finds one. */
  readonly browser?: ChosenBrowser;
  /** Languages whose fonts are loaded, BCP 47; left out, all scripts that have a font. */
  readonly langs?: readonly string[];
  /** Longest wait for one answer of the browser, ms. */
  readonly timeout?: number;
}

/** Pictures printed at once: a browser's memory grows with the pages of one print (600 took 2.6 GB). */
const PICTURES_PER_SHEET = 48;

/**
 * Opens a printer: a browser with one tab that has the fonts loaded. Calls wait for one another.
 * Close it when done.
 */
export async function openPrinter({ browser, langs = PRINTABLE_LANGS, timeout = 120_000 }: PrinterOptions = {}): Promise<Printer> {
  const chosen = browser ?? await chooseBrowser();
  const press = await openPress(chosen, langs, timeout);
  const covered = letterCoverage(langs);
  const finisher = newFinisher();
  const begun = new WeakMap<PrintPicture, BegunSheet>();
  const begunOf = (some: readonly PrintPicture[]): Promise<PictureSheet> | null => {
    const found = some[0] && begun.get(some[0]);
    return found?.pictures.length === some.length && found.pictures.every((each, index) => each === some[index]) ? found.sheet : null;
  };
  const printedPages: Printer['pages'] = (doc) => {
    refuseUnloaded(doc, langs);
    return press.run(async (tab, wait) => {
      const shown = await showDocument(tab, doc, langs);
      return { shown, words: await printTab(tab, 'words', wait) };
    });
  };
  return {
    browser: { path: chosen.path, how: chosen.how },
    ahead(first) {
      for (const some of inSheets(first)) {
        if (some[0] === undefined || some.length < PICTURES_PER_SHEET || begunOf(some) !== null) continue;
        const sheet = printSheet(press, some);
        sheet.catch(() => undefined);
        begun.set(some[0], { pictures: some, sheet });
      }
    },
    async pictures(list) {
      refuseTwins(list);
      // One sheet is printed while another is read.
      return { sheets: await Promise.all(inSheets(list).map((some) => begunOf(some) ?? printSheet(press, some))) };
    },
    pages: async (doc) => printedPages(doc),
    document: async (doc, book) => {
      const [bytes] = await finisher({ printed: await printedPages(doc), doc, book, copies: [doc] });
      if (bytes === undefined) throw new Error(`document “${doc.id}” was not finished`);
      return bytes;
    },
    async measure(doc) {
      refuseUnloaded(doc, langs);
      return press.run(async (tab) => {
        await showDocument(tab, doc, langs);
        return measureTab(tab, doc, covered);
      });
    },
    close: () => press.close(),
  };
}

/** A sheet that is printed before all pictures of its list are known. */
interface BegunSheet {
  readonly pictures: readonly PrintPicture[];
  readonly sheet: Promise<PictureSheet>;
}

async function printSheet(press: Press, pictures: readonly PrintPicture[]): Promise<PictureSheet> {
  const pages = picturePages(pictures);
  const printed = await press.run(async (tab, wait) => {
    await showPictures(tab, pages);
    return printTab(tab, 'pictures', wait);
  });
  const pdf = await openPdf(printed);
  if (pdf.getPageCount() !== pictures.length) throw new Error(`${pictures.length} pictures came out on ${pdf.getPageCount()} pages`);
  pictures.forEach(({ id }, index) => {
    const page = pdf.getPage(index);
    refuseForeignLetters(page, readContent(page), `picture “${id}”`);
  });
  fixDates(pdf);
  return {
    pdf: await writePdf(pdf),
    pictures: pictures.map(({ id, width, height }) => ({ id, width, height })),
  };
}

function inSheets(list: readonly PrintPicture[]): readonly (readonly PrintPicture[])[] {
  const count = Math.ceil(list.length / PICTURES_PER_SHEET);
  return Array.from({ length: count }, (_, index) => list.slice(index * PICTURES_PER_SHEET, (index + 1) * PICTURES_PER_SHEET));
}

function refuseUnloaded({ id, lang }: PrintDocument, langs: readonly string[]): void {
  if (hasFontOf(lang, langs)) return;
  throw new Error(`document “${id}”: its language “${lang}” is written in the script ${scriptOf(lang)}, for which this printer has no font; it was opened for ${langs.join(', ')}`);
}

function refuseTwins(list: readonly PrintPicture[]): void {
  const seen = new Set<string>();
  for (const { id } of list) {
    if (seen.has(id)) throw new Error(`two pictures have the id “${id}”; each needs its own`);
    seen.add(id);
  }
}
