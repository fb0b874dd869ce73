import { PDFDict, PDFHexString, PDFName } from 'pdf-lib';
import type { PDFDocument } from 'pdf-lib';

/**
 * Sets the outline's titles (ISO 32000-1, 12.3.3) to the document's headings. The browser writes them in the
 * order in which letters stand on paper, so that the words of a right-to-left title come out turned round.
 * @param headings the words of every heading in reading order.
 * @throws when the outline has more or fewer entries than there are headings.
 */
export function nameOutline(pdf: PDFDocument, doc: string, headings: readonly string[]): void {
  const entries = outlineEntries(pdf);
  if (entries.length !== headings.length) {
    throw new Error(`document “${doc}”: ${headings.length} headings, but ${entries.length} in the outline; a heading must be visible and say something`);
  }
  entries.forEach((entry, index) => { entry.set(PDFName.of('Title'), PDFHexString.fromText(headings[index] ?? '')); });
}

/** Every entry, parents before children, in reading order. */
function outlineEntries(pdf: PDFDocument): readonly PDFDict[] {
  const found: PDFDict[] = [];
  const visit = (parent: PDFDict): void => {
    for (let entry = parent.lookupMaybe(PDFName.of('First'), PDFDict); entry; entry = entry.lookupMaybe(PDFName.of('Next'), PDFDict)) {
      found.push(entry);
      visit(entry);
    }
  };
  const root = pdf.catalog.lookupMaybe(PDFName.of('Outlines'), PDFDict);
  if (root) visit(root);
  return found;
}
