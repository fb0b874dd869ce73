import { deflateSync, inflateSync } from 'node:zlib';
import { PDFDict, PDFName, PDFRawStream, PDFRef, decodePDFRawStream } from 'pdf-lib';
import type { PDFPage } from 'pdf-lib';
import { readOperators, type PageContent } from './operators.ts';

/** A page's content as the browser wrote it: one compressed stream. */
export function rawContent(page: PDFPage): PDFRawStream {
  const stream = page.doc.context.lookup(page.node.get(PDFName.of('Contents')));
  if (stream instanceof PDFRawStream) return stream;
  throw new Error('a page of the browser has no content stream; this browser writes its PDF in a way that is not known here');
}

export const readContent = (page: PDFPage): PageContent => readOperators(unpacked(rawContent(page)));

/** One character a byte. What is packed as browsers do it, without a predictor, is unpacked by the machine's own code. */
function unpacked(stream: PDFRawStream): string {
  const isPlain = stream.dict.get(PDFName.of('Filter')) === PDFName.of('FlateDecode') && !stream.dict.has(PDFName.of('DecodeParms'));
  const bytes = isPlain ? inflateSync(stream.getContents()) : Buffer.from(decodePDFRawStream(stream).decode());
  return bytes.toString('latin1');
}

export function writeContent(page: PDFPage, content: string): void {
  const { context } = page.doc;
  const ref = page.node.get(PDFName.of('Contents'));
  const stream = PDFRawStream.of(context.obj({ Filter: 'FlateDecode' }), deflateSync(Buffer.from(content, 'latin1')));
  if (ref instanceof PDFRef) context.assign(ref, stream);
  else page.node.set(PDFName.of('Contents'), context.register(stream));
}

/** Names an object for use in a page's content. pdf-lib's own way would split the content in three. */
export function addResource(page: PDFPage, kind: 'XObject' | 'ExtGState', name: string, ref: PDFRef): void {
  const resources = page.node.lookup(PDFName.of('Resources'), PDFDict);
  const named = resources.lookupMaybe(PDFName.of(kind), PDFDict) ?? page.doc.context.obj({});
  named.set(PDFName.of(name), ref);
  resources.set(PDFName.of(kind), named);
}
