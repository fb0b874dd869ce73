import { PDFArray, PDFDict, PDFDocument, PDFName, PDFNumber, PDFRawStream } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPrinter, type PrintDocument, type Printer } from '../../../src/booklet/print/index.ts';
import { stitched, stitchedSheets } from '../../../src/booklet/stitch/index.ts';
import { hasPoppler, renderPage } from '../print/poppler.ts';
import { decoded, dictAt, dictsWith, infoText, key, outline, pageContent, readPdf, textOf } from '../print/readPdf.ts';
import { place, samplePictures } from '../print/samples.ts';

const PAGES = 14;
const number = (page: number, dir: 'ltr' | 'rtl'): string => (dir === 'ltr' ? `Page ${page}` : `صفحة ${page}`);

const booklet = (dir: 'ltr' | 'rtl'): PrintDocument => ({
  id: `small-${dir}`, lang: dir === 'ltr' ? 'en' : 'ar', dir, title: 'Small', paper: 'a5', contentMark: 'm',
  css: '@page { margin: 0 } section { box-sizing: border-box; width: 148mm; height: 209.8mm; padding: 10mm; break-after: page } svg { width: 75mm; height: 40mm }',
  html: Array.from({ length: PAGES }, (_, index) => `<section><h1>${number(index + 1, dir)}</h1>${index === 4 ? place(0, 'A deck').replace(/width="150mm" height="80mm"/, 'width="75mm" height="40mm"') : ''}</section>`).join(''),
});

let printer: Printer;
const flat: Record<string, Uint8Array> = {};
const sheets: Record<string, Uint8Array> = {};
const pdfs: Record<string, PDFDocument> = {};

beforeAll(async () => {
  printer = await openPrinter();
  const book = await printer.pictures(samplePictures(1));
  for (const dir of ['ltr', 'rtl'] as const) {
    const bytes = await printer.document(booklet(dir), book);
    flat[dir] = bytes;
    sheets[dir] = await stitched(bytes, { paper: 'a5', dir });
    pdfs[dir] = await readPdf(sheets[dir]);
  }
});
afterAll(() => printer.close());

const at = <T>(record: Readonly<Record<string, T>>, name: string): T => {
  const found = record[name];
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

/** The forms that a side draws, from left to right: x in points, and which page's form by its StructParents. */
function drawn(pdf: PDFDocument, side: number): readonly { readonly x: number; readonly page: number }[] {
  const page = pdf.getPage(side);
  const forms = page.node.lookup(key('Resources'), PDFDict).lookup(key('XObject'), PDFDict);
  return [...pageContent(page).matchAll(/q 1 0 0 1 (\S+) (\S+) cm \/(\w+) Do Q/g)].map((match) => {
    const form = forms.lookup(PDFName.of(match[3] ?? ''));
    if (!(form instanceof PDFRawStream)) throw new Error('no form');
    return { x: Number(match[1]), page: form.dict.lookup(key('StructParents'), PDFNumber).asNumber() + 1 };
  }).sort((one, other) => one.x - other.x);
}

describe.each(['ltr', 'rtl'] as const)('a stitched booklet, %s', (dir) => {
  it('has two sides a sheet, of lying A4, with the pages that folding asks for', () => {
    const pdf = at(pdfs, dir);
    const wanted = stitchedSheets(PAGES, dir).flatMap(({ front, back }) => [front, back]);
    expect(pdf.getPageCount()).toBe(8);
    expect(pdf.getPages().map((_, side) => drawn(pdf, side).map(({ page }) => page))).toEqual(wanted.map(({ left, right }) => [left, right].filter((leaf) => leaf !== null)));
    // ISO 216: A4 is 210 × 297 mm.
    for (const page of pdf.getPages()) expect([page.getWidth(), page.getHeight()].map((points) => Math.round((points / 72) * 254) / 10)).toEqual([297, 210]);
  });

  it('moves the pages of inner sheets towards the fold', () => {
    const pdf = at(pdfs, dir);
    // By hand: four sheets, the innermost three thicknesses of 0.1 mm nearer; 0.3 mm are 0.85 points.
    const [left, right] = [drawn(pdf, 6)[0], drawn(pdf, 6)[1]];
    const [outer, outerRight] = [drawn(pdf, 0)[0], drawn(pdf, 0)[1]];
    expect((left?.x ?? 0) - (outer?.x ?? 0)).toBeCloseTo((0.3 / 25.4) * 72, 2);
    expect((outerRight?.x ?? 0) - (right?.x ?? 0)).toBeCloseTo((0.3 / 25.4) * 72, 2);
  });

  // ISO 32000-1, 12.2.
  it('asks to be printed true to size on both sides, turned over the short edge', () => {
    const preferences = dictAt(at(pdfs, dir).catalog, 'ViewerPreferences');
    expect(preferences.lookup(key('PrintScaling'))).toBe(key('None'));
    expect(preferences.lookup(key('Duplex'))).toBe(key('DuplexFlipShortEdge'));
    expect(preferences.lookup(key('Direction'))).toBe(key(dir === 'rtl' ? 'R2L' : 'L2R'));
  });

  it('keeps title, language and the outline, each entry on the side where its page lies', () => {
    const pdf = at(pdfs, dir);
    expect(infoText(pdf, 'Title')).toBe('Small');
    expect(textOf(pdf.catalog.lookup(key('Lang')))).toBe(dir === 'ltr' ? 'en' : 'ar');
    expect(outline(pdf).map(([, title]) => title)).toEqual(Array.from({ length: PAGES }, (_, index) => number(index + 1, dir)));
    const sides = pdf.getPages().map(({ ref }) => ref);
    const targets = [...entries(pdf)].map((entry) => sides.findIndex((ref) => ref === entry.lookup(key('Dest'), PDFArray).get(0)));
    expect(targets).toEqual(Array.from({ length: PAGES }, (_, index) => pdf.getPages().findIndex((_page, side) => drawn(pdf, side).some(({ page }) => page === index + 1))));
  });

  // ISO 32000-1, 14.7.4.2: marked content of a form is named by a reference with the form as its stream.
  it('keeps the tags in reading order: each piece of content is in the form that is named', () => {
    const pdf = at(pdfs, dir);
    const pieces = [...readOrder(pdf)].flatMap(piecesOf);
    expect(pieces.length).toBeGreaterThan(PAGES);
    for (const piece of pieces) {
      const form = piece.lookup(key('Stm'));
      const side = pdf.getPages().find(({ ref }) => ref === piece.get(key('Pg')));
      expect(decoded(form)).toContain(`/MCID ${piece.lookup(key('MCID'), PDFNumber).asNumber()} `);
      expect(side?.node.lookup(key('Resources'), PDFDict).lookup(key('XObject'), PDFDict).values()).toContain(piece.get(key('Stm')));
    }
    const headings = [...readOrder(pdf)].filter((element) => element.lookup(key('S')) === key('H1'));
    const forms = headings.map((heading) => formsIn(pdf, heading)[0]);
    expect(forms).toEqual(Array.from({ length: PAGES }, (_, index) => index));
  });

  it('moves the place of a picture with its page', () => {
    const boxOf = (pdf: PDFDocument): readonly number[] =>
      dictsWith(pdf, 'S', 'Figure').flatMap((figure) => dictAt(figure, 'A').lookup(key('BBox'), PDFArray).asArray().map((value) => (value instanceof PDFNumber ? value.asNumber() : NaN)));
    const pdf = at(pdfs, dir);
    const side = pdf.getPages().findIndex((_, index) => drawn(pdf, index).some(({ page }) => page === 5));
    const x = drawn(pdf, side).find(({ page }) => page === 5)?.x ?? NaN;
    return readPdf(at(flat, dir)).then((before) => {
      expect(boxOf(pdf)[0]).toBeCloseTo((boxOf(before)[0] ?? NaN) + x, 1);
      expect((boxOf(pdf)[2] ?? NaN) - (boxOf(pdf)[0] ?? NaN)).toBeCloseTo((75 / 25.4) * 72, 0);
    });
  });

  it('is the same bytes each time, and others with another paper thickness', async () => {
    const bytes = at(flat, dir);
    expect(await stitched(bytes, { paper: 'a5', dir })).toEqual(at(sheets, dir));
    expect(await stitched(bytes, { paper: 'a5', dir, thickness: 0.2 })).not.toEqual(at(sheets, dir));
  });

  it.skipIf(!hasPoppler)('prints each page where it did, seen by a second reader', () => {
    // The cover at 72 dpi beside the fold of the first side: the same pixels as on the page alone, but for half a pixel's shift.
    const [page, side] = [renderPage(at(flat, dir), 72), renderPage(at(sheets, dir), 72)];
    const ink = ({ pixels, width, height }: typeof page, from: number, to: number): number => {
      let sum = 0;
      for (let y = 12; y < height - 12; y += 1) for (let x = from; x < to; x += 1) sum += 255 - (pixels[y * width + x] ?? 255);
      return sum;
    };
    const half = Math.floor(side.width / 2);
    const [from, to] = dir === 'ltr' ? [half + 8, side.width] : [0, half - 8];
    expect(ink(page, 0, page.width)).toBeGreaterThan(1000);
    expect(ink(side, from, to) / ink(page, 0, page.width)).toBeCloseTo(1, 1);
  });
});

function* entries(pdf: PDFDocument): Generator<PDFDict> {
  const from = dictAt(pdf.catalog, 'Outlines');
  for (let entry = from.lookupMaybe(key('First'), PDFDict); entry; entry = entry.lookupMaybe(key('Next'), PDFDict)) yield entry;
}

function* readOrder(pdf: PDFDocument, element: PDFDict = dictAt(pdf.catalog, 'StructTreeRoot')): Generator<PDFDict> {
  yield element;
  const kids = element.lookup(key('K'));
  for (const kid of kids instanceof PDFArray ? kids.asArray() : kids ? [kids] : []) {
    const child = pdf.context.lookup(kid);
    if (child instanceof PDFDict && child.has(key('S'))) yield* readOrder(pdf, child);
  }
}

/** The references to marked content that are an element's own; a bare number would be content of the page itself. */
function piecesOf(element: PDFDict): readonly PDFDict[] {
  const kids = element.lookup(key('K'));
  const own = kids instanceof PDFArray ? kids.asArray().map((kid) => element.context.lookup(kid)) : [kids];
  expect(own.filter((kid) => kid instanceof PDFNumber)).toEqual([]);
  return own.flatMap((kid) => (kid instanceof PDFDict && kid.lookup(key('Type')) === key('MCR') ? [kid] : []));
}

/** The pages, from 0, whose forms hold an element's content. */
function formsIn(pdf: PDFDocument, element: PDFDict): readonly number[] {
  return [...readOrder(pdf, element)].flatMap(piecesOf).flatMap((piece) => {
    const form = piece.lookup(key('Stm'));
    return form instanceof PDFRawStream ? [form.dict.lookup(key('StructParents'), PDFNumber).asNumber()] : [];
  });
}
