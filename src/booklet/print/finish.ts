import { PDFDict, PDFName } from 'pdf-lib';
import type { PDFDocument, PDFPage, PDFRef } from 'pdf-lib';
import { settleFigure, waitingFigures } from './figures.ts';
import type { WaitingFigure } from './figures.ts';
import { refuseForeignLetters } from './letters.ts';
import { nameOutline } from './outline.ts';
import type { PageContent } from './operators.ts';
import { boxAfter, edited, fillMarkedRectangles, paintsSomething } from './pageContent.ts';
import type { Edit, MarkedRectangle } from './pageContent.ts';
import { addResource, readContent, writeContent } from './pageStream.ts';
import { openPdf, writePdf } from './pdfFile.ts';
import { drawForm, pictureForms } from './pictureForms.ts';
import type { OpenedBook, PictureForm } from './pictureForms.ts';
import { fixDates, renumberNodes, setFileId, setProperty } from './sameBytes.ts';
import { placer } from './placer.ts';
import { nameTexts } from './texts.ts';
import type { DocumentFacts, OnPaper, PrintedPages } from './types.ts';

/** Name of the graphics state that undoes what the page set: a picture starts opaque, with plain lines. */
const STATE = 'PictureState';

/** A place may be out of its picture's shape by this share before it is refused. */
const SHAPE_TOLERANCE = 0.002;

/**
 * Makes the words' PDF the finished booklet: names its texts, lays each picture into its Figure and sets the outline's
 * titles, properties, reading direction and identifiers.
 * @param printed the pages, and what the document has: each place must have become a Figure, each heading an entry of the
 * outline, each text a piece of text.
 * @returns one PDF for each of the copies, which differ by their paper and id alone.
 * @throws when a page is wider than its paper, a place was not printed, its picture is missing or of another shape, the last page is blank,
 * or a letter is in none of the fonts.
 */
export async function finish({ words, shown: { places, headings, texts, tooWide } }: PrintedPages, doc: DocumentFacts, book: OpenedBook, copies: readonly OnPaper[]): Promise<readonly Uint8Array[]> {
  const pdf = await openPdf(words);
  // Each page is unpacked and read once, and packed again once with all that is changed on it.
  const contents = new Map(pdf.getPages().map((page) => [page, readContent(page)]));
  refuseBlankEnd(contents, doc);
  refuseTooWide(doc, tooWide);
  [...contents].forEach(([page, content], index) => refuseForeignLetters(page, content, `document “${doc.id}”, page ${index + 1}`));
  const named = nameTexts(pdf, contents, doc.id, texts);
  const laid = layPictures(pdf, contents, doc, book, places);
  for (const [page, content] of contents) {
    const edits = [...named.get(page) ?? [], ...laid.get(page) ?? []];
    if (edits.length > 0) writeContent(page, edited(content, edits));
  }
  nameOutline(pdf, doc.id, headings);
  setProperties(pdf, doc);
  setDirection(pdf, doc);
  renumberNodes(pdf);
  const place = placer(pdf, doc);
  const written: Uint8Array[] = [];
  for (const { id, paper } of copies) {
    place(paper);
    setFileId(pdf, id, doc.lang, paper, doc.title, doc.contentMark);
    written.push(await writePdf(pdf));
  }
  return written;
}

function refuseBlankEnd(contents: ReadonlyMap<PDFPage, PageContent>, doc: DocumentFacts): void {
  const last = [...contents.values()].at(-1);
  if (last && paintsSomething(last)) return;
  throw new Error(`document “${doc.id}”: page ${contents.size}, the last, is blank; something is taller than its sheet or breaks the page at the very end`);
}

/** A browser shrinks every page of a document to the width of its widest: gauges and patterns would come out untrue. */
function refuseTooWide(doc: DocumentFacts, [first]: PrintedPages['shown']['tooWide']): void {
  if (first) throw new Error(`document “${doc.id}”: something on page ${first.page} reaches ${((first.by * 25.4) / 96).toFixed(1)} mm over its edge, and all pages would be shrunk for it; make it narrower`);
}

/** Puts each picture into its Figure. Gives what is to be changed on each page. */
function layPictures(pdf: PDFDocument, contents: ReadonlyMap<PDFPage, PageContent>, doc: DocumentFacts, book: OpenedBook, places: number): ReadonlyMap<PDFPage, readonly Edit[]> {
  const figures = waitingFigures(pdf);
  if (figures.length !== places) {
    throw new Error(`document “${doc.id}”: ${places} places for pictures, but ${figures.length} were printed; a place must be visible and stand alone`);
  }
  const formOf = pictureForms(pdf, book);
  const state = pdf.context.register(pdf.context.obj({ Type: 'ExtGState', ca: 1, CA: 1, BM: 'Normal', LW: 1, LC: 0, LJ: 0, ML: 10 }));
  return new Map([...contents].map(([page, content]) => {
    const here = figures.filter((figure) => figure.page === page.ref);
    return [page, here.length > 0 ? picturesOnPage(page, content, here, formOf, state) : []];
  }));
}

function picturesOnPage(page: PDFPage, content: PageContent, figures: readonly WaitingFigure[], formOf: (id: string) => PictureForm, state: PDFRef): readonly Edit[] {
  const waiting = new Map(figures.map((figure) => [figure.mcid, figure]));
  addResource(page, 'ExtGState', STATE, state);
  const names = new Map<PDFRef, string>();
  const edits = fillMarkedRectangles(content, (place) => {
    const figure = waiting.get(place.mcid);
    if (!figure) return undefined;
    waiting.delete(place.mcid);
    const form = formOf(figure.picture);
    const name = names.get(form.ref) ?? `Picture${names.size + 1}`;
    if (!names.has(form.ref)) addResource(page, 'XObject', name, form.ref);
    names.set(form.ref, name);
    return layPicture(figure, form, name, place);
  });
  const [lost] = waiting.values();
  if (lost) throw new Error(`picture “${lost.picture}”: its place has no rectangle on the page; nothing may cover or restyle it`);
  return edits;
}

function layPicture(figure: WaitingFigure, form: PictureForm, name: string, place: MarkedRectangle): string {
  const scale = place.width / form.width;
  if (Math.abs(place.height / form.height / scale - 1) > SHAPE_TOLERANCE) {
    throw new Error(`picture “${figure.picture}” is ${form.width} × ${form.height} mm, its place ${place.width} × ${place.height} mm; both must have the same shape`);
  }
  settleFigure(figure, boxAfter(place.toPage, place.width, place.height));
  return drawForm(name, STATE, form, scale, Math.hypot(place.toPage[0], place.toPage[1]));
}

function setProperties(pdf: PDFDocument, doc: DocumentFacts): void {
  fixDates(pdf);
  setProperty(pdf, 'Title', doc.title);
  setProperty(pdf, 'Creator', 'foldwright');
  if (doc.subject !== undefined) setProperty(pdf, 'Subject', doc.subject);
  setProperty(pdf, 'ContentMark', doc.contentMark);
}

/** `PrintScaling: None` asks viewers not to shrink the page: gauges and patterns must come out true. */
function setDirection(pdf: PDFDocument, doc: DocumentFacts): void {
  const preferences = pdf.catalog.lookupMaybe(PDFName.of('ViewerPreferences'), PDFDict) ?? pdf.context.obj({});
  preferences.set(PDFName.of('DisplayDocTitle'), pdf.context.obj(true));
  preferences.set(PDFName.of('Direction'), PDFName.of(doc.dir === 'rtl' ? 'R2L' : 'L2R'));
  preferences.set(PDFName.of('PrintScaling'), PDFName.of('None'));
  pdf.catalog.set(PDFName.of('ViewerPreferences'), preferences);
}
