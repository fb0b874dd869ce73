import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages, type Edition } from '../../../src/booklet/pages/index.ts';
import { openPrinter, picturePlace, type PictureBook, type PrintDocument, type Printer } from '../../../src/booklet/print/index.ts';
import { pictureId } from '../../../src/draw/index.ts';
import { rackInput, rackPlan } from './rack-booklet.ts';

let printer: Printer;
let book: PictureBook;

beforeAll(async () => {
  printer = await openPrinter();
  book = await printer.pictures(rackInput().pictures.map(({ of, width, height }) => ({
    id: pictureId(of), width, height, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><path d="M1 1H${width - 1}V${height - 1}H1z" fill="none" stroke="#000" stroke-width="0.5"/></svg>`,
  })));
});

afterAll(() => printer.close());

function documentOf(lang: string, edition: Edition, plan = rackPlan): { doc: PrintDocument; pageCount: number } {
  const { html, css, dir, title, pageCount } = bookletPages({ ...rackInput({ lang, edition }), plan, placePicture: picturePlace });
  return { doc: { id: `${lang}-${edition}`, html, css, lang, dir, title, paper: 'a4', contentMark: '3f9c1a7e' }, pageCount };
}

describe.each([['en', 'words'], ['fr', 'words'], ['ar', 'words'], ['ar', 'pictures']] as const)('the printed booklet in %s, %s', (lang, edition) => {
  it('has nothing cut off, no foreign letter, and all its pages', async () => {
    const { doc, pageCount } = documentOf(lang, edition);
    expect(await printer.measure(doc)).toEqual([]);
    const pdf = await PDFDocument.load(await printer.document(doc, book), { updateMetadata: false });
    expect(pdf.getPageCount()).toBe(pageCount);
    expect(pdf.getTitle()).toBe(doc.title);
  });
});

describe.each([['en', 'pictures'], ['my', 'words']] as const)('the last checks in %s, %s', (lang, edition) => {
  it('break the numbers of many scattered steps into lines', async () => {
    const [first, second] = rackPlan.steps.flatMap(({ check }) => check ?? []);
    if (!first || !second) throw new Error('no checks');
    const steps = rackPlan.steps.map((step): (typeof rackPlan.steps)[number] => ({ ...step, check: step.number % 2 === 1 ? first : second }));
    const { doc, pageCount } = documentOf(lang, edition, { ...rackPlan, steps });
    expect(await printer.measure(doc)).toEqual([]);
    expect((await PDFDocument.load(await printer.document(doc, book), { updateMetadata: false })).getPageCount()).toBe(pageCount);
  });
});
