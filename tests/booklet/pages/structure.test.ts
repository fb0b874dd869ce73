import { execFileSync } from 'node:child_process';
import { PDFDict, type PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookletPages } from '../../../src/booklet/pages/index.ts';
import { caption } from '../../../src/booklet/pages/captions.ts';
import { openPrinter, picturePlace, type PictureBook, type Printer } from '../../../src/booklet/print/index.ts';
import { hasPoppler } from '../print/poppler.ts';
import { allDicts, key, readPdf, textOf } from '../print/readPdf.ts';
import { allNodes, hasQpdf, qpdfFaults, readAgain, type SecondReading, type StructureNode } from '../print/second-reader.ts';
import { taggedLanguages as all } from '../../support/chosen.ts';
import { glyphPrints, printedGlyphs } from '../../../src/booklet/publications/printed-glyphs.ts';
import { pictureId } from '../../../src/draw/index.ts';
import { rackInput, rackPlan } from './rack-booklet.ts';

interface Printed {
  readonly html: string;
  readonly title: string;
  readonly bytes: Uint8Array;
  readonly seen: SecondReading;
  readonly pdf: PDFDocument;
}

let printer: Printer;
let book: PictureBook;
beforeAll(async () => {
  printer = await openPrinter();
  book = await printer.pictures([...glyphPrints(), ...rackInput().pictures.map(({ of, width, height }) => ({
    id: pictureId(of), width, height, svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><path d="M1 1H${width - 1}V${height - 1}H1z" fill="none" stroke="#000" stroke-width="0.5"/></svg>`,
  }))]);
});
afterAll(() => printer.close());

const made = new Map<string, Promise<Printed>>();
/** Each booklet is printed and read once. */
function printed(lang: string): Promise<Printed> {
  const found = made.get(lang) ?? print(lang);
  made.set(lang, found);
  return found;
}
async function print(lang: string): Promise<Printed> {
  const input = rackInput({ lang });
  const { html, css, dir, title } = bookletPages({ ...input, placePicture: picturePlace, glyphs: printedGlyphs });
  const bytes = await printer.document({ id: lang, html, css, lang: input.words.lang, dir, title, paper: 'a4', contentMark: 'm' }, book);
  return { html, title, bytes, seen: await readAgain(bytes), pdf: await readPdf(bytes) };
}

const nodesOf = ({ seen }: Printed): readonly StructureNode[] => seen.pages.flatMap(allNodes);
const bare = (text: string): string => text.replace(/[\s\u00a0\u202f\u200b]/g, '');
/** The text of a booklet without its drawings and without white, in the order of the page. */
const textIn = (html: string): string => bare(html.replace(/<svg.*?<\/svg>/gs, '').replace(/<[^>]*>/g, '')
  .replaceAll('&#x27;', '\'').replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&'));

// PDF/UA-1 (ISO 14289-1, from memory): 7.1 tagged, title, artifacts; 7.2 language; 7.3 figures have words; 7.4 headings nest.
describe.each(all)('the tagged booklet in %s, read by a second reader', (lang) => {
  it('says its title, its language, that it is tagged and where it is read from', async () => {
    const { seen, title } = await printed(lang);
    const { words } = rackInput({ lang });
    expect([seen.title, seen.language, seen.marked, seen.direction]).toEqual([title, words.lang, true, words.about.direction === 'rtl' ? 'R2L' : 'L2R']);
  });

  it('has an owner for all marked content, and no text outside of it', async () => {
    expect((await printed(lang)).seen.untied).toEqual([]);
  });

  it('has words for every figure', async () => {
    const figures = nodesOf(await printed(lang)).filter(({ role }) => role === 'Figure');
    expect(figures.length).toBeGreaterThan(300);
    expect(figures.filter(({ alt = '' }) => alt.trim() === '' || alt.includes('\u241f'))).toEqual([]);
  });

  it('nests its headings: chapters, and under one of them the steps', async () => {
    const booklet = await printed(lang);
    const headings = nodesOf(booklet).filter(({ role }) => /^H\d?$/.test(role)).map(({ role }) => role);
    const steps = rackPlan.steps.map(() => 'H2');
    expect(headings).toEqual([...Array.from({ length: 8 }, () => 'H1'), ...steps, 'H1', 'H1', 'H1']);
  });

  it('uses the structure types of ISO 32000-1, 14.8.4, and lists, tables and cells that fit together', async () => {
    const known = ['Root', 'Document', 'Art', 'NonStruct', 'H1', 'H2', 'P', 'L', 'LI', 'Span', 'Table', 'TR', 'TH', 'TD', 'Figure'];
    const nodes = nodesOf(await printed(lang));
    expect([...new Set(nodes.map(({ role }) => role))].filter((role) => !known.includes(role))).toEqual([]);
    const held: Readonly<Record<string, readonly string[]>> = { L: ['LI'], Table: ['TR'], TR: ['TH', 'TD'] };
    for (const { role, children } of nodes) {
      const may = held[role];
      if (may) expect(children.map((child) => child.role).filter((child) => !may.includes(child))).toEqual([]);
    }
  });

  it.skipIf(!hasQpdf)('has no fault of syntax that qpdf finds', async () => {
    expect(qpdfFaults((await printed(lang)).bytes)).toBe('');
  });
});

describe('the text of a booklet', () => {
  // Elements of joining and stacking scripts tell their letters, which pdf.js gives as their words; the others are read from their glyphs.
  it.each(all)('comes out whole and in reading order (%s)', async (lang) => {
    const booklet = await printed(lang);
    const read = nodesOf(booklet).filter(({ role }) => role === 'Span').map(({ alt, text }) => alt ?? text).join('');
    expect(bare(read)).toBe(textIn(booklet.html));
  });

  // Burmese signs that change places are told by marks that pdf.js does not read and poppler does.
  it.skipIf(!hasPoppler)('comes out whole in Burmese, read by poppler', async () => {
    const { bytes } = await printed('my');
    const read = bare(execFileSync('pdftotext', ['-raw', '-', '-'], { input: bytes, encoding: 'utf8' }));
    const input = rackInput({ lang: 'my' });
    const captions = rackPlan.steps.map((step) => bare(caption(input, step)).replace(/[\u2066-\u2069]/g, ''));
    expect(captions.filter((text) => !read.includes(text))).toEqual([]);
  });

  it.each(all)('is told by the elements of those scripts, and of those alone (%s)', async (lang) => {
    const { pdf, html } = await printed(lang);
    const told = allDicts(pdf).flatMap((dict) => textOf(dict.lookup(key('ActualText'))) ?? []);
    const reordered = /[\p{Script=Arabic}\p{Script=Bengali}\p{Script=Myanmar}]/u;
    const texts = html.replace(/<svg.*?<\/svg>/gs, '').split(/<[^>]*>/).filter((text) => reordered.test(text)).map(textIn);
    expect(texts.length).toBeGreaterThan(0);
    expect(told.map(bare).sort()).toEqual(texts.sort());
  });

  it('has on every span the language it is in', async () => {
    const spans = nodesOf(await printed('en+ur+bn')).filter(({ role }) => role === 'Span');
    const wrong = spans.filter(({ lang, alt = '' }) => /\p{Script=Bengali}/u.test(alt) !== (lang === 'bn' && /\p{L}/u.test(alt)) || (/\p{Script=Arabic}/u.test(alt) && !['ur', 'ar'].includes(lang)));
    expect(wrong).toEqual([]);
    for (const lang of ['en', 'ur', 'bn']) expect(spans.filter((span) => span.lang === lang).length).toBeGreaterThan(100);
  });

  it('has the sources of limits in English in every language', async () => {
    const [source = ''] = rackInput().report.findings.map((finding) => finding.source);
    const found = nodesOf(await printed('el')).filter(({ text }) => bare(text) === bare(source));
    expect(found.length).toBeGreaterThan(0);
    for (const { lang } of found) expect(lang).toBe('en');
  });
});

it('lines and grounds are artifacts: an element holds a text, a picture or others', async () => {
  for (const lang of ['en', 'ar'] as const) {
    for (const { role, text, children } of nodesOf(await printed(lang))) {
      if (text !== '') expect([['Span', 'Figure'].includes(role), children.length]).toEqual([true, 0]);
    }
    const { pdf } = await printed(lang);
    expect(pdf.catalog.lookup(key('StructTreeRoot'))).toBeInstanceOf(PDFDict);
  }
});
