import { PDFDocument, ParseSpeeds } from 'pdf-lib';

/** Opens a PDF as it is, without a pause for other work: its dates stay. */
export const openPdf = (bytes: Uint8Array): Promise<PDFDocument> =>
  PDFDocument.load(bytes, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest });

/** Writes a PDF small and without a pause. */
export const writePdf = (pdf: PDFDocument): Promise<Uint8Array> =>
  pdf.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false, objectsPerTick: Infinity });
