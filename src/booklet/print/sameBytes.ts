import { createHash } from 'node:crypto';
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRawStream, PDFString } from 'pdf-lib';
import type { PDFContext, PDFDocument, PDFObject } from 'pdf-lib';

/** Stands for both dates of every file: a true one would make the same booklet differ from day to day. */
const FIXED_DATE = '2000-01-01';

/** What Chromium calls structure elements that others point to; the number counts on through a tab's life. */
const NODE_ID = /^node(\d+)$/;

export function fixDates(pdf: PDFDocument): void {
  const date = new Date(`${FIXED_DATE}T00:00:00Z`);
  pdf.setCreationDate(date);
  pdf.setModificationDate(date);
}

/** Gives the file both its identifiers from what it was made of (ISO 32000-1, 14.4). */
export function setFileId(pdf: PDFDocument, ...madeOf: readonly string[]): void {
  const hash = createHash('sha256');
  for (const part of madeOf) hash.update(`${part.length}:${part}`);
  const id = hash.digest('hex').slice(0, 32).toUpperCase();
  pdf.context.trailerInfo.ID = pdf.context.obj([PDFHexString.of(id), PDFHexString.of(id)]);
}

/** Counts the elements' ids from 1 again. Their order, and so that of the sorted name tree, stays. */
export function renumberNodes(pdf: PDFDocument): void {
  const numbers = new Set<number>();
  eachString(pdf.context, (text) => {
    const number = nodeNumber(text);
    if (number !== undefined) numbers.add(number);
    return undefined;
  });
  const fresh = new Map([...numbers].sort((a, b) => a - b).map((number, index) => [number, index + 1]));
  eachString(pdf.context, (text) => {
    const number = fresh.get(nodeNumber(text) ?? -1);
    return number === undefined ? undefined : `node${String(number).padStart(8, '0')}`;
  });
}

function nodeNumber(text: string): number | undefined {
  const digits = NODE_ID.exec(text)?.[1];
  return digits === undefined ? undefined : Number(digits);
}

/** Shows every string that may be an id to `change`; what that gives takes its place. */
function eachString(context: PDFContext, change: (text: string) => string | undefined): void {
  for (const [, object] of context.enumerateIndirectObjects()) visit(object, change);
}

/** Keys whose strings are ids: an element's own, those of a cell's headers, and the name tree's. */
const ID_KEYS = new Set(['/ID', '/Headers', '/Names', '/Limits']);

function visit(object: PDFObject, change: (text: string) => string | undefined, isId = false): void {
  if (object instanceof PDFRawStream) return;
  if (object instanceof PDFDict) {
    for (const [key, value] of object.entries()) {
      const ids = ID_KEYS.has(key.toString());
      const fresh = ids ? changed(value, change) : undefined;
      if (fresh) object.set(key, fresh); else visit(value, change, ids);
    }
  } else if (object instanceof PDFArray) {
    object.asArray().forEach((value, index) => {
      const fresh = isId ? changed(value, change) : undefined;
      if (fresh) object.set(index, fresh); else visit(value, change);
    });
  }
}

function changed(value: PDFObject, change: (text: string) => string | undefined): PDFString | undefined {
  if (!(value instanceof PDFString)) return undefined;
  const fresh = change(value.asString());
  return fresh === undefined ? undefined : PDFString.of(fresh);
}

/** Sets a text of the file's properties (ISO 32000-1, 14.3.3). */
export function setProperty(pdf: PDFDocument, key: string, text: string): void {
  const info = pdf.context.lookup(pdf.context.trailerInfo.Info, PDFDict);
  info.set(PDFName.of(key), PDFHexString.fromText(text));
}
