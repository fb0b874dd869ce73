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

/**
 * Counts the elements' ids from 1 again, in the order in which the elements stand in the file: the browser's own numbers
 * follow when it came to each, which differs from print to print where there are tables. The name tree is sorted anew.
 */
export function renumberNodes(pdf: PDFDocument): void {
  const numbers = new Set<number>();
  for (const [, object] of pdf.context.enumerateIndirectObjects()) {
    const id = object instanceof PDFDict ? object.get(PDFName.of('ID')) : undefined;
    const number = id instanceof PDFString ? nodeNumber(id.asString()) : undefined;
    if (number !== undefined) numbers.add(number);
  }
  const fresh = new Map([...numbers].map((number, index) => [number, index + 1]));
  eachString(pdf.context, (text) => {
    const number = fresh.get(nodeNumber(text) ?? -1);
    return number === undefined ? undefined : `node${String(number).padStart(8, '0')}`;
  });
  const root = pdf.catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict)?.lookupMaybe(PDFName.of('IDTree'), PDFDict);
  if (root) sortNameTree(root);
}

type NamePair = readonly [key: PDFObject, value: PDFObject];

/** Puts a name tree's pairs in the order of their keys, as ISO 32000-1, 7.9.6 asks; how many a leaf holds stays. */
function sortNameTree(root: PDFDict): void {
  const leaves = leavesOf(root);
  const pairs = leaves.flatMap(pairsOf).sort(([one], [other]) => (textOf(one) < textOf(other) ? -1 : 1));
  for (const leaf of leaves) leaf.set(PDFName.of('Names'), root.context.obj(pairs.splice(0, pairsOf(leaf).length).flat()));
  setLimits(root);
}

const kidsOf = (node: PDFDict): readonly PDFDict[] => {
  const kids = node.lookupMaybe(PDFName.of('Kids'), PDFArray);
  return kids ? Array.from({ length: kids.size() }, (_, index) => kids.lookup(index, PDFDict)) : [];
};

const leavesOf = (node: PDFDict): readonly PDFDict[] => (node.has(PDFName.of('Names')) ? [node] : kidsOf(node).flatMap(leavesOf));

function pairsOf(leaf: PDFDict): readonly NamePair[] {
  const names = leaf.lookup(PDFName.of('Names'), PDFArray).asArray();
  return names.flatMap((key, index): NamePair[] => { const value = names[index + 1]; return index % 2 === 0 && value ? [[key, value]] : []; });
}

const textOf = (key: PDFObject | undefined): string => (key instanceof PDFString ? key.asString() : '');

/** The first and the last key of each node that tells them. */
function setLimits(node: PDFDict): void {
  kidsOf(node).forEach(setLimits);
  const keys = leavesOf(node).flatMap(pairsOf).map(([key]) => key);
  const [first, last] = [keys[0], keys.at(-1)];
  if (node.has(PDFName.of('Limits')) && first && last) node.set(PDFName.of('Limits'), node.context.obj([first, last]));
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
