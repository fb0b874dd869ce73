import { PDFDict, PDFName, PDFRawStream, PDFRef } from 'pdf-lib';
import type { PDFDocument, PDFPage } from 'pdf-lib';
import { PAPERS, type HalfPaper } from '../papers/index.ts';
import { openPdf, POINTS_PER_MM, rawContent, setFileId, writePdf } from '../print/index.ts';
import { cornerOn, creepOf, marksOn, SHEET_THICKNESS, type SheetMark, type SheetSize } from './layout.ts';
import { redirectOutline, retag, type Laid } from './retag.ts';
import { MOST_SHEETS, stitchedSheets, type SheetSide } from './signatures.ts';

export interface Stitching {
  readonly paper: HalfPaper;
  readonly dir: 'ltr' | 'rtl';
  /** Most sheets of a signature; 15 unless given. */
  readonly mostSheets?: number;
  /** Thickness of a sheet, mm; 0.1 unless given. */
  readonly thickness?: number;
}

/**
 * Lays the pages of a finished booklet on sheets to print on both sides, fold and staple. Tags, outline, title and
 * language stay; same input, same bytes.
 */
export async function stitched(booklet: Uint8Array, { paper, dir, mostSheets = MOST_SHEETS, thickness = SHEET_THICKNESS }: Stitching): Promise<Uint8Array> {
  const pdf = await openPdf(booklet);
  const pages = pdf.getPages();
  const bench = { pdf, sheet: lying(PAPERS[paper].sheet), pages: pages.map((page) => ({ page, form: asForm(pdf, page) })), laid: new Map<PDFRef, Laid>() };
  const sheets = stitchedSheets(pages.length, dir, mostSheets);
  const signatures = (sheets.at(-1)?.signature ?? 0) + 1;
  for (const each of sheets) {
    const creep = creepOf(each, thickness);
    laySide(bench, each.front, creep, marksOn(bench.sheet, each, signatures));
    laySide(bench, each.back, creep, []);
  }
  retag(pdf, bench.laid);
  redirectOutline(pdf, bench.laid);
  removePages(pdf, pages);
  setPreferences(pdf);
  setFileId(pdf, 'stitched', paper, dir, String(mostSheets), String(thickness), String(pdf.context.trailerInfo.ID ?? ''));
  return writePdf(pdf);
}

/** A booklet on its way to the sheets. */
interface Bench {
  readonly pdf: PDFDocument;
  readonly sheet: SheetSize;
  readonly pages: readonly { readonly page: PDFPage; readonly form: PDFRef }[];
  /** Filled as sides are laid. */
  readonly laid: Map<PDFRef, Laid>;
}

/** Adds a side of a sheet with its marks and its two pages, those that are no blanks. */
function laySide({ pdf, sheet, pages, laid }: Bench, { left, right }: SheetSide, creep: number, marks: readonly SheetMark[]): void {
  const side = pdf.addPage([sheet.width * POINTS_PER_MM, sheet.height * POINTS_PER_MM]);
  const named = pdf.context.obj({});
  const content = [markOperators(marks)];
  for (const [leaf, at] of [[left, 'left'], [right, 'right']] as const) {
    const found = leaf === null ? undefined : pages[leaf - 1];
    if (!found) continue;
    const { page, form } = found;
    const { width, height } = page.getSize();
    const [x, y] = cornerOn(sheet, { width: width / POINTS_PER_MM, height: height / POINTS_PER_MM }, at, creep);
    const place = { side: side.ref, form, x: round(x * POINTS_PER_MM), y: round(y * POINTS_PER_MM) };
    named.set(PDFName.of(`Page${leaf ?? 0}`), form);
    content.push(`q 1 0 0 1 ${place.x} ${place.y} cm /Page${leaf ?? 0} Do Q`);
    laid.set(page.ref, place);
  }
  side.node.set(PDFName.of('Resources'), pdf.context.obj({ XObject: named }));
  side.node.set(PDFName.of('Contents'), pdf.context.register(pdf.context.flateStream(content.join('\n'))));
  side.node.set(PDFName.of('Tabs'), PDFName.of('S'));
}

const lying = ({ width, height }: SheetSize): SheetSize => ({ width: height, height: width });

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** A page as a form that can be drawn on a sheet; it takes the page's tags with it. */
function asForm(pdf: PDFDocument, page: PDFPage): PDFRef {
  const { width, height } = page.getSize();
  const content = rawContent(page);
  const dict = pdf.context.obj({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, width, height] });
  for (const [from, to] of [['Resources', 'Resources'], ['StructParents', 'StructParents']] as const) {
    const value = page.node.get(PDFName.of(from));
    if (value) dict.set(PDFName.of(to), value);
  }
  const filter = content.dict.get(PDFName.of('Filter'));
  if (filter) dict.set(PDFName.of('Filter'), filter);
  return pdf.context.register(PDFRawStream.of(dict, content.getContents()));
}

/** Marks are no part of what is read (ISO 32000-1, 14.8.2.2). */
function markOperators(marks: readonly SheetMark[]): string {
  if (marks.length === 0) return '';
  const point = (mm: number): number => round(mm * POINTS_PER_MM);
  const drawn = marks.map((mark) => {
    const [x, from, to] = [mark.x, mark.from, mark.to].map(point) as [number, number, number];
    switch (mark.mark) {
      case 'fold': return `0.5 w [6 3] 0 d ${x} ${from} m ${x} ${to} l S`;
      case 'staple': return `0.7 w [] 0 d ${x} ${from} m ${x} ${to} l S ${x - 3} ${from} m ${x + 3} ${from} l S ${x - 3} ${to} m ${x + 3} ${to} l S`;
      case 'order': return `${round(x - point(mark.width / 2))} ${from} ${point(mark.width)} ${round(to - from)} re f`;
    }
  });
  return `/Artifact BMC q 0 G 0 g\n${drawn.join('\n')}\nQ EMC`;
}

function removePages(pdf: PDFDocument, pages: readonly PDFPage[]): void {
  for (const page of pages) {
    const content = page.node.get(PDFName.of('Contents'));
    pdf.removePage(0);
    pdf.context.delete(page.ref);
    if (content instanceof PDFRef) pdf.context.delete(content);
  }
}

/** Both sides, turned over the short edge, true to size (ISO 32000-1, 12.2). */
function setPreferences(pdf: PDFDocument): void {
  const preferences = pdf.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
  preferences.set(PDFName.of('PrintScaling'), PDFName.of('None'));
  preferences.set(PDFName.of('Duplex'), PDFName.of('DuplexFlipShortEdge'));
  preferences.set(PDFName.of('PickTrayByPDFSize'), pdf.context.obj(true));
}
