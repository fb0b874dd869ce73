import { createHash } from 'node:crypto';
import { PDFDocument, PDFName, PDFString } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chooseBrowser, openPrinter } from '../../../src/booklet/print/index.ts';
import type { PictureBook, PrintDocument, Printer } from '../../../src/booklet/print/index.ts';
import { openPress } from '../../../src/booklet/print/press.ts';
import { renumberNodes } from '../../../src/booklet/print/sameBytes.ts';
import { SLOWEST } from '../../support/waiting.ts';
import { arabicBooklet, englishBooklet, samplePictures } from './samples.ts';

const DOCUMENTS: readonly PrintDocument[] = [
  englishBooklet(3), arabicBooklet(3), { ...englishBooklet(2), id: 'short', paper: 'letter' },
  { ...englishBooklet(1), id: 'rack-fr', lang: 'fr', title: 'Étagère' },
];
const sha = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

async function printAll(printer: Printer, documents: readonly PrintDocument[], book: PictureBook): Promise<Record<string, string>> {
  const hashes: Record<string, string> = {};
  for (const doc of documents) hashes[doc.id] = sha(await printer.document(doc, book));
  return hashes;
}

describe('the same input gives the same bytes', () => {
  let one: Printer;
  let two: Printer;
  beforeAll(async () => { [one, two] = [await openPrinter(), await openPrinter()]; });
  afterAll(async () => { await one.close(); await two.close(); });

  it('in another browser, in another order, and after other work', async () => {
    const book = await one.pictures(samplePictures(3));
    const first = await printAll(one, DOCUMENTS, book);
    expect(new Set(Object.values(first)).size).toBe(DOCUMENTS.length);

    for (const doc of DOCUMENTS) await two.measure(doc);
    const twin = await two.pictures(samplePictures(3));
    expect(twin.sheets.map(({ pdf }) => sha(pdf))).toEqual(book.sheets.map(({ pdf }) => sha(pdf)));
    expect(await printAll(two, [...DOCUMENTS].reverse(), twin)).toEqual(first);
    expect(await printAll(one, DOCUMENTS.slice(1), book)).toEqual(await printAll(two, DOCUMENTS.slice(1), twin));
  });

  it('when all are asked for at once', async () => {
    const book = await one.pictures(samplePictures(3));
    const together = await Promise.all(DOCUMENTS.map(async (doc) => [doc.id, sha(await one.document(doc, book))] as const));
    expect(Object.fromEntries(together)).toEqual(await printAll(two, DOCUMENTS, book));
  });

  it('where cells point to the heads of their columns, printed twice and after other tables', async () => {
    const cells = (row: number): string => ['a', 'b', 'c'].map((letter) => `<td headers="${letter} r${row}">${row}</td>`).join('');
    const rows = Array.from({ length: 60 }, (_, row) => `<tr><th id="r${row}" scope="row">${row}</th>${cells(row)}</tr>`).join('');
    const table = `<h1>Cuts</h1><table><tr><th></th><th id="a">A</th><th id="b">B</th><th id="c">C</th></tr>${rows}</table>`;
    const doc: PrintDocument = { ...englishBooklet(1), id: 'tables', html: `${table}<p>and</p>${table.replaceAll('"a', '"x')}` };
    const none: PictureBook = { sheets: [] };
    const hashes = [sha(await one.document(doc, none)), sha(await one.document(doc, none)), sha(await two.document(doc, none))];
    expect(new Set(hashes).size).toBe(1);
  });

  it('numbers elements in the order of the file, and sorts the tree that finds them by name', async () => {
    const tangled = async (numbers: readonly number[]): Promise<readonly string[]> => {
      const pdf = await PDFDocument.create();
      pdf.addPage();
      const ids = numbers.map((number) => PDFString.of(`node${String(number).padStart(8, '0')}`));
      const elements = ids.map((ID) => pdf.context.register(pdf.context.obj({ Type: 'StructElem', ID })));
      const pairs = ids.map((id, index) => ({ id, ref: elements[index] })).sort((a, b) => (a.id.asString() < b.id.asString() ? -1 : 1));
      const leaf = pdf.context.register(pdf.context.obj({ Names: pairs.flatMap(({ id, ref }) => [id, ref ?? id]), Limits: [pairs[0]?.id ?? '', pairs.at(-1)?.id ?? ''] }));
      pdf.catalog.set(PDFName.of('StructTreeRoot'), pdf.context.obj({ IDTree: { Kids: [leaf] } }));
      renumberNodes(pdf);
      return [...elements, leaf].map((ref) => String(pdf.context.lookup(ref)));
    };
    const [straight, crossed] = [await tangled([4, 7, 9]), await tangled([12, 3, 8])];
    expect(crossed).toEqual(straight);
    expect(straight[3]).toContain('(node00000001)');
    expect(straight[3]).toMatch(/Limits \[ \(node00000001\) \(node00000003\) \]/);
  });

  it('from a picture book that was stored and read back', async () => {
    const book = await one.pictures(samplePictures(3));
    const stored = JSON.stringify(book.sheets.map(({ pdf, pictures }) => ({ pdf: Buffer.from(pdf).toString('base64'), pictures })));
    const sheets = (JSON.parse(stored) as { pdf: string; pictures: PictureBook['sheets'][number]['pictures'] }[])
      .map(({ pdf, pictures }) => ({ pdf: new Uint8Array(Buffer.from(pdf, 'base64')), pictures }));
    expect(await printAll(two, DOCUMENTS, { sheets })).toEqual(await printAll(one, DOCUMENTS, book));
  });
});

it('a browser that dies is started again and the work done', async () => {
  const press = await openPress(await chooseBrowser(), ['en'], SLOWEST);
  try {
    let tries = 0;
    const title = await press.run(async (tab) => {
      tries += 1;
      if (tries === 1) tab.browser().process()?.kill('SIGKILL');
      return tab.evaluate(() => document.fonts.size);
    });
    expect([tries, title]).toEqual([2, 6]);
    await expect(press.run(() => Promise.reject(new Error('not the browser’s fault')))).rejects.toThrow('not the browser’s fault');
  } finally {
    await press.close();
  }
});
