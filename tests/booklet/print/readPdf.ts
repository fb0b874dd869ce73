import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFNumber, PDFRawStream, PDFString, decodePDFRawStream } from 'pdf-lib';
import type { PDFObject, PDFPage } from 'pdf-lib';

/** A second reading of the finished PDF, on its own feet: it shares no code with the printer. */
export async function readPdf(bytes: Uint8Array): Promise<PDFDocument> {
  return PDFDocument.load(bytes, { updateMetadata: false });
}

export const key = (name: string): PDFName => PDFName.of(name);

export function dictAt(dict: PDFDict, ...path: readonly string[]): PDFDict {
  return path.reduce((at, name) => at.lookup(key(name), PDFDict), dict);
}

export function textOf(value: PDFObject | undefined): string | undefined {
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : undefined;
}

export function infoText(pdf: PDFDocument, name: string): string | undefined {
  return textOf(pdf.context.lookup(pdf.context.trailerInfo.Info, PDFDict).lookup(key(name)));
}

export function decoded(stream: PDFObject | undefined): string {
  if (!(stream instanceof PDFRawStream)) throw new Error('no stream');
  return Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
}

export function pageContent(page: PDFPage): string {
  return decoded(page.node.context.lookup(page.node.get(key('Contents'))));
}

export function allDicts(pdf: PDFDocument): readonly PDFDict[] {
  return pdf.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (object instanceof PDFRawStream) return [object.dict];
    return object instanceof PDFDict ? [object] : [];
  });
}

export function dictsWith(pdf: PDFDocument, name: string, value: string): readonly PDFDict[] {
  return allDicts(pdf).filter((dict) => dict.lookup(key(name)) === key(value));
}

/** The element that the parent tree names for a piece of marked content (ISO 32000-1, 14.7.4.4). */
export function ownerOf(pdf: PDFDocument, page: PDFPage, mcid: number): PDFDict {
  const nums = dictAt(pdf.catalog, 'StructTreeRoot', 'ParentTree').lookup(key('Nums'), PDFArray);
  const wanted = page.node.lookup(key('StructParents'), PDFNumber).asNumber();
  for (let index = 0; index < nums.size(); index += 2) {
    if (nums.lookup(index, PDFNumber).asNumber() === wanted) return nums.lookup(index + 1, PDFArray).lookup(mcid, PDFDict);
  }
  throw new Error(`no entry ${wanted} in the parent tree`);
}

/** Titles of the outline with their depth, 1 for the top. */
export function outline(pdf: PDFDocument): readonly (readonly [number, string])[] {
  const walk = (item: PDFDict | undefined, depth: number): (readonly [number, string])[] => {
    if (!item) return [];
    const title = textOf(item.lookup(key('Title'))) ?? '';
    return [[depth, title] as const, ...walk(item.lookupMaybe(key('First'), PDFDict), depth + 1), ...walk(item.lookupMaybe(key('Next'), PDFDict), depth)];
  };
  return walk(dictAt(pdf.catalog, 'Outlines').lookup(key('First'), PDFDict), 1);
}

type Matrix = readonly number[];

/** Length in mm on paper of one unit along x where `operator` first stands in a content, under `outer`. */
export function scaleAt(content: string, operator: RegExp, outer: Matrix = [1, 0, 0, 1, 0, 0]): { readonly matrix: Matrix; readonly mmPerUnit: number } {
  let matrix = outer;
  const saved: Matrix[] = [];
  for (const line of content.split(/\n|(?<=\b(?:q|Q|cm))\s/)) {
    const words = line.trim().split(/\s+/);
    if (operator.test(line)) return { matrix, mmPerUnit: (Math.hypot(matrix[0] ?? 0, matrix[1] ?? 0) / 72) * 25.4 };
    if (line.trim() === 'q') saved.push(matrix);
    if (line.trim() === 'Q') matrix = saved.pop() ?? outer;
    if (words.at(-1) === 'cm') matrix = product(words.slice(-7, -1).map(Number), matrix);
  }
  throw new Error(`${operator} is not in the content`);
}

function product([a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: Matrix, [A = 1, B = 0, C = 0, D = 1, E = 0, F = 0]: Matrix): Matrix {
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}
