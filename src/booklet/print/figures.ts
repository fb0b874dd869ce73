import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFRef, PDFString } from 'pdf-lib';
import type { PDFDocument } from 'pdf-lib';
import { readPlaceLabel } from './place.ts';

/** A Figure of the tagged PDF that waits for its picture. */
export interface WaitingFigure {
  readonly element: PDFDict;
  readonly picture: string;
  readonly alt: string;
  readonly page: PDFRef;
  readonly mcid: number;
}

/** All Figures that came from `picturePlace`, in reading order. */
export function waitingFigures(pdf: PDFDocument): readonly WaitingFigure[] {
  return structElements(pdf).flatMap((element) => {
    if (element.get(PDFName.of('S')) !== PDFName.of('Figure')) return [];
    const label = element.lookup(PDFName.of('Alt'));
    const place = label instanceof PDFString || label instanceof PDFHexString ? readPlaceLabel(label.decodeText()) : undefined;
    return place ? [{ element, picture: place.id, alt: place.alt, ...contentOf(element, place.id) }] : [];
  });
}

/** Leaves only the words in the Figure's alternative text, and notes where on the page it stands (in points). */
export function settleFigure(figure: WaitingFigure, box: readonly number[]): void {
  const { element } = figure;
  element.set(PDFName.of('Alt'), PDFHexString.fromText(figure.alt));
  element.set(PDFName.of('A'), element.context.obj({ O: 'Layout', BBox: box.map((number) => Math.round(number * 100) / 100) }));
}

/** Every structure element, parents before children, in reading order. */
export function structElements(pdf: PDFDocument): readonly PDFDict[] {
  const root = pdf.catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict);
  const found: PDFDict[] = [];
  const visit = (parent: PDFDict): void => {
    for (const kid of kidsOf(parent)) {
      const element = parent.context.lookup(kid);
      if (!(element instanceof PDFDict) || !element.has(PDFName.of('S'))) continue;
      found.push(element);
      visit(element);
    }
  };
  if (root) visit(root);
  return found;
}

export function kidsOf(element: PDFDict): readonly ReturnType<PDFArray['get']>[] {
  const kids = element.lookup(PDFName.of('K'));
  if (kids instanceof PDFArray) return kids.asArray();
  return kids === undefined ? [] : [kids];
}

function contentOf(element: PDFDict, id: string): { readonly page: PDFRef; readonly mcid: number } {
  const page = element.get(PDFName.of('Pg'));
  const [mcid, ...more] = kidsOf(element);
  if (page instanceof PDFRef && mcid instanceof PDFNumber && more.length === 0) return { page, mcid: mcid.asNumber() };
  throw new Error(`the place of picture “${id}” is not one piece on one page; keep it whole and visible`);
}
