import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFRawStream } from 'pdf-lib';
import type { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPrinter, picturePlace } from '../../../src/booklet/print/index.ts';
import type { PictureBook, PrintDocument, Printer } from '../../../src/booklet/print/index.ts';
import { hasPoppler, poppler, renderPage } from './poppler.ts';
import { allDicts, decoded, dictAt, dictsWith, infoText, key, outline, ownerOf, pageContent, readPdf, scaleAt, textOf } from './readPdf.ts';
import { arabicBooklet, englishBooklet, heavyPicture, place, samplePictures } from './samples.ts';

let printer: Printer;
let book: PictureBook;
let english: Uint8Array;
let arabic: Uint8Array;
let en: PDFDocument;
let ar: PDFDocument;

beforeAll(async () => {
  printer = await openPrinter();
  book = await printer.pictures(samplePictures(3));
  english = await printer.document(englishBooklet(3), book);
  arabic = await printer.document(arabicBooklet(3), book);
  [en, ar] = [await readPdf(english), await readPdf(arabic)];
});
afterAll(() => printer.close());

const plain = (more: Partial<PrintDocument>): PrintDocument => ({
  id: 'plain', lang: 'en', dir: 'ltr', title: 'Plain', paper: 'a4', contentMark: 'm', css: '', html: '<p>x</p>', ...more,
});

// ISO 32000-1 gives the keys; PDF/UA-1 (ISO 14289-1, from memory: 7.1 title shown, 7.2 language, 7.3 alternative text) wants them.
describe('the tagged PDF', () => {
  it('states language, title, subject and that it is tagged', () => {
    expect(textOf(en.catalog.lookup(key('Lang')))).toBe('en');
    expect(textOf(ar.catalog.lookup(key('Lang')))).toBe('ar');
    expect(infoText(en, 'Title')).toBe('Shelf rack');
    expect(infoText(ar, 'Title')).toBe('رف');
    expect(infoText(en, 'Subject')).toBe('Assembly');
    expect(infoText(en, 'ContentMark')).toBe('mark-1');
    expect(dictAt(en.catalog, 'MarkInfo').lookup(key('Marked'))?.toString()).toBe('true');
    expect(dictAt(en.catalog, 'StructTreeRoot', 'K').lookup(key('S'))).toBe(key('Document'));
  });

  it('reads from right to left where the document does, shows its title and asks for true size', () => {
    expect(dictAt(ar.catalog, 'ViewerPreferences').lookup(key('Direction'))).toBe(key('R2L'));
    expect(dictAt(en.catalog, 'ViewerPreferences').lookup(key('Direction'))).toBe(key('L2R'));
    for (const pdf of [en, ar]) {
      expect(dictAt(pdf.catalog, 'ViewerPreferences').lookup(key('DisplayDocTitle'))?.toString()).toBe('true');
      expect(dictAt(pdf.catalog, 'ViewerPreferences').lookup(key('PrintScaling'))).toBe(key('None'));
    }
  });

  it('has one Figure with its words for each place', () => {
    expect(dictsWith(en, 'S', 'Figure').map((figure) => textOf(figure.lookup(key('Alt'))))).toEqual([1, 2, 3].map((step) => `Deck ${step} under the frame`));
    expect(dictsWith(ar, 'S', 'Figure').map((figure) => textOf(figure.lookup(key('Alt'))))).toEqual(['اللوح تحت الإطار', 'اللوح تحت الإطار', 'اللوح تحت الإطار']);
  });

  it('draws each picture inside the marked content of its own Figure', () => {
    en.getPages().forEach((page, index) => {
      const [, mcid, operators = ''] = /\/Figure <<\/MCID (\d+) >>BDC([\s\S]*?)EMC/.exec(pageContent(page)) ?? [];
      expect(operators).toMatch(/\/Picture1 Do/);
      expect(textOf(ownerOf(en, page, Number(mcid)).lookup(key('Alt')))).toBe(`Deck ${index + 1} under the frame`);
    });
  });

  it('names an owner in the parent tree for all marked content, and the owner names it back', () => {
    for (const pdf of [en, ar]) {
      for (const page of pdf.getPages()) {
        const mcids = [...pageContent(page).matchAll(/\/MCID (\d+)/g)].map((match) => Number(match[1]));
        expect(mcids.length).toBeGreaterThan(3);
        for (const mcid of mcids) {
          const owner = ownerOf(pdf, page, mcid);
          const kids = owner.lookup(key('K'));
          const numbers = (kids instanceof PDFArray ? kids.asArray() : [kids]).map((kid) => (kid instanceof PDFNumber ? kid.asNumber() : undefined));
          expect(numbers).toContain(mcid);
          expect(owner.get(key('Pg'))).toBe(page.ref);
        }
      }
    }
  });

  it('notes where each Figure stands: 150 × 80 mm, 15 mm from the left', () => {
    for (const figure of dictsWith(en, 'S', 'Figure')) {
      const [left = 0, bottom = 0, right = 0, top = 0] = dictAt(figure, 'A').lookup(key('BBox'), PDFArray).asArray().map((number) => Number(number.toString()));
      const mm = (points: number): number => (points / 72) * 25.4;
      // The browser rounds margins to whole CSS pixels, 0.26 mm.
      expect(Math.abs(mm(left) - 15)).toBeLessThan(0.14);
      expect(mm(right - left)).toBeCloseTo(150, 1);
      expect(mm(top - bottom)).toBeCloseTo(80, 1);
    }
  });

  it('has an outline of its headings', () => {
    expect(outline(en)).toEqual([1, 2, 3].flatMap((step) => [[1, `Step ${step}`], [2, 'Check']]));
    expect(outline(ar)).toEqual([1, 2, 3].flatMap((step) => [[1, `الخطوة ${step}`], [2, 'تحقق']]));
  });
});

describe('dates and identifiers', () => {
  it('are fixed, or made of the content', async () => {
    expect([en.getCreationDate()?.toISOString(), en.getModificationDate()?.toISOString()]).toEqual(['2000-01-01T00:00:00.000Z', '2000-01-01T00:00:00.000Z']);
    const ids = (pdf: PDFDocument): string => pdf.context.lookup(pdf.context.trailerInfo.ID, PDFArray).asArray().map((id) => (id as PDFHexString).asString()).join();
    expect(ids(en)).toMatch(/^([0-9A-F]{32}),\1$/);
    const other = await readPdf(await printer.document({ ...englishBooklet(3), contentMark: 'mark-2' }, book));
    expect(ids(other)).not.toBe(ids(en));
  });

  it('count structure elements from one', () => {
    const ids = allDicts(en).flatMap((dict) => (dict.has(key('S')) ? [textOf(dict.lookup(key('ID')))] : [])).filter((id) => id !== undefined);
    expect(ids.sort()).toEqual(Array.from({ length: 6 }, (_, index) => `node${String(index + 1).padStart(8, '0')}`));
  });
});

describe('fonts and pictures in the PDF', () => {
  it('are Noto Sans only, embedded as subsets under tags of their own, none as Type 3', () => {
    for (const pdf of [en, ar]) {
      expect(dictsWith(pdf, 'Subtype', 'Type3')).toEqual([]);
      const descriptors = dictsWith(pdf, 'Type', 'FontDescriptor');
      const names = descriptors.map((descriptor) => descriptor.lookup(key('FontName'), PDFName).decodeText());
      for (const name of names) expect(name).toMatch(/^[A-Z]{6}\+NotoSans(Arabic)?-(Regular|Bold)$/);
      expect(new Set(names).size).toBe(names.length);
      for (const descriptor of descriptors) expect(descriptor.lookup(key('FontFile2'))).toBeInstanceOf(PDFRawStream);
    }
    expect(dictsWith(ar, 'Type', 'FontDescriptor')).toHaveLength(5);
  });

  it('hold no bitmap', () => {
    for (const pdf of [en, ar]) expect(dictsWith(pdf, 'Subtype', 'Image')).toEqual([]);
  });

  it.skipIf(!hasPoppler)('look the same to poppler', () => {
    for (const bytes of [english, arabic]) {
      const fonts = poppler('pdffonts', bytes).trim().split('\n').slice(2);
      expect(fonts.length).toBeGreaterThanOrEqual(3);
      for (const line of fonts) expect(line).toMatch(/^[A-Z]{6}\+NotoSans\S+ +CID TrueType +Identity-H +yes yes yes/);
      expect(poppler('pdfimages', bytes).trim().split('\n')).toHaveLength(2);
    }
  });

  it('keep what belongs to one picture apart: each arrowhead has its own grey', () => {
    const forms = dictsWith(en, 'Subtype', 'Form');
    expect(forms).toHaveLength(3);
    const streams = en.context.enumerateIndirectObjects().flatMap(([, object]) => (object instanceof PDFRawStream && forms.includes(object.dict) ? [decoded(object)] : []));
    // Greys 0, 1 and 2 of 255, written by the browser as fractions.
    expect(streams.map((stream) => [...stream.matchAll(/^([.\d]+) [.\d]+ [.\d]+ rg|RG ([.\d]+) [.\d]+ [.\d]+ rg/gm)].map((match) => Math.round(Number(match[1] ?? match[2]) * 255)).filter((grey) => grey > 0)[0] ?? 0))
      .toEqual([0, 1, 2]);
  });
});

describe('sizes', () => {
  // ISO 216: A4 is 210 × 297 mm; Letter is 8.5 × 11 in (ANSI/ASME Y14.1, size A): 215.9 × 279.4 mm.
  it.each([['a4', 210, 297], ['letter', 215.9, 279.4]] as const)('of the sheet are those of %s', async (paper, width, height) => {
    const pdf = await readPdf(await printer.document(plain({ paper }), book));
    const size = pdf.getPage(0).getSize();
    expect(Math.abs((size.width / 72) * 25.4 - width)).toBeLessThan(0.2);
    expect(Math.abs((size.height / 72) * 25.4 - height)).toBeLessThan(0.2);
  });

  const bar = { id: 'bar', width: 120, height: 20, svg: '<svg viewBox="0 0 120 20"><rect x="10" y="5" width="100" height="10"/></svg>' };
  const barPage = (width: number): PrintDocument => plain({
    css: '@page { margin: 20mm }',
    html: `<p>Bar</p><div style="margin-left:7.3mm">${picturePlace({ id: 'bar', width, height: width / 6, alt: 'a bar of 100 mm' })}</div>`,
  });

  it('of a picture are true by its matrices: 100 mm within 0.2 mm', async () => {
    const pdf = await readPdf(await printer.document(barPage(120), await printer.pictures([bar])));
    const outer = scaleAt(pageContent(pdf.getPage(0)), /Picture1 Do/);
    const form = pdf.context.enumerateIndirectObjects().flatMap(([, object]) => (object instanceof PDFRawStream && object.dict.lookup(key('Subtype')) === key('Form') ? [decoded(object)] : []))[0] ?? '';
    const { matrix, mmPerUnit } = scaleAt(form, /^10 5 100 10 re/, outer.matrix);
    expect(Math.abs(100 * mmPerUnit - 100)).toBeLessThan(0.002);
    // Left edge: margin 20 + 7.3 + 10 mm inside the picture, to a CSS pixel (0.26 mm) of the browser's rounding.
    expect(Math.abs((((matrix[0] ?? 0) * 10 + (matrix[4] ?? 0)) / 72) * 25.4 - 37.3)).toBeLessThan(0.27);
  });

  it.skipIf(!hasPoppler)('of a picture are true as poppler draws it, whole and at half size', async () => {
    const bars = await printer.pictures([bar]);
    for (const [placeWidth, expected] of [[120, 100], [60, 50]] as const) {
      const { width, height, pixels } = renderPage(await printer.document(barPage(placeWidth), bars), 600);
      const rows = Array.from({ length: height }, (_, row) => pixels.subarray(row * width, (row + 1) * width));
      const longest = Math.max(...rows.map((row) => row.lastIndexOf(0) - row.indexOf(0) + 1));
      expect(Math.abs((longest / 600) * 25.4 - expected)).toBeLessThan(0.2);
    }
  });

  it('count pages as the document breaks them, with none left blank at the end', async () => {
    const sheets = (css: string): PrintDocument => plain({ css, html: '<div class="s">1</div><div class="s">2</div><div class="s">3</div>' });
    for (const css of [
      '@page { margin: 0 } .s { height: 297mm; box-sizing: border-box; overflow: hidden; break-after: page }',
      '.s { break-after: page }',
    ]) expect((await readPdf(await printer.document(sheets(css), book))).getPageCount()).toBe(3);
    expect([en.getPageCount(), ar.getPageCount()]).toEqual([3, 3]);
  });

  it('in bytes stay small: 30 pages with a picture of 1,500 strokes each', async () => {
    const pictures = Array.from({ length: 30 }, (_, index) => ({ ...heavyPicture(`h${index + 1}`, 750), id: `step-${index + 1}` }));
    const html = pictures.map(({ id }) => `<section><h1>${id}</h1>${picturePlace({ id, width: 160, height: 110, alt: id })}<p>Push the pin in.</p></section>`).join('');
    const heavyBook = await printer.pictures(pictures);
    const started = performance.now();
    const bytes = await printer.document(plain({ css: 'section { break-after: page }', html }), heavyBook);
    console.info(`30 pages: ${bytes.length} bytes, ${Math.round(performance.now() - started)} ms, pictures ${heavyBook.sheets[0]?.pdf.length} bytes`);
    expect((await readPdf(bytes)).getPageCount()).toBe(30);
    expect(bytes.length).toBeLessThan((heavyBook.sheets[0]?.pdf.length ?? 0) + 40_000);
  });
});

describe('titles of the outline', () => {
  it('keep the letters of a right-to-left heading in their logical order, pictures by their words', async () => {
    const sign = (label: string): string => `<svg role="img" aria-label="${label}" width="9mm" height="9mm" viewBox="0 0 9 9"><path d="M1 1H8V8z"/></svg>`;
    const html = `<h1>تحزيز خطوط الطي</h1><h2><b>12</b> لفّ <i>الجانب</i>\n الأيسر 3 × 4</h2><h1>${sign('قبل البدء \u20668 h\u2069')}</h1><h1></h1>`;
    expect(outline(await readPdf(await printer.document(plain({ lang: 'ar', dir: 'rtl', html }), book)))).toEqual([
      [1, 'تحزيز خطوط الطي'], [2, '12 لفّ الجانب الأيسر 3 × 4'], [1, 'قبل البدء 8 h'],
    ]);
  });
});

describe('texts', () => {
  const html = '<ol><li>one</li><li>two <b>three</b></li></ol><p lang="fr">un <i lang="ar">واحد</i> <span>deux</span></p><table style="border:1px solid"><tr><td>x</td><td></td></tr></table>';
  const spans = async (): Promise<readonly (readonly (string | undefined)[])[]> => {
    const pdf = await readPdf(await printer.document(plain({ html }), book));
    return dictsWith(pdf, 'S', 'Span').map((span) => [textOf(span.lookup(key('Lang'))), textOf(span.lookup(key('ActualText')))]);
  };

  it('say their language where it differs from what they stand in, and their letters where the script needs it', async () => {
    // The paragraph is a block that the browser marks itself; its texts inherit from it, but for the Arabic one.
    expect(await spans()).toEqual([[undefined, undefined], [undefined, undefined], [undefined, undefined],
      [undefined, undefined], ['ar', 'واحد'], [undefined, undefined], [undefined, undefined], [undefined, undefined]]);
  });

  it('leave lines to be artifacts, which no element owns', async () => {
    const pdf = await readPdf(await printer.document(plain({ html }), book));
    const content = pageContent(pdf.getPage(0));
    expect(content.match(/\/Artifact BMC/g)?.length).toBe(1);
    expect(content.match(/BDC|BMC/g)?.length).toBe(content.match(/EMC/g)?.length);
    for (const [, mcid] of content.matchAll(/\/MCID (\d+)/g)) expect(ownerOf(pdf, pdf.getPage(0), Number(mcid)).has(key('S'))).toBe(true);
  });
});

describe('one clear error', () => {
  const wrong = (html: string, css = ''): Promise<Uint8Array> => printer.document(plain({ html, css }), book);
  it.each([
    ['a picture that is not in the book', picturePlace({ id: 'lost', width: 1, height: 1, alt: 'x' }), '', 'picture “lost” is not in the picture book; it holds step-1, step-2, step-3'],
    ['a place of another shape', picturePlace({ id: 'step-1', width: 150, height: 90, alt: 'x' }), '', 'picture “step-1” is 150 × 80 mm, its place 150 × 90 mm'],
    ['a place that is hidden', `<p>x</p>${place(0, 'x')}`, '.picture-place { display: none !important }', '1 places for pictures, but 0 were printed'],
    ['a heading that is hidden', '<h1>x</h1><h1 style="display:none">y</h1>', '', '2 headings, but 1 in the outline'],
    ['a text that is not seen', '<p>x</p><p style="opacity:0">y</p>', '', '2 texts, but 1 were printed'],
    ['a letter that no font has', '<p>漢</p>', '', 'document “plain”, page 1: some letters are in none of the fonts'],
    ['a page wider than its paper, for which a browser would shrink all', '<section style="width:210mm"><div data-page="7"><p style="width:230mm;background:#eee">x</p></div></section>', '@page { margin: 0 }', 'something on page 7 reaches 19.8 mm over its edge'],
    ['a blank page at the end', '<p>x</p><div style="break-before:page;height:1px"></div>', '', 'page 2, the last, is blank'],
  ])('names %s', async (_what, html, css, message) => {
    await expect(wrong(html, css)).rejects.toThrow(message);
  });

  it('names a language the printer was not opened for, and twin pictures', async () => {
    await expect(printer.document(plain({ lang: 'km' }), book)).rejects.toThrow('language “km” is written in the script Khmr, for which there is no font');
    await expect(printer.pictures([...samplePictures(1), ...samplePictures(1)])).rejects.toThrow('two pictures have the id “step-1”');
    const svg = '<svg viewBox="0 0 9 9"><text y="5" font-size="4">漢</text></svg>';
    await expect(printer.pictures([{ id: 'sign', width: 9, height: 9, svg }])).rejects.toThrow('picture “sign”: some letters are in none of the fonts');
  });

  it('leaves the printer fit for the next document', async () => {
    await expect(wrong('<p>漢</p>')).rejects.toThrow();
    expect(Buffer.from(await printer.document(englishBooklet(3), book)).equals(english)).toBe(true);
  });
});

it('a picture leaves the structure to its Figure', () => {
  // A form that is marked content as a whole has no structure of its own (ISO 32000-1, 14.7.4.3).
  for (const form of dictsWith(en, 'Subtype', 'Form')) expect([form.has(key('StructParent')), form.has(key('StructParents'))]).toEqual([false, false]);
  expect(en.catalog.lookup(key('StructTreeRoot'))).toBeInstanceOf(PDFDict);
});
