export { comesOn, EDITION_PAPERS, EDITIONS, FULL_PAPERS, HALF_PAPERS, type AnyEdition } from './editions.ts';
export { pictureSizes } from './picture-sizes.ts';
export { cutPages, type CutPagesInput } from './cut-pages/index.ts';
export { bookletPages, caption, figure, glyphsFrom, lengthName, Spoken, stepAlt, type BookletInput, type Edition, type PlacePicture } from './pages/index.ts';
export {
  fontCss, openPrinter, PAPER_SIZES, picturePlace, type Paper, type PictureBook, type PrintDocument, type Printer,
} from './print/index.ts';
export { isHalfPaper, MOST_SHEETS, SHEET_THICKNESS, stitched, type Stitching } from './stitch/index.ts';
export { isDay, isName, isolate, languagesIn, loadWords, pseudoLanguage, readAbout, splitIsolates, withPseudoLanguage, wordFiles, type LocaleFiles, type Review, type Words } from './words/index.ts';
export { exportWords, importWords, type ReferencePicture } from './exchange/index.ts';
export { packDocumentPages, readNotes, sheetDocument, type KitStock, type PackInput, type PackItem } from './workshop/index.ts';
export * from './pages/retold.ts';
export { COUNTED_KINDS, surveyPages } from './survey-pages/index.ts';
export { overviewPage, wallPages, type PosterPaper } from './posters/index.ts';
