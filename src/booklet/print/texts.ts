import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNull, PDFNumber, PDFRef, PDFString } from 'pdf-lib';
import type { PDFDocument, PDFPage } from 'pdf-lib';
import { kidsOf, structElements } from './figures.ts';
import { asArtifacts, markedContent, type Edit } from './pageContent.ts';
import type { PageContent } from './operators.ts';
import type { ShownText } from './types.ts';

/**
 * Scripts whose letters join, stack or change places: what a font's glyphs say of them comes out broken or turned
 * round, so that their letters are told by the element (ISO 32000-1, 14.9.4). Not by the marked content as well:
 * poppler 25 then loses texts and turns those from right to left round.
 */
const REORDERED = /[\p{Script=Arabic}\p{Script=Bengali}\p{Script=Myanmar}]/u;

/**
 * Gives every text of the tagged PDF its language where it is not that of what it stands in, and in scripts that need
 * it its letters in their logical order, for those who hear, search or copy it. Lines and grounds that belong to no
 * text and no picture become artifacts (ISO 32000-1, 14.8.2.2).
 * @param contents what is on each page.
 * @param texts every text of the document in reading order.
 * @returns what is to be changed on each page.
 * @throws when the PDF has more or fewer texts than the document.
 */
export function nameTexts(pdf: PDFDocument, contents: ReadonlyMap<PDFPage, PageContent>, doc: string, texts: readonly ShownText[]): ReadonlyMap<PDFPage, readonly Edit[]> {
  const pages = [...contents];
  const shows = new Map(pages.map(([page, content]) => [page.ref, markedContent(content)]));
  const bare = new Map<PDFRef, Set<number>>(pages.map(([page]) => [page.ref, new Set<number>()]));
  const leaves: PDFDict[] = [];
  for (const element of structElements(pdf)) {
    const page = element.get(PDFName.of('Pg'));
    if (!(page instanceof PDFRef) || element.get(PDFName.of('S')) === PDFName.of('Figure')) continue;
    const marks = marksOf(element);
    const lettered = marks.filter((mcid) => shows.get(page)?.get(mcid) === true);
    if (lettered.length > 0 && !isListLabel(element)) leaves.push(element);
    const left = marks.filter((mcid) => !lettered.includes(mcid));
    for (const mcid of left) bare.get(page)?.add(mcid);
    dropMarks(element, left);
  }
  if (leaves.length !== texts.length) {
    throw new Error(`document “${doc}”: ${texts.length} texts, but ${leaves.length} were printed; a text must be visible, and none may be made up by the style`);
  }
  leaves.forEach((leaf, index) => { nameText(leaf, texts[index] ?? { text: '', lang: '' }); });
  return new Map(pages.map(([page, content]) => [page, laidAside(pdf, page, content, bare.get(page.ref) ?? new Set<number>())]));
}

/** The number of a list's entry is made up by the browser. */
function isListLabel(element: PDFDict): boolean {
  const label = PDFName.of('Lbl');
  return element.get(PDFName.of('S')) === label || element.lookupMaybe(PDFName.of('P'), PDFDict)?.get(PDFName.of('S')) === label;
}

function nameText(element: PDFDict, { text, lang }: ShownText): void {
  if (element.get(PDFName.of('S')) === PDFName.of('NonStruct')) element.set(PDFName.of('S'), PDFName.of('Span'));
  if (langOf(element) !== lang) element.set(PDFName.of('Lang'), PDFString.of(lang));
  if (REORDERED.test(text)) element.set(PDFName.of('ActualText'), PDFHexString.fromText(text));
}

/** The language of an element: its own, or that of the nearest around it, or the document's. */
function langOf(element: PDFDict): string | undefined {
  for (let at: PDFDict | undefined = element; at; at = at.lookupMaybe(PDFName.of('P'), PDFDict)) {
    const lang = at.lookup(PDFName.of('Lang'));
    if (lang instanceof PDFString || lang instanceof PDFHexString) return lang.decodeText();
  }
  return undefined;
}

/** Numbers of the marked content that an element holds itself. */
function marksOf(element: PDFDict): readonly number[] {
  return kidsOf(element).flatMap((kid) => (kid instanceof PDFNumber ? [kid.asNumber()] : []));
}

function dropMarks(element: PDFDict, marks: readonly number[]): void {
  if (marks.length === 0) return;
  const kept = kidsOf(element).filter((kid) => !(kid instanceof PDFNumber && marks.includes(kid.asNumber())));
  element.set(PDFName.of('K'), element.context.obj(kept));
}

function laidAside(pdf: PDFDocument, page: PDFPage, content: PageContent, bare: ReadonlySet<number>): readonly Edit[] {
  if (bare.size === 0) return [];
  const owners = ownersOf(pdf, page);
  for (const mcid of bare) owners?.set(mcid, PDFNull);
  return asArtifacts(content, bare);
}

/** A page's entry in the parent tree: the owner of each piece of marked content by its number (ISO 32000-1, 14.7.4.4). */
function ownersOf(pdf: PDFDocument, page: PDFPage): PDFArray | undefined {
  const wanted = page.node.lookupMaybe(PDFName.of('StructParents'), PDFNumber)?.asNumber();
  const root = pdf.catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict)?.lookupMaybe(PDFName.of('ParentTree'), PDFDict);
  const find = (node: PDFDict): PDFArray | undefined => {
    const numbers = node.lookupMaybe(PDFName.of('Nums'), PDFArray);
    for (let index = 0; index < (numbers?.size() ?? 0); index += 2) {
      if (numbers?.lookup(index, PDFNumber).asNumber() === wanted) return numbers?.lookupMaybe(index + 1, PDFArray);
    }
    const kids = node.lookupMaybe(PDFName.of('Kids'), PDFArray);
    for (let index = 0; index < (kids?.size() ?? 0); index += 1) {
      const found = kids && find(kids.lookup(index, PDFDict));
      if (found) return found;
    }
    return undefined;
  };
  return root && find(root);
}
