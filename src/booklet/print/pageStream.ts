import { PDFDict, PDFName, PDFRawStream, PDFRef, decodePDFRawStream } from 'pdf-lib';
import type { PDFPage } from 'pdf-lib';

/** A page's content as the browser wrote it: one compressed stream. */
export function rawContent(page: PDFPage): PDFRawStream {
  const stream = page.doc.context.lookup(page.node.get(PDFName.of('Contents')));
  if (stream instanceof PDFRawStream) return stream;
  throw new Error('a page of the browser has no content stream; this browser writes its PDF in a way that is not known here');
}

/** The operators of a page, one character a byte. */
export function readContent(page: PDFPage): string {
  return Buffer.from(decodePDFRawStream(rawContent(page)).decode()).toString('latin1');
}

export function writeContent(page: PDFPage, content: string): void {
  const ref = page.node.get(PDFName.of('Contents'));
  const stream = page.doc.context.flateStream(Buffer.from(content, 'latin1'));
  if (ref instanceof PDFRef) page.doc.context.assign(ref, stream);
  else page.node.set(PDFName.of('Contents'), page.doc.context.register(stream));
}

/** Names an object for use in a page's content. pdf-lib's own way would split the content in three. */
export function addResource(page: PDFPage, kind: 'XObject' | 'ExtGState', name: string, ref: PDFRef): void {
  const resources = page.node.lookup(PDFName.of('Resources'), PDFDict);
  const named = resources.lookupMaybe(PDFName.of(kind), PDFDict) ?? page.doc.context.obj({});
  named.set(PDFName.of(name), ref);
  resources.set(PDFName.of(kind), named);
}
