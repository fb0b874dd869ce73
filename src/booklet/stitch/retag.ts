import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRef } from 'pdf-lib';
import type { PDFDocument } from 'pdf-lib';
import { structElements } from '../print/index.ts';

/** Where a page of the booklet came to lie: on which sheet's side, as which form, how far from its corner, points. */
export interface Laid {
  readonly side: PDFRef;
  readonly form: PDFRef;
  readonly x: number;
  readonly y: number;
}

/** By the page's reference. */
export type LaidPages = ReadonlyMap<PDFRef, Laid>;

/**
 * Points the tags to where the pages lie now: marked content of a form is named by the form (ISO 32000-1, 14.7.4.2
 * and 14.7.4.4). The order of the tags, which is that of reading, stays.
 */
export function retag(pdf: PDFDocument, pages: LaidPages): void {
  for (const element of structElements(pdf)) {
    const page = element.get(PDFName.of('Pg'));
    const laid = page instanceof PDFRef ? pages.get(page) : undefined;
    if (!laid) continue;
    element.set(PDFName.of('Pg'), laid.side);
    const kids = element.get(PDFName.of('K'));
    if (kids !== undefined) element.set(PDFName.of('K'), namedByForm(pdf, element.lookup(PDFName.of('K')) ?? kids, laid));
    moveBox(element, laid);
  }
}

function namedByForm(pdf: PDFDocument, kids: ReturnType<PDFArray['get']>, laid: Laid): ReturnType<PDFArray['get']> {
  if (kids instanceof PDFNumber) return pdf.context.obj({ Type: 'MCR', Pg: laid.side, Stm: laid.form, MCID: kids });
  if (kids instanceof PDFArray) return pdf.context.obj(kids.asArray().map((kid) => namedByForm(pdf, kid, laid)));
  return kids;
}

/** The place of a picture on its page (ISO 32000-1, 14.8.5.4). */
function moveBox(element: PDFDict, { x, y }: Laid): void {
  const attributes = element.lookup(PDFName.of('A'));
  const box = attributes instanceof PDFDict ? attributes.lookupMaybe(PDFName.of('BBox'), PDFArray) : undefined;
  box?.asArray().forEach((value, index) => {
    if (value instanceof PDFNumber) box.set(index, PDFNumber.of(Math.round((value.asNumber() + (index % 2 === 0 ? x : y)) * 100) / 100));
  });
}

/** Points every entry of the outline to where its page lies now. */
export function redirectOutline(pdf: PDFDocument, pages: LaidPages): void {
  for (const [, object] of pdf.context.enumerateIndirectObjects()) {
    const target = object instanceof PDFDict ? object.lookupMaybe(PDFName.of('Dest'), PDFArray) : undefined;
    const page = target?.get(0);
    const laid = page instanceof PDFRef ? pages.get(page) : undefined;
    if (!target || !laid) continue;
    target.set(0, laid.side);
    move(target, 2, laid.x);
    move(target, 3, laid.y);
  }
}

function move(target: PDFArray, index: number, by: number): void {
  const value = target.get(index);
  if (value instanceof PDFNumber) target.set(index, PDFNumber.of(Math.round((value.asNumber() + by) * 100) / 100));
}
