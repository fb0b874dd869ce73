import type { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { common, PAPERS } from '../../../src/booklet/papers/index.ts';
import { newFinisher, openPrinter, type PictureBook, type PrintDocument, type Printer } from '../../../src/booklet/print/index.ts';
import { allDicts, key, pageContent, readPdf } from './readPdf.ts';
import { arabicBooklet, samplePictures } from './samples.ts';

const MM = 72 / 25.4;

let printer: Printer;
let book: PictureBook;
beforeAll(async () => {
  printer = await openPrinter();
  book = await printer.pictures(samplePictures(3));
});
afterAll(() => printer.close());

const laidOnce = (paper: 'a4' | 'letter'): PrintDocument => ({ ...arabicBooklet(3), id: `sample-${paper}`, paper, field: common });
const boxesOf = (pdf: PDFDocument): readonly Record<'x' | 'y' | 'width' | 'height', number>[] => pdf.getPages().map((page) => page.getMediaBox());
/** All that a file has but its pages' boxes and its own name. */
const restOf = (pdf: PDFDocument): readonly string[] => [
  ...pdf.getPages().map((page) => pageContent(page)),
  ...allDicts(pdf).map((dict) => { const copy = dict.clone(); copy.delete(key('MediaBox')); return copy.toString(); }),
];

describe('pages that are laid out once for several papers', () => {
  it('are the same bytes on a paper whatever was written before on another', async () => {
    const doc = laidOnce('a4');
    const together = await newFinisher()({ printed: await printer.pages(doc), doc, book, copies: [laidOnce('letter'), doc, laidOnce('letter')] });
    const alone = [await printer.document(laidOnce('letter'), book), await printer.document(laidOnce('a4'), book)];
    expect(together.map((bytes) => Buffer.from(bytes).equals(alone[0] ?? Buffer.alloc(0)))).toEqual([true, false, true]);
    expect(Buffer.from(together[1] ?? []).equals(alone[1] ?? Buffer.alloc(0))).toBe(true);
  });

  it('are finished by one finisher with the pictures of the book that is given each time, a copy of a known one too', async () => {
    const doc = laidOnce('a4');
    const printed = await printer.pages(doc);
    const other = await printer.pictures(samplePictures(4).slice(0, 3).map((picture, index) => ({ ...picture, id: samplePictures(3)[index]?.id ?? '', svg: picture.svg.replace('</svg>', '<path d="M1 1h9v9z"/></svg>') })));
    const finish = newFinisher();
    const byBook = async (given: PictureBook): Promise<string> => Buffer.from((await finish({ printed, doc, book: given, copies: [doc] }))[0] ?? []).toString('latin1');
    const [first, changed, copied] = [await byBook(book), await byBook(other), await byBook(structuredClone(book))];
    expect(copied).toBe(first);
    expect(changed).not.toBe(first);
    expect(changed).toBe(Buffer.from(await printer.document(doc, other)).toString('latin1'));
  });

  // ISO 216 and ANSI/ASME Y14.1 have the sizes (M); a viewer tells a paper from half a millimetre or so.
  it.each([['a4', 210, 297], ['letter', 215.9, 279.4]] as const)('stand in the middle of %s', async (paper, width, height) => {
    const pdf = await readPdf(await printer.document(laidOnce(paper), book));
    expect(pdf.getPageCount()).toBe(3);
    for (const box of boxesOf(pdf)) {
      expect(Math.abs(box.width - width * MM)).toBeLessThan(0.1);
      expect(Math.abs(box.height - height * MM)).toBeLessThan(0.1);
      // The field's own corner is 0, 0: as much white on one side of it as on the other, but for the browser's whole pixels.
      expect(Math.abs(box.x + (width - common.width) / 2 * MM)).toBeLessThan(0.4);
      expect(Math.abs(box.y + (height - common.height) / 2 * MM)).toBeLessThan(0.4);
    }
  });

  it('differ by nothing but the boxes of their pages and the name of the file', async () => {
    const [a4, letter] = [await readPdf(await printer.document(laidOnce('a4'), book)), await readPdf(await printer.document(laidOnce('letter'), book))];
    expect(restOf(letter)).toEqual(restOf(a4));
    expect(boxesOf(letter)).not.toEqual(boxesOf(a4));
  });

  it('are held by every full paper', () => {
    for (const { width, height } of [PAPERS.a4, PAPERS.letter]) {
      expect(common.width).toBeLessThanOrEqual(width);
      expect(common.height).toBeLessThanOrEqual(height);
    }
  });
});
