import { browserMark, chooseBrowser, glyphPrints, newFinisher, openPrinter, type Finisher, type PictureBook, type PrintDocument, type PrintedCopy, type PrintPicture, type Printer, type Publication } from '../booklet/index.ts';
import { keepContent, keptContent, keptLater, nothingKept, readData, writeData, type Keep } from '../keep/index.ts';
import { newPrintedOnce } from './printed-once.ts';

/** A printer that prints each set of pictures once, and nothing that was printed before. */
export interface Press {
  /** Pictures will have to be printed, of which these are the first: starts the browser meanwhile, and prints those that fill sheets. Should it fail, that shows when all are printed. */
  readonly soon: (first: readonly PrintPicture[]) => void;
  /** Before the first of these copies is written: starts the browser and prints the pictures, where one of each set has to be printed. */
  readonly prepare: (copies: readonly PrintedCopy[]) => Promise<void>;
  readonly print: (copy: PrintedCopy) => Promise<Uint8Array>;
  readonly close: () => Promise<void>;
}

/** Where one of the publications is printed, the browser is chosen before anything is written, but started only when there is something to print. */
export async function openPress(publications: readonly Publication[], keep: Keep, finish: Finisher = newFinisher()): Promise<Press> {
  const fonts = publications.flatMap(({ needs }) => needs.fonts ?? []);
  if (fonts.length === 0) return noPress;
  const langs = fonts.includes('all') ? 'all' : 'latin';
  const browser = await chooseBrowser();
  const madeBy = [browserMark(browser), langs];
  let opened: Promise<Printer> | null = null;
  const printer = (): Promise<Printer> => opened ??= openPrinter(langs === 'all' ? { browser } : { browser, langs: ['en'] });
  const books = new WeakMap<readonly PrintPicture[], Promise<PictureBook>>();
  const marks = new WeakMap<readonly PrintPicture[], string>();

  const markOf = (pictures: readonly PrintPicture[]): string => {
    if (keep === nothingKept) return '';
    const mark = marks.get(pictures) ?? keep.key('pictures printed', madeBy, pictures.map(({ id, svg, width, height }) => [id, svg, width, height]));
    marks.set(pictures, mark);
    return mark;
  };
  const bookOf = (pictures: readonly PrintPicture[]): Promise<PictureBook> => {
    if (pictures.length === 0) return Promise.resolve({ sheets: [] });
    const book = books.get(pictures) ?? keptLater(keep, markOf(pictures), async () => (await printer()).pictures(pictures));
    books.set(pictures, book);
    return book;
  };
  const printed = newPrintedOnce<FinishedCopies>();
  const documents = new WeakMap<PrintedCopy, Keyed>();
  const keyed = (copy: PrintedCopy): Keyed => {
    const found = documents.get(copy) ?? newKeyed(copy);
    documents.set(copy, found);
    return found;
  };
  const newKeyed = ({ document, pictures, glyphs = NO_GLYPHS }: PrintedCopy): Keyed => {
    const made = document();
    return { made, key: keep === nothingKept ? '' : keep.key('document printed', madeBy, made, markOf(pictures), markOf(glyphs)) };
  };
  const finishedCopies = async (made: PrintDocument, { pictures, glyphs = NO_GLYPHS, sharing }: PrintedCopy): Promise<FinishedCopies> => {
    const books = await Promise.all([bookOf(pictures), bookOf(glyphs)]);
    const { html, css, ...doc } = made;
    const copies = sharing?.copies ?? [{ id: doc.id, paper: doc.paper }];
    const finished = await finish({ printed: await (await printer()).pages({ ...doc, html, css }), doc, book: { sheets: books.flatMap(({ sheets }) => sheets) }, copies });
    return new Map(copies.flatMap(({ id }, index) => { const bytes = finished[index]; return bytes === undefined ? [] : [[id, bytes]]; }));
  };
  return {
    soon: (first) => {
      printer().then((each) => { each.ahead(first); }).catch(() => undefined);
      bookOf(glyphPrints()).catch(() => undefined);
    },
    prepare: async (copies) => {
      for (const pictures of new Set(copies.map((copy) => copy.pictures))) {
        const first = copies.find((copy) => copy.pictures === pictures);
        if (books.has(pictures) || first === undefined || (keep !== nothingKept && keptPrint(keep, keyed(first).key) !== null)) continue;
        await Promise.all([bookOf(pictures), bookOf(first.glyphs ?? NO_GLYPHS)]);
      }
    },
    print: async (copy) => {
      const { made, key } = keyed(copy);
      documents.delete(copy);
      const kept = keptPrint(keep, key);
      const bytes = kept ?? (await printed.of(copy.sharing ?? null, () => finishedCopies(made, copy))).get(made.id);
      if (bytes === undefined) throw new Error(`${copy.file}: its pages were finished for other copies, not for “${made.id}”`);
      printed.done(copy.sharing ?? null);
      if (kept === null) writeData(keep, key, keepContent(keep, bytes));
      return bytes;
    },
    close: async () => { if (opened !== null) await opened.then((each) => each.close(), () => undefined); },
  };
}

const NO_GLYPHS: readonly PrintPicture[] = [];

/** What copies that share their pages came to, each by its id. */
type FinishedCopies = ReadonlyMap<string, Uint8Array>;

/** A copy's document, and the key of its print. */
interface Keyed { readonly made: PrintDocument; readonly key: string }

function keptPrint(keep: Keep, key: string): Uint8Array | null {
  const hash = readData<string>(keep, key);
  return hash === null ? null : keptContent(keep, hash);
}

/** Where nothing is printed no browser is started. */
const noPress: Press = {
  soon: () => undefined,
  prepare: () => Promise.resolve(),
  print: ({ file }) => Promise.reject(new RangeError(`${file} is printed, but no publication needs fonts`)),
  close: () => Promise.resolve(),
};
